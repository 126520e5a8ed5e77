package corewright;

import java.util.stream.Stream;

/** Entry of the installed window: what the desktop hands over is the survey to open, not a command. */
public final class WindowMain {
    private WindowMain() {}

    /** Opens the window on the survey folder or survey file named, or on none. */
    public static void main(String[] args) {
        Main.main(Stream.concat(Stream.of("desktop"), Stream.of(args)).toArray(String[]::new));
    }
}
