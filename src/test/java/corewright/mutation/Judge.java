package corewright.mutation;

import corewright.cli.GridReader;
import corewright.cli.NumberTable;
import corewright.cli.PanelReader;
import corewright.drawing.kit.Measure;
import corewright.intake.Intake;
import corewright.intake.SurveyCheck;
import corewright.intake.SurveyFolder;
import corewright.intake.text.RefusedException;
import corewright.store.StoreException;
import corewright.store.SurveyFile;
import corewright.survey.Edit;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Plug;
import corewright.survey.Readings;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Reads an input and says what came of it. */
final class Judge {
    /**
     * What may come of an input.
     *
     * @param why what is wrong with the input, or with us where it is a defect
     * @param counts of a survey that was read
     */
    record Verdict(Outcome outcome, String why, @Nullable Counts counts) {
        Verdict(Outcome outcome, String why) {
            this(outcome, why, null);
        }

        enum Outcome {
            READ,
            REFUSED,
            DEFECT
        }
    }

    private Judge() {}

    /** Reads the input at a place; anything thrown but a refusal, and any row lost, is a defect. */
    static Verdict judge(Input.Kind kind, Path at, Map<String, byte[]> files) {
        try {
            switch (kind) {
                case FOLDER -> {
                    Intake intake = SurveyFolder.read(at);
                    assessed(intake);
                    String lost = lostRow(intake, files);
                    return lost.isEmpty()
                            ? new Verdict(Verdict.Outcome.READ, "", Counts.of(intake))
                            : new Verdict(Verdict.Outcome.DEFECT, "lost row " + lost);
                }
                case SURVEY_FILE -> {
                    return new Verdict(Verdict.Outcome.READ, "", Counts.of(file(at.resolve(Input.SURVEY_FILE))));
                }
                case PANEL -> PanelReader.read(at.resolve("panel.yaml"));
                case GRID -> GridReader.read(at.resolve("grid.asc"));
                case POINTS -> NumberTable.read(at.resolve("points.csv"), List.of("x", "y", "value"));
            }
            return new Verdict(Verdict.Outcome.READ, "");
        } catch (RefusedException refusal) {
            boolean complete = !refusal.complaints().isEmpty()
                    && refusal.complaints().stream().noneMatch(c -> c.problem().isBlank() || forges(c.toString()));
            return complete
                    ? new Verdict(Verdict.Outcome.REFUSED, String.valueOf(refusal.getMessage()))
                    : new Verdict(Verdict.Outcome.DEFECT, "refused without a clean complaint: " + refusal.getMessage());
        } catch (StoreException refusal) {
            String sentence = String.valueOf(refusal.getMessage());
            return forges(sentence)
                    ? new Verdict(Verdict.Outcome.DEFECT, "forges a line: " + sentence)
                    : new Verdict(Verdict.Outcome.REFUSED, sentence);
        } catch (IOException | RuntimeException | StackOverflowError | OutOfMemoryError defect) {
            StackTraceElement[] trace = defect.getStackTrace();
            return new Verdict(Verdict.Outcome.DEFECT, defect + (trace.length > 0 ? " at " + trace[0] : ""));
        }
    }

    /** As the commands read it: first only to look, then for work, which must find the same. */
    private static Intake file(Path path) throws IOException {
        Intake intake;
        try (SurveyFile file = SurveyFile.openToRead(path)) {
            intake = SurveyCheck.check(file.survey(), file.importNotes());
            assessed(intake);
        }
        try (SurveyFile file = SurveyFile.open(path)) {
            Intake again = SurveyCheck.check(file.survey(), file.importNotes());
            if (!again.survey().equals(intake.survey())) {
                throw new IllegalStateException("opened for work it is another survey");
            }
            Plug plug = new Plug(
                    new Origin("by hand", 0),
                    "by hand",
                    new Spot(again.survey().faces().get(0).name(), 1, 2),
                    11);
            file.append(Edit.add(file.survey(), Part.PLUGS, plug));
            file.undo();
        }
        return intake;
    }

    /** What {@code check} prints of it. */
    private static void assessed(Intake intake) {
        String words = Measure.of(intake.survey())
                .say(corewright.assessment.Verdict.of(intake.survey(), intake.findings())
                        .sentence());
        boolean forged = intake.findings().stream().anyMatch(f -> forges(f.message()) || forges(f.effect()));
        if (forged || forges(words)) {
            throw new IllegalStateException("a finding forges a line");
        }
    }

    /** Whether a sentence holds what moves a terminal's cursor, or begins a line of its own. */
    private static boolean forges(String sentence) {
        return sentence.chars().anyMatch(c -> Character.isISOControl(c) || (c >= 0x202A && c <= 0x202E));
    }

    /**
     * The first line with something in it, of any file of readings, that is neither a reading's nor named by a finding;
     * empty where there is none. Files whose quoted cells hold line breaks or quotes are left out: whether they are
     * read rightly is tested elsewhere, and counting them here would take a second reader.
     */
    private static String lostRow(Intake intake, Map<String, byte[]> files) {
        Set<Origin> named = named(intake);
        Set<String> read = new HashSet<>();
        named.forEach(o -> read.add(o.file()));
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            String name = file.getKey();
            String text = new String(file.getValue(), StandardCharsets.UTF_8);
            boolean plain = text.chars().allMatch(c -> (c >= ' ' && c < 0x7F && c != '"') || c == '\n');
            if (!name.endsWith(".csv") || name.equals("plan.csv") || !plain || text.startsWith("sep=")) {
                continue;
            }
            String[] lines = text.split("\n", -1);
            int header = 0;
            while (header < lines.length && !hasContent(lines[header], 1)) {
                header++;
            }
            int least = header < lines.length && isCrossTab(lines[header]) ? 2 : 1;
            boolean any = Stream.of(lines).skip(header + 1L).anyMatch(line -> hasContent(line, least));
            if (!read.contains(name) && any && !mentions(intake, name)) {
                return name;
            }
            for (int i = header + 1; i < lines.length && read.contains(name); i++) {
                if (hasContent(lines[i], least) && !named.contains(new Origin(name, i + 1))) {
                    return name + ":" + (i + 1);
                }
            }
        }
        return "";
    }

    private static boolean mentions(Intake intake, String file) {
        return intake.findings().stream().anyMatch(f -> f.message().contains(file));
    }

    /** Its header holds places; a row without a reading then says nothing that could be lost. */
    private static boolean isCrossTab(String header) {
        return Stream.of(header.split("[,;\t]")).skip(1).anyMatch(c -> c.strip().matches("-?[0-9.]+"));
    }

    private static boolean hasContent(String line, int cells) {
        return Stream.of(line.split("[,;\t]")).filter(c -> !c.isBlank()).count() >= cells;
    }

    private static Set<Origin> named(Intake intake) {
        Survey survey = intake.survey();
        Readings r = survey.readings();
        Set<Origin> named = new HashSet<>();
        Stream.of(r.moisture(), r.taps(), r.probes(), r.feelers(), r.plugs(), r.temperatures(), r.curedTaps())
                .flatMap(List::stream)
                .forEach(reading -> named.add(reading.origin()));
        survey.log().forEach(entry -> named.add(entry.origin()));
        survey.photos().forEach(photo -> named.add(photo.origin()));
        intake.findings().forEach(finding -> named.add(finding.origin()));
        return named;
    }
}
