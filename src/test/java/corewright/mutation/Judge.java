package corewright.mutation;

import corewright.cli.GridReader;
import corewright.cli.NumberTable;
import corewright.cli.PanelReader;
import corewright.intake.Intake;
import corewright.intake.SurveyFolder;
import corewright.intake.text.RefusedException;
import corewright.survey.Origin;
import corewright.survey.Readings;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Reads an input and says what came of it. */
final class Judge {
    /** What may come of an input; {@code DEFECT} says why. */
    record Verdict(Outcome outcome, String defect) {
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
                    String lost = lostRow(intake, files);
                    return lost.isEmpty()
                            ? new Verdict(Verdict.Outcome.READ, "")
                            : new Verdict(Verdict.Outcome.DEFECT, "lost row " + lost);
                }
                case PANEL -> PanelReader.read(at.resolve("panel.yaml"));
                case GRID -> GridReader.read(at.resolve("grid.asc"));
                case POINTS -> NumberTable.read(at.resolve("points.csv"), List.of("x", "y", "value"));
            }
            return new Verdict(Verdict.Outcome.READ, "");
        } catch (RefusedException refusal) {
            boolean complete = !refusal.complaints().isEmpty()
                    && refusal.complaints().stream().noneMatch(c -> c.problem().isBlank());
            return complete
                    ? new Verdict(Verdict.Outcome.REFUSED, String.valueOf(refusal.getMessage()))
                    : new Verdict(Verdict.Outcome.DEFECT, "refused without a complaint");
        } catch (IOException | RuntimeException | StackOverflowError | OutOfMemoryError defect) {
            StackTraceElement[] trace = defect.getStackTrace();
            return new Verdict(Verdict.Outcome.DEFECT, defect + (trace.length > 0 ? " at " + trace[0] : ""));
        }
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
