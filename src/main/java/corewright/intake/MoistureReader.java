package corewright.intake;

import corewright.intake.text.Notes;
import corewright.intake.text.Numerals;
import corewright.intake.text.Row;
import corewright.intake.text.Table;
import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.Meter;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Spot;
import corewright.survey.Subject;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Rows of moisture files to readings. */
final class MoistureReader {
    static final double COLDEST_C = -60;
    static final double HOTTEST_C = 120;
    private static final Pattern OFF_SCALE = Pattern.compile(">\\s*=?\\s*(.+)|(.+?)\\s*\\+");
    private static final Pattern TAKEN = Pattern.compile(
            "([0-9]{4})-([0-9]{1,2})-([0-9]{1,2})(?:[T ]+([0-9]{1,2}):([0-9]{2})(?::([0-9]{2})(?:[.,][0-9]+)?)?"
                    + " ?(?:Z|[+-][0-9]{2}:?[0-9]{2})?)?");

    private final Declared declared;
    private final Notes notes;
    private final List<Beyond> beyondEnd = new ArrayList<>();
    private final List<String> faces;
    private final List<String> meterNames;
    private final Map<String, Meter> meters = new HashMap<>();

    MoistureReader(Declared declared, Notes notes) {
        this.declared = declared;
        this.notes = notes;
        this.faces = declared.faceNames();
        this.meterNames = declared.meterNames();
        declared.meters().forEach(m -> meters.put(m.name(), m));
    }

    /** A reading beyond the end of its meter's scale, as written. */
    private record Beyond(Row row, Moisture reading, Meter meter, String text, double value) {}

    void read(Table table, FileEntry entry, List<Moisture> into) {
        int before = into.size();
        beyondEnd.clear();
        for (Row row : table.rows()) {
            Moisture reading = reading(row, entry);
            if (reading != null) {
                into.add(reading);
            }
        }
        noteBeyondEnd(entry.file(), into.size() - before);
    }

    /** Readings beyond the end of their scale: one by one, or, where they are many, as what that most likely means. */
    private void noteBeyondEnd(String file, int readings) {
        if (beyondEnd.size() <= Oddities.ONE_BY_ONE) {
            for (Beyond b : beyondEnd) {
                String message = "Reading " + b.reading.id() + " of meter " + b.meter.name() + " is " + b.text
                        + ", beyond the end of its scale at " + Numerals.plain(b.meter.fullScale()) + ".";
                String effect = "It counts as off the scale: that wet or wetter.";
                notes.doubt(b.row.origin(), About.of(b.reading), Subject.OFF_SCALE, message, effect);
            }
            return;
        }
        Beyond most =
                beyondEnd.stream().max(Comparator.comparingDouble(b -> b.value)).orElseThrow();
        String message =
                beyondEnd.size() + " of " + readings + " readings of " + file + " lie beyond the end of their scale, "
                        + most.reading.id() + " at " + Numerals.plain(most.value) + " of "
                        + Numerals.plain(most.meter.fullScale())
                        + ": were they taken with another meter, or is full_scale wrong?";
        String effect = "They count as fully wet. Mend meters in " + SurveyYaml.NAME + " or the file.";
        Origin all = new Origin(file, 0);
        notes.finding(new Finding(
                Finding.Severity.HAZARD, all, new About.OfFile(all), Subject.PLAUSIBILITY, message, effect));
    }

    private @Nullable Moisture reading(Row row, FileEntry entry) {
        String face = Places.face(row, entry.face(), faces);
        Spot spot = Places.spot(row, "x", "y", face, declared.units().length());
        String meterName = Places.meter(row, entry.meter(), meterNames);
        String text = row.text("value");
        Matcher off = OFF_SCALE.matcher(text);
        boolean marked = !Numerals.isPlain(text, row.decimal()) && off.matches();
        Double value = value(row, marked ? (off.group(1) != null ? off.group(1) : off.group(2)) : text);
        Double temperature = row.has("temperature") ? temperature(row) : null;
        LocalDateTime taken = row.has("taken") ? taken(row) : null;
        boolean reference = row.yes("reference");
        if (spot == null || meterName == null || value == null) {
            return null;
        }
        Meter meter = Objects.requireNonNull(meters.get(meterName));
        boolean beyond = value > meter.fullScale();
        String id = Places.id(row);
        Moisture reading = new Moisture(
                row.origin(),
                id,
                spot,
                Math.min(value, meter.fullScale()),
                marked || beyond,
                meterName,
                temperature,
                taken,
                reference,
                Places.side(row, entry),
                row.text("note"));
        if (beyond) {
            beyondEnd.add(new Beyond(row, reading, meter, text, value));
        }
        return reading;
    }

    private static @Nullable Double value(Row row, String text) {
        Double value = Numerals.parse(text, row.decimal());
        if (value == null || value < 0) {
            row.expected("value", value == null ? "a number" : "a number that is not negative");
            return null;
        }
        return value;
    }

    private @Nullable Double temperature(Row row) {
        Double celsius = declared.units().celsius(row.text("temperature"), row.decimal());
        if (celsius == null || celsius < COLDEST_C || celsius > HOTTEST_C) {
            row.expected("temperature", "degrees from -60 to 120 Celsius");
            return null;
        }
        return celsius;
    }

    private static @Nullable LocalDateTime taken(Row row) {
        Matcher m = TAKEN.matcher(row.text("taken"));
        try {
            if (m.matches()) {
                return LocalDateTime.of(
                        number(m, 1), number(m, 2), number(m, 3), number(m, 4), number(m, 5), number(m, 6));
            }
        } catch (DateTimeException e) {
            // no such day or hour: complained of below, with its place
        }
        row.expected("taken", "a date and time such as 2026-04-02 10:15");
        return null;
    }

    private static int number(Matcher m, int group) {
        return m.group(group) == null ? 0 : Integer.parseInt(m.group(group));
    }
}
