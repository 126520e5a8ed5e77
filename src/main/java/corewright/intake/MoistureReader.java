package corewright.intake;

import corewright.survey.Finding.Severity;
import corewright.survey.Meter;
import corewright.survey.Moisture;
import corewright.survey.Spot;
import java.time.DateTimeException;
import java.time.LocalDateTime;
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

    void read(Table table, FileEntry entry, List<Moisture> into) {
        for (Row row : table.rows()) {
            Moisture reading = reading(row, entry);
            if (reading != null) {
                into.add(reading);
            }
        }
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
        if (beyond) {
            String message = "Reading " + id + " of meter " + meterName + " is " + text
                    + ", beyond the end of its scale at " + Numerals.plain(meter.fullScale()) + ".";
            String effect = "It counts as off the scale: that wet or wetter.";
            notes.finding(Severity.DOUBT, row.origin(), id, spot, "off scale", message, effect);
        }
        return new Moisture(
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
