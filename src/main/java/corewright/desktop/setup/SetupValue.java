package corewright.desktop.setup;

import java.util.List;

/**
 * One value.
 *
 * @param options to choose from; empty where it is typed
 */
public record SetupValue(SetupField field, String text, List<String> options) {
    public SetupValue {
        options = List.copyOf(options);
    }

    static SetupValue typed(SetupField field, String text) {
        return new SetupValue(field, text, List.of());
    }
}
