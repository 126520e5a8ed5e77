package corewright.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.assessment.Verdict;
import corewright.drawing.kit.Measure;
import corewright.intake.Intake;
import corewright.survey.Finding;
import corewright.survey.Readings;
import corewright.survey.Spot;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads a survey and says what is odd about it; computes nothing. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Reads a survey and lists what is odd about it.")
final class CheckCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Parameters(paramLabel = "SURVEY", description = "the survey folder, or a survey file (.gpkg)")
    @SuppressWarnings("NullAway.Init")
    private Path survey;

    @Option(names = "--json", description = "print machine-readable results")
    private boolean json;

    @Override
    public Integer call() throws IOException {
        Intake intake = SurveySource.read(survey);
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(asJson(intake));
        } else {
            Verdict verdict = Verdict.of(intake.survey(), intake.findings());
            if (!verdict.free()) {
                out.println(Measure.of(intake.survey()).say(verdict.sentence()));
            }
            Measure measure = Measure.of(intake.survey());
            gravestFirst(intake).forEach(f -> print(f, measure, out));
            out.println(summary(intake));
        }
        return Corewright.DONE;
    }

    private static List<Finding> gravestFirst(Intake intake) {
        return intake.findings().stream()
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
    }

    private static void print(Finding finding, Measure measure, PrintWriter out) {
        String place = finding.origin()
                + (finding.about().id().isEmpty() ? "" : " " + finding.about().id());
        out.println(mark(finding.severity()) + " " + place + ": " + measure.say(finding.message()));
        out.println("    " + measure.say(finding.effect()));
    }

    private static String mark(Finding.Severity severity) {
        return switch (severity) {
            case HAZARD -> "!";
            case DOUBT -> "?";
            case HINT -> "+";
        };
    }

    private static String summary(Intake intake) {
        String read = counts(intake.survey().readings()).entrySet().stream()
                .filter(e -> e.getValue() > 0)
                .map(e -> e.getKey().replace('_', ' ') + " " + e.getValue())
                .collect(Collectors.joining(", "));
        return String.format(
                Locale.ROOT,
                "%s: faces %d; readings: %s; findings %d.",
                intake.survey().heading().name(),
                intake.survey().faces().size(),
                read,
                intake.findings().size());
    }

    private static Map<String, Integer> counts(Readings readings) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        counts.put("moisture", readings.moisture().size());
        counts.put("taps", readings.taps().size());
        counts.put("probes", readings.probes().size());
        counts.put("feelers", readings.feelers().size());
        counts.put("plugs", readings.plugs().size());
        counts.put("temperatures", readings.temperatures().size());
        counts.put("cured_taps", readings.curedTaps().size());
        return counts;
    }

    private static String asJson(Intake intake) {
        ObjectNode root = new ObjectMapper().createObjectNode();
        root.put("survey", intake.survey().heading().name());
        Verdict verdict = Verdict.of(intake.survey(), intake.findings());
        root.put("verdict", verdict.sentence());
        root.put("faces", intake.survey().faces().size());
        ObjectNode readings = root.putObject("readings");
        counts(intake.survey().readings()).forEach(readings::put);
        var findings = root.putArray("findings");
        Measure measure = Measure.of(intake.survey());
        for (Finding f : gravestFirst(intake)) {
            Spot spot = f.about().spot();
            findings.addObject()
                    .put("severity", f.severity().name().toLowerCase(Locale.ROOT))
                    .put("file", f.origin().file())
                    .put("line", f.origin().line())
                    .put("id", f.about().id())
                    .put("face", spot == null ? "" : spot.face())
                    .put("x", spot == null ? null : (Double) spot.xMm())
                    .put("y", spot == null ? null : (Double) spot.yMm())
                    .put("subject", f.subject().word())
                    .put("message", measure.say(f.message()))
                    .put("effect", measure.say(f.effect()));
        }
        return root.toPrettyString();
    }
}
