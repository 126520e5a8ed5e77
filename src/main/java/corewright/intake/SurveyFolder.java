package corewright.intake;

import corewright.intake.text.Kind;
import corewright.intake.text.Notes;
import corewright.intake.text.RefusedException;
import corewright.intake.text.Sheet;
import corewright.intake.text.Table;
import corewright.intake.text.Text;
import corewright.intake.text.Words;
import corewright.intake.yaml.YamlBlock;
import corewright.intake.yaml.YamlTree;
import corewright.intake.yaml.YamlValue;
import corewright.intake.yaml.YamlValue.Shape;
import corewright.survey.DeckLoad;
import corewright.survey.Face;
import corewright.survey.Feeler;
import corewright.survey.FrozenPlan;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Photo;
import corewright.survey.Plug;
import corewright.survey.Probe;
import corewright.survey.Readings;
import corewright.survey.Subject;
import corewright.survey.SurfaceTemperature;
import corewright.survey.Survey;
import corewright.survey.Tap;
import corewright.survey.WorkEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads a survey folder. */
public final class SurveyFolder {
    private static final int MOST_READINGS = Sheet.MOST_ROWS;
    private static final long LARGEST_BYTES = Text.LARGEST_BYTES + (16L << 20);

    private final Folder folder;
    private final Declared declared;
    private final Notes notes;
    private final PlanReader plan;
    private final MoistureReader moistureReader;
    private final OtherReaders readers;
    private final List<Moisture> moisture = new ArrayList<>();
    private final List<Tap> taps = new ArrayList<>();
    private final List<Probe> probes = new ArrayList<>();
    private final List<Feeler> feelers = new ArrayList<>();
    private final List<Plug> plugs = new ArrayList<>();
    private final List<SurfaceTemperature> temperatures = new ArrayList<>();
    private final List<Tap> curedTaps = new ArrayList<>();
    private final List<WorkEntry> log = new ArrayList<>();
    private final List<Photo> photos = new ArrayList<>();

    private final boolean unread;

    private SurveyFolder(Folder folder, Declared declared, Notes notes, boolean unread) {
        this.unread = unread;
        this.folder = folder;
        this.declared = declared;
        this.notes = notes;
        this.plan = new PlanReader(declared, notes);
        this.moistureReader = new MoistureReader(declared, notes);
        this.readers = new OtherReaders(declared);
    }

    /**
     * The survey in a folder.
     *
     * @throws RefusedException with every complaint of every file, where the folder cannot be used
     * @throws IOException where the disk fails
     */
    public static Intake read(Path path) throws IOException {
        return read(path, false);
    }

    /** The same for a survey that is still to be taken: it need not have a reading. */
    public static Intake readPlan(Path path) throws IOException {
        return read(path, true);
    }

    private static Intake read(Path path, boolean unread) throws IOException {
        Notes notes = new Notes(SurveyYaml.NAME);
        if (!Files.isDirectory(path)) {
            notes.complain(new Origin(path.toString(), 0), "", "there is no such folder");
        } else {
            Folder folder = new Folder(path.toRealPath());
            YamlValue top = yaml(folder, notes);
            if (top != null) {
                Declared declared =
                        SurveyYaml.read(top, String.valueOf(folder.root().getFileName()), notes);
                return new SurveyFolder(folder, declared, notes, unread).survey(top);
            }
        }
        notes.refuseIfAnyComplaint();
        throw new IllegalStateException("a folder without a survey was not complained of");
    }

    private static @Nullable YamlValue yaml(Folder folder, Notes notes) throws IOException {
        YamlValue self = YamlValue.missing(new Origin(SurveyYaml.NAME, 0), "");
        Path path = folder.find(self, SurveyYaml.NAME, notes);
        String text = path == null ? null : Text.read(path, SurveyYaml.NAME, YamlTree.LARGEST_BYTES, notes);
        YamlValue top = text == null ? null : YamlTree.parse(SurveyYaml.NAME, text, notes);
        if (top != null && top.shape() != Shape.MAP) {
            notes.expected(top.origin(), "", top.found(), "keys such as format, name, faces and files");
            return null;
        }
        return top;
    }

    private Intake survey(YamlValue top) throws IOException {
        long bytes = 0;
        for (FileEntry entry : declared.files()) {
            long size = folder.size(entry.file());
            bytes += size <= Text.LARGEST_BYTES ? size : 0; // a larger one has a complaint of its own
            if (bytes > LARGEST_BYTES || readings() > MOST_READINGS) {
                notes.complain(
                        entry.at().origin(),
                        entry.at().path(),
                        "expected at most " + MOST_READINGS + " readings and " + LARGEST_BYTES
                                + " bytes in all files together, up to this one");
                break;
            }
            Table table = entry.drawing() == null ? table(entry) : null;
            if (entry.drawing() != null) {
                plan.read(DrawnPlan.read(entry, entry.drawing(), text(entry), declared, notes), entry);
            } else if (table != null) {
                take(table, entry);
            }
        }
        hintAtUnread();
        List<Face> faces = plan.faces();
        List<DeckLoad> loads = LoadsYaml.read(YamlBlock.of(top, notes), faces, declared, notes);
        FrozenPlan repairPlan = RepairPlanYaml.read(top.at("files"), folder, declared.faceNames(), notes);
        logo(top);
        if (!unread) {
            complainOfNoReading();
        }
        notes.refuseIfAnyComplaint();
        Readings readings = new Readings(moisture, taps, probes, feelers, plugs, temperatures, curedTaps);
        Survey survey = new Survey(
                declared.heading(),
                faces,
                declared.meters(),
                declared.laminates(),
                declared.materials(),
                readings,
                declared.settings(),
                log,
                photos,
                declared.judgements(),
                loads,
                repairPlan);
        SurveyRules.check(survey, notes, unread);
        notes.refuseIfAnyComplaint();
        Survey checked = Oddities.note(survey, notes);
        return new Intake(checked, notes.findings());
    }

    private void logo(YamlValue top) throws IOException {
        String logo = declared.settings().letterhead().logo();
        if (logo.isEmpty()) {
            return;
        }
        Origin origin = top.at("letterhead").at("logo").origin();
        String leaves = folder.leaves(logo);
        String unseen = leaves.isEmpty() ? folder.unseen(logo) : "";
        if (!leaves.isEmpty()) {
            notes.complain(origin, "logo", leaves);
        } else if (!unseen.isEmpty()) {
            notes.doubt(origin, Subject.PICTURE, "Picture " + logo + " " + unseen + ".", "The record goes without it.");
        }
    }

    /** A file that nothing names may be one whose line in survey.yaml was lost. */
    private void hintAtUnread() throws IOException {
        List<String> named = declared.files().stream().map(FileEntry::file).toList();
        List<String> others =
                folder.tables().stream().filter(name -> !named.contains(name)).toList();
        if (!others.isEmpty()) {
            String message = SurveyYaml.NAME + " does not name " + Words.listed(others) + " under files.";
            notes.hint(new Origin(SurveyYaml.NAME, 0), Subject.UNREAD_FILE, message, "What is in them is not used.");
        }
    }

    private long readings() {
        return (long) moisture.size()
                + taps.size()
                + probes.size()
                + feelers.size()
                + plugs.size()
                + temperatures.size()
                + curedTaps.size()
                + log.size()
                + photos.size();
    }

    private @Nullable Table table(FileEntry entry) throws IOException {
        Kind kind = entry.kind();
        String text = text(entry);
        if (text == null) {
            return null;
        }
        Map<String, String> renamed = declared.columns().getOrDefault(kind, Map.of());
        List<String> names = kind.columns.stream()
                .map(c -> Table.fold(renamed.getOrDefault(c, c)))
                .toList();
        Sheet sheet = Sheet.parse(entry.file(), text, c -> names.contains(Table.fold(c)), notes);
        if (sheet == null) {
            return null;
        }
        return kind.canBeCrossTab() && CrossTab.isOne(sheet)
                ? CrossTab.unfold(sheet, kind, notes)
                : Table.of(sheet, kind, renamed, notes);
    }

    private @Nullable String text(FileEntry entry) throws IOException {
        Path path = folder.find(entry.at(), entry.file(), notes);
        return path == null ? null : Text.read(path, entry.file(), Text.LARGEST_BYTES, notes);
    }

    private void take(Table table, FileEntry entry) throws IOException {
        switch (entry.kind()) {
            case PLAN -> plan.read(table, entry);
            case MOISTURE -> moistureReader.read(table, entry, moisture);
            case TAPS -> readers.taps(table, entry, taps);
            case PROBES -> readers.probes(table, entry, probes);
            case FEELERS -> readers.feelers(table, entry, feelers);
            case PLUGS -> readers.plugs(table, entry, plugs);
            case TEMPERATURES -> readers.temperatures(table, entry, temperatures);
            case CURED_TAPS -> readers.taps(table, entry, curedTaps);
            case LOG -> readers.log(table, log);
            case PHOTOS -> readers.photos(table, entry, folder, photos);
        }
    }

    /** Unless something else is wrong too, which may be why there is none. */
    private void complainOfNoReading() {
        if (moisture.isEmpty() && taps.isEmpty() && probes.isEmpty() && !notes.anyComplaint()) {
            notes.complain(
                    new Origin(SurveyYaml.NAME, 0),
                    "files",
                    "found no reading at all, expected at least one of moisture, taps or probes");
        }
    }
}
