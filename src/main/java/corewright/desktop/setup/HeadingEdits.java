package corewright.desktop.setup;

import corewright.desktop.state.Typed;
import corewright.survey.Heading;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What stands at the head of every page: as shown, and with one value as typed. */
final class HeadingEdits {
    private static final int LONGEST = 200;
    private static final int MOST_DAYS = 36_500;

    private HeadingEdits() {}

    static SetupRow row(Heading h) {
        Integer days = h.daysAshore();
        return new SetupRow(
                "the survey",
                List.of(
                        SetupValue.typed(SetupField.NAME, h.name()),
                        SetupValue.typed(SetupField.SURVEYED, h.surveyed().toString()),
                        SetupValue.typed(SetupField.VESSEL, h.vessel()),
                        SetupValue.typed(SetupField.CLIENT, h.client()),
                        SetupValue.typed(SetupField.SURVEYOR, h.surveyor()),
                        SetupValue.typed(SetupField.WEATHER, h.weather()),
                        SetupValue.typed(SetupField.ASHORE, days == null ? "" : days.toString())));
    }

    static Heading changed(Heading h, SetupField field, String text) throws Typed {
        String typed = text.strip();
        if (typed.length() > LONGEST) {
            throw new Typed("What stands at the head of a page has at most " + LONGEST + " letters.");
        }
        if (field == SetupField.NAME && typed.isEmpty()) {
            throw new Typed("A survey needs a name.");
        }
        return new Heading(
                field == SetupField.NAME ? typed : h.name(),
                field == SetupField.SURVEYED ? day(typed) : h.surveyed(),
                field == SetupField.VESSEL ? typed : h.vessel(),
                field == SetupField.CLIENT ? typed : h.client(),
                field == SetupField.SURVEYOR ? typed : h.surveyor(),
                field == SetupField.WEATHER ? typed : h.weather(),
                field == SetupField.ASHORE ? days(typed) : h.daysAshore(),
                h.notes());
    }

    private static LocalDate day(String text) throws Typed {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new Typed("The date reads \"" + text + "\"; expected is year-month-day, such as 2026-04-02.");
        }
    }

    private static @Nullable Integer days(String text) throws Typed {
        Double days = Typed.numberOrNothing(
                "Days ashore", text, 0, MOST_DAYS, "a number of days, or nothing where it is not known");
        return days == null ? null : (Integer) (int) Math.rint(days);
    }
}
