package corewright.desktop.walk;

import corewright.survey.Sound;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a point.
 *
 * @param value as typed, empty where only tapped
 * @param skipped why it was left out, empty where it was not
 */
public record Noted(
        String value, boolean offScale, @Nullable Sound tap, String skipped) {
    static final Noted NOTHING = new Noted("", false, null, "");

    public boolean open() {
        return value.isEmpty() && tap == null && skipped.isEmpty();
    }

    /** As it stands on the map: 68, or >100. */
    public String shown() {
        return (offScale ? ">" : "") + value;
    }
}
