package corewright.desktop.setup;

import java.util.List;

/** The head of a survey, one face, one meter or one laminate. */
public record SetupRow(String name, List<SetupValue> values) {
    public SetupRow {
        values = List.copyOf(values);
    }
}
