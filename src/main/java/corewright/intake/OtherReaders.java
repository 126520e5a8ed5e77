package corewright.intake;

import corewright.intake.text.LengthUnit;
import corewright.intake.text.Row;
import corewright.intake.text.Table;
import corewright.survey.About;
import corewright.survey.CoreMoisture;
import corewright.survey.CoreState;
import corewright.survey.Feeler;
import corewright.survey.FeelerEnd;
import corewright.survey.Photo;
import corewright.survey.Plug;
import corewright.survey.Probe;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.Subject;
import corewright.survey.SurfaceTemperature;
import corewright.survey.Tap;
import corewright.survey.WorkEntry;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Rows of every kind of file but the plan and moisture to records, one method a kind. */
final class OtherReaders {
    /** Oven-dried balsa soaked for good holds some 600 % of its dry mass (computed: cell walls 1500 kg/m³ at 150). */
    static final double WETTEST_PERCENT = 1000;

    /** Contact times of hand hammers are hundreds of microseconds; a second is no tap. */
    static final double LONGEST_CONTACT_US = 1e6;

    static final double LONGEST_MINUTES = 1e6;
    static final double MOST_GRAMS = 1e6;
    static final double COLDEST_C = -60;
    static final double HOTTEST_C = 400;

    private final Declared declared;
    private final List<String> faces;

    OtherReaders(Declared declared) {
        this.declared = declared;
        this.faces = declared.faceNames();
    }

    void taps(Table table, FileEntry entry, List<Tap> into) {
        for (Row row : table.rows()) {
            Spot spot = spot(row, entry);
            boolean timed = row.has("contact_us");
            Sound sound = row.has("sound") || !timed ? row.word("sound", Sound.class) : null;
            Double contact = timed ? row.number("contact_us", 0.1, LONGEST_CONTACT_US) : null;
            if (spot != null && (sound != null || contact != null)) {
                into.add(new Tap(row.origin(), Places.id(row), spot, sound, contact, Places.side(row, entry)));
            }
        }
    }

    void probes(Table table, FileEntry entry, List<Probe> into) {
        for (Row row : table.rows()) {
            Spot spot = spot(row, entry);
            Double depth = row.depth("void_depth", declared.units().depth());
            CoreState state = row.has("core_state") ? row.word("core_state", CoreState.class) : null;
            CoreMoisture moisture = row.has("core_moisture") ? row.word("core_moisture", CoreMoisture.class) : null;
            if (spot != null && depth != null) {
                into.add(new Probe(row.origin(), Places.id(row), spot, depth, state, moisture));
            }
        }
    }

    void feelers(Table table, FileEntry entry, List<Feeler> into) {
        LengthUnit unit = declared.units().length();
        for (Row row : table.rows()) {
            String face = Places.face(row, entry.face(), faces);
            Spot from = Places.spot(row, "x1", "y1", face, unit);
            Spot tip = Places.spot(row, "x2", "y2", face, unit);
            FeelerEnd end = row.word("end", FeelerEnd.class);
            Double depth = row.has("void_depth")
                    ? row.depth("void_depth", declared.units().depth())
                    : null;
            if (from != null && tip != null && end != null) {
                into.add(new Feeler(row.origin(), Places.id(row), from, tip, end, depth));
            }
        }
    }

    void plugs(Table table, FileEntry entry, List<Plug> into) {
        for (Row row : table.rows()) {
            Spot spot = spot(row, entry);
            Double percent = row.number("mc_percent", 0, WETTEST_PERCENT);
            if (spot != null && percent != null) {
                into.add(new Plug(row.origin(), Places.id(row), spot, percent));
            }
        }
    }

    void temperatures(Table table, FileEntry entry, List<SurfaceTemperature> into) {
        for (Row row : table.rows()) {
            Spot spot = spot(row, entry);
            Double minutes = row.number("minutes", 0, LONGEST_MINUTES);
            Boolean warm = warm(row.text("value"));
            Double celsius = warm == null ? celsius(row) : null;
            if (spot != null && minutes != null && (warm != null || celsius != null)) {
                into.add(new SurfaceTemperature(row.origin(), Places.id(row), spot, minutes * 60, celsius, warm));
            }
        }
    }

    void log(Table table, List<WorkEntry> into) {
        for (Row row : table.rows()) {
            WorkEntry entry = LogRow.read(row, declared.units().depth());
            if (entry != null) {
                into.add(entry);
            }
        }
    }

    void photos(Table table, FileEntry entry, Folder folder, List<Photo> into) throws IOException {
        for (Row row : table.rows()) {
            Spot spot = spot(row, entry);
            String file = row.text("file");
            String problem = file.isEmpty() ? "found nothing, expected a file name" : folder.leaves(file);
            if (!problem.isEmpty()) {
                row.complain("file", problem);
            } else if (spot != null) {
                String unseen = folder.unseen(file);
                if (!unseen.isEmpty()) {
                    row.doubt(
                            new About.OfPlace(spot),
                            Subject.PICTURE,
                            "Picture " + file + " " + unseen + ".",
                            "It is not shown.");
                }
                into.add(new Photo(row.origin(), file, spot, row.text("caption")));
            }
        }
    }

    private @Nullable Spot spot(Row row, FileEntry entry) {
        String face = Places.face(row, entry.face(), faces);
        return Places.spot(row, "x", "y", face, declared.units().length());
    }

    private static @Nullable Boolean warm(String value) {
        return switch (value.toLowerCase(Locale.ROOT).replaceAll("[ _]", "-")) {
            case "warm" -> true;
            case "not-warm" -> false;
            default -> null;
        };
    }

    private @Nullable Double celsius(Row row) {
        Double celsius = declared.units().celsius(row.text("value"), row.decimal());
        if (celsius == null || celsius < COLDEST_C || celsius > HOTTEST_C) {
            row.expected("value", "degrees from -60 to 400 Celsius, warm or not-warm");
            return null;
        }
        return celsius;
    }
}
