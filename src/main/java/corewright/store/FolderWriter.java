package corewright.store;

import corewright.survey.EdgeSupport;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Feeler;
import corewright.survey.Moisture;
import corewright.survey.Photo;
import corewright.survey.Plug;
import corewright.survey.Probe;
import corewright.survey.Readings;
import corewright.survey.SheetCell;
import corewright.survey.Spot;
import corewright.survey.SurfaceTemperature;
import corewright.survey.Survey;
import corewright.survey.Tap;
import corewright.survey.WorkEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.jspecify.annotations.Nullable;

/**
 * Writes a survey as a folder of plain files, in millimetres and degrees Celsius, every number with all its digits. What
 * reads the folder again finds the same survey; only the places where things were read from are new.
 */
public final class FolderWriter {
    private final Survey survey;
    /** CsvFile as text, the names of the columns first. */
    private final Map<String, List<String>> files = new LinkedHashMap<>();

    private FolderWriter(Survey survey) {
        this.survey = survey;
    }

    /** Writes a new folder, which appears whole or not at all, with the pictures that are to be had. */
    public static void write(Survey survey, Pictures pictures, Path folder) throws IOException {
        FolderWriter writer = new FolderWriter(survey);
        NewFile.appearAsFolder(folder, work -> writer.write(work, pictures));
    }

    private void write(Path folder, Pictures pictures) throws IOException {
        plan();
        readings(survey.readings());
        log();
        photos();
        files.values().removeIf(rows -> rows.size() == 1);
        if (!survey.repairPlan().isNone()) {
            Files.writeString(folder.resolve(RepairPlanText.NAME), RepairPlanText.of(survey.repairPlan()));
        }
        Files.writeString(folder.resolve("survey.yaml"), SurveyYamlText.of(survey, files.keySet()));
        for (Map.Entry<String, List<String>> file : files.entrySet()) {
            Files.writeString(folder.resolve(file.getKey() + ".csv"), String.join("\n", file.getValue()) + "\n");
        }
        for (String name : Pictures.names(survey)) {
            byte[] content = pictures.content(name);
            Path place = folder.resolve(name.replace('\\', '/')).normalize();
            if (content != null && place.startsWith(folder) && !Files.exists(place)) {
                Files.createDirectories(place.getParent());
                Files.write(place, content);
            }
        }
    }

    private CsvFile file(String name, Object... columns) {
        List<String> rows = new ArrayList<>();
        files.put(name, rows);
        CsvFile file = cells -> rows.add(CSVFormat.RFC4180.format(
                Stream.of(cells).map(FolderWriter::cell).toArray()));
        file.row(columns);
        return file;
    }

    /** A file being written. */
    @FunctionalInterface
    private interface CsvFile {
        /** Numbers with all their digits, yes and no, choices as their words, texts made harmless; nothing for null. */
        void row(@Nullable Object... cells);
    }

    private static Object cell(@Nullable Object value) {
        if (value instanceof Double number) {
            return number(number);
        }
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "";
        }
        if (value instanceof String text) {
            return SheetCell.harmless(text);
        }
        return value == null ? "" : value instanceof Enum<?> choice ? Scalar.word(choice) : value;
    }

    /** The shortest text that is this number again when read. */
    private static String number(double value) {
        String text = Double.toString(value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    private void plan() {
        CsvFile plan = file(
                "plan",
                "face",
                "kind",
                "name",
                "wkt",
                "metal",
                "load_bearing",
                "keepout",
                "edge",
                "laminate",
                "coaming_height_mm",
                "coaming_thickness_mm",
                "coaming_skin");
        for (Face face : survey.faces()) {
            plan.row(
                    face.name(),
                    "outline",
                    "",
                    EveryDigit.wkt(face.outline()),
                    "",
                    "",
                    "",
                    word(face.edge()),
                    face.laminate(),
                    "",
                    "",
                    "");
            for (Feature feature : face.features()) {
                plan.row(feature(face.name(), feature));
            }
        }
    }

    private static @Nullable Object[] feature(String face, Feature feature) {
        String kind = feature.getClass().getSimpleName().toLowerCase(Locale.ROOT);
        String edge = "";
        String laminate = "";
        Object[] fitting = {"", "", ""};
        @Nullable Object[] coaming = {"", "", ""};
        if (feature instanceof Feature.Opening opening) {
            edge = opening.coamingHeightMm() == null ? word(opening.edge()) : "coaming";
            coaming = new @Nullable Object[] {
                opening.coamingHeightMm(), opening.coamingThicknessMm(), opening.coamingSkin()
            };
        } else if (feature instanceof Feature.Support support) {
            edge = word(support.edge());
        } else if (feature instanceof Feature.LaminateArea area) {
            kind = "laminate";
            laminate = area.laminate();
        } else if (feature instanceof Feature.Fitting bolted) {
            fitting = new Object[] {bolted.metal(), bolted.loadBearing(), bolted.keepoutMm()};
        }
        return new @Nullable Object[] {
            face,
            kind,
            feature.name(),
            EveryDigit.wkt(feature.geometry()),
            fitting[0],
            fitting[1],
            fitting[2],
            edge,
            laminate,
            coaming[0],
            coaming[1],
            coaming[2]
        };
    }

    private static String word(EdgeSupport edge) {
        return Scalar.word(edge);
    }

    private void readings(Readings readings) {
        CsvFile moisture = file(
                "moisture",
                "id",
                "face",
                "x",
                "y",
                "value",
                "meter",
                "temperature",
                "taken",
                "reference",
                "side",
                "note");
        for (Moisture m : readings.moisture()) {
            String value = (m.offScale() ? ">" : "") + number(m.value());
            Spot at = m.spot();
            moisture.row(
                    m.id(),
                    at.face(),
                    at.xMm(),
                    at.yMm(),
                    value,
                    m.meter(),
                    m.temperatureC(),
                    m.taken(),
                    m.reference(),
                    m.side(),
                    m.note());
        }
        taps("taps", readings.taps());
        CsvFile probes = file("probes", "id", "face", "x", "y", "void_depth", "core_state", "core_moisture");
        for (Probe p : readings.probes()) {
            Spot at = p.spot();
            probes.row(p.id(), at.face(), at.xMm(), at.yMm(), p.voidDepthMm(), p.coreState(), p.coreMoisture());
        }
        CsvFile feelers = file("feelers", "id", "face", "x1", "y1", "x2", "y2", "end", "void_depth");
        for (Feeler f : readings.feelers()) {
            Spot a = f.spot();
            feelers.row(
                    f.id(), a.face(), a.xMm(), a.yMm(), f.tip().xMm(), f.tip().yMm(), f.end(), f.voidDepthMm());
        }
        CsvFile plugs = file("plugs", "id", "face", "x", "y", "mc_percent");
        for (Plug p : readings.plugs()) {
            plugs.row(p.id(), p.spot().face(), p.spot().xMm(), p.spot().yMm(), p.moisturePercent());
        }
        CsvFile temperatures = file("temperatures", "id", "face", "x", "y", "minutes", "value");
        for (SurfaceTemperature t : readings.temperatures()) {
            Spot at = t.spot();
            temperatures.row(t.id(), at.face(), at.xMm(), at.yMm(), minutes(t.afterS()), warmth(t));
        }
        taps("cured_taps", readings.curedTaps());
    }

    private void taps(String name, List<Tap> taps) {
        CsvFile file = file(name, "id", "face", "x", "y", "sound", "contact_us", "side");
        for (Tap t : taps) {
            Spot at = t.spot();
            file.row(t.id(), at.face(), at.xMm(), at.yMm(), t.sound(), t.contactUs(), t.side());
        }
    }

    private static @Nullable Object warmth(SurfaceTemperature t) {
        return t.valueC() != null ? t.valueC() : Boolean.TRUE.equals(t.warm()) ? "warm" : "not-warm";
    }

    private void log() {
        CsvFile log = file(
                "log",
                "hole",
                "minutes",
                "grams",
                "ooze_at",
                "cup",
                "vent_shown",
                "depth_felt",
                "leak",
                "stopped",
                "note",
                "who",
                "resin_lot",
                "card_revision",
                "lift");
        for (WorkEntry e : survey.log()) {
            log.row(
                    e.hole(),
                    minutes(e.afterS()),
                    e.grams(),
                    e.oozeAt(),
                    e.cup(),
                    e.ventShown(),
                    e.depthFeltMm(),
                    e.leak(),
                    e.stopped(),
                    e.note(),
                    e.who(),
                    e.resinLot(),
                    e.cardRevision(),
                    e.lift());
        }
    }

    private void photos() {
        CsvFile photos = file("photos", "file", "face", "x", "y", "caption");
        for (Photo p : survey.photos()) {
            photos.row(p.file(), p.spot().face(), p.spot().xMm(), p.spot().yMm(), p.caption());
        }
    }

    /**
     * The minutes that are {@code seconds} again when read: the quotient or a neighbour of it. Seconds that no number of
     * minutes gives keep their last digit but one; none that came from minutes is such a number.
     */
    private static double minutes(double seconds) {
        double minutes = seconds / 60;
        for (double near : new double[] {minutes, Math.nextUp(minutes), Math.nextDown(minutes)}) {
            if (near * 60 == seconds) {
                return near;
            }
        }
        return minutes;
    }
}
