package corewright.desktop.state;

import corewright.drawing.screen.ScreenLook;

/** Day, night, or sunlight on the screen. */
public enum Appearance {
    DAY("Day", ScreenLook.DAY),
    NIGHT("Night", ScreenLook.NIGHT),
    SUNLIGHT("Sunlight", ScreenLook.SUNLIGHT);

    private final String word;
    private final ScreenLook look;

    Appearance(String word, ScreenLook look) {
        this.word = word;
        this.look = look;
    }

    public String word() {
        return word;
    }

    public ScreenLook look() {
        return look;
    }

    /** The one that follows on the key. */
    public Appearance next() {
        return values()[(ordinal() + 1) % values().length];
    }
}
