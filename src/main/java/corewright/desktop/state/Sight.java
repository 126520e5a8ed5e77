package corewright.desktop.state;

import corewright.drawing.screen.ScreenLayer;
import corewright.survey.Spot;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** How the survey is looked at: nothing here changes it or is stored with it. */
public final class Sight {
    private final Runnable tell;
    private final Set<ScreenLayer> found = EnumSet.complementOf(
            EnumSet.of(ScreenLayer.DEEDS, ScreenLayer.MOISTURE, ScreenLayer.STANDARD_ERROR, ScreenLayer.VOID_DEPTH));
    private final Set<ScreenLayer> decided = decided(found);
    private Appearance appearance = Appearance.DAY;
    private boolean tinted = true;
    private Units units = Units.METRIC;
    private Step step = Step.DAMAGE;
    private @Nullable Mark mark;

    /** A place somebody is sent to. */
    public record Mark(Spot spot, String label) {}

    public Sight(Runnable tell) {
        this.tell = tell;
    }

    /** Where it is decided the deeds are seen instead of what was read. */
    private static Set<ScreenLayer> decided(Set<ScreenLayer> found) {
        Set<ScreenLayer> decided = EnumSet.copyOf(found);
        decided.removeAll(EnumSet.of(ScreenLayer.READINGS, ScreenLayer.TAPS, ScreenLayer.PROBES));
        decided.add(ScreenLayer.DEEDS);
        return decided;
    }

    private Set<ScreenLayer> own() {
        return step == Step.REPAIR ? decided : found;
    }

    /** How a survey just opened is looked at; whoever opens it tells. */
    void begin(Units ofSurvey, Step first) {
        units = ofSurvey;
        step = first;
    }

    /** Shows another step. */
    public void go(Step to) {
        step = to;
        tell.run();
    }

    /** Shows or hides a layer of this step; of the surfaces at most one is seen. */
    public void toggle(ScreenLayer layer) {
        Set<ScreenLayer> layers = own();
        if (!layers.remove(layer)) {
            if (layer.surface()) {
                layers.removeIf(ScreenLayer::surface);
            }
            layers.add(layer);
        }
        tell.run();
    }

    public void appear(Appearance other) {
        appearance = other;
        tell.run();
    }

    /** Tints under the patterns, or patterns alone. */
    public void tint(boolean on) {
        tinted = on;
        tell.run();
    }

    public void measure(Units other) {
        units = other;
        tell.run();
    }

    public Appearance appearance() {
        return appearance;
    }

    public boolean tinted() {
        return tinted;
    }

    public Units units() {
        return units;
    }

    public Step step() {
        return step;
    }

    public Set<ScreenLayer> layers() {
        return Set.copyOf(own());
    }

    /** What is marked on the plan until the next deed. */
    public Optional<Mark> mark() {
        return Optional.ofNullable(mark);
    }

    /** Marks a place until the next deed. */
    public void mark(Spot spot, String label) {
        mark = new Mark(spot, label);
        tell.run();
    }

    void unmark() {
        mark = null;
    }
}
