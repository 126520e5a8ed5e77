package corewright.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.assessment.Assessed;
import corewright.assessment.Assessor;
import corewright.assessment.Earlier;
import corewright.assessment.Progress;
import corewright.comparison.Change;
import corewright.comparison.Comparer;
import corewright.comparison.Comparison;
import corewright.comparison.FaceComparison;
import corewright.comparison.Limits;
import corewright.comparison.Quantity;
import corewright.comparison.Side;
import corewright.drawing.kit.Measure;
import corewright.intake.Intake;
import corewright.report.ComparisonOutputs;
import corewright.report.Outputs;
import corewright.report.compare.ComparisonWords;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code corewright compare BEFORE AFTER --out DIR}: what changed between two surveys, and whether the readings prove it. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        description = "Compares a survey with a later one of the same boat: what is mended, what is left, what is new.")
final class CompareCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Parameters(
            index = "0",
            paramLabel = "BEFORE",
            description = "the earlier survey: a folder or a survey file (.gpkg)")
    @SuppressWarnings("NullAway.Init")
    private Path before;

    @Parameters(index = "1", paramLabel = "AFTER", description = "the later survey: a folder or a survey file (.gpkg)")
    @SuppressWarnings("NullAway.Init")
    private Path after;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            required = true,
            description = "folder for the outputs: new, empty, or of an earlier run, which is replaced")
    @SuppressWarnings("NullAway.Init")
    private Path out;

    @Option(names = "--json", description = "print machine-readable results")
    private boolean json;

    @Mixin
    @SuppressWarnings("NullAway.Init")
    private Quiet quiet;

    @Override
    public Integer call() throws IOException {
        Outputs.check(out);
        Intake later;
        Side was;
        Side is;
        Comparison comparison;
        try (StageClock clock = quiet.clock(spec.commandLine().getErr())) {
            clock.begin("intake", 0);
            Intake earlier = SurveySource.read(before);
            later = SurveySource.read(after);
            was = side(earlier, clock.part("before", share -> 0.4 * share));
            is = side(later, clock.part("after", share -> 0.4 + 0.4 * share));
            clock.begin("comparison", 0.8);
            comparison = Comparer.compare(was, is);
            ComparisonOutputs.write(comparison, out);
        }
        PrintWriter print = spec.commandLine().getOut();
        if (json) {
            print.println(asJson(comparison));
        } else {
            Measure measure = Measure.of(later.survey());
            print.println(later.survey().heading().name());
            ComparisonWords.brief(comparison).forEach(l -> print.println("  " + measure.say(l)));
            print.println("  comparison: " + out.resolve("comparison.pdf"));
        }
        PrintWriter err = spec.commandLine().getErr();
        return Math.max(RunCommand.status(was.assessment(), err), RunCommand.status(is.assessment(), err));
    }

    private static Side side(Intake intake, Progress progress) {
        Assessed assessed = Assessor.assess(intake.survey(), intake.findings(), Earlier.NONE, progress);
        return new Side(assessed.assessment(), assessed.earlier().parameters());
    }

    private static String asJson(Comparison comparison) {
        ObjectNode root = new ObjectMapper().createObjectNode();
        root.put("before", comparison.before().survey().heading().name());
        root.put("after", comparison.after().survey().heading().name());
        root.put("answer", ComparisonWords.answer(comparison));
        ArrayNode faces = root.putArray("faces");
        for (FaceComparison face : comparison.faces()) {
            ObjectNode node = faces.addObject();
            node.put("name", face.name());
            node.put("compared", face.compared());
            node.put("why_not", face.whyNot());
            face.notes().forEach(node.putArray("notes")::add);
            ArrayNode regions = node.putArray("regions");
            face.regions().forEach(r -> regions.addObject()
                    .put("id", r.region().id())
                    .put("method", r.method() == null ? null : r.method().word())
                    .put("verdict", r.fate().word())
                    .put("left_m2", Quantity.Unit.AREA.told(r.leftMm2())));
            ArrayNode news = node.putArray("new");
            face.news().forEach(n -> news.addObject()
                    .put("id", n.id())
                    .put("verdict", n.fate().word())
                    .put("area_m2", Quantity.Unit.AREA.told(n.area().getArea())));
        }
        ArrayNode figures = root.putArray("figures");
        comparison.figures().forEach(c -> figure(figures.addObject(), c));
        return root.toPrettyString();
    }

    private static void figure(ObjectNode node, Change change) {
        Quantity.Unit unit = change.quantity().unit();
        Limits limits = change.limits();
        node.put("face", change.face());
        node.put("region", change.region());
        node.put("quantity", change.quantity().word());
        node.put("unit", unit.word());
        node.put("before", unit.told(change.before()));
        node.put("after", unit.told(change.after()));
        node.put("difference", limits == null ? null : (Double) unit.told(change.difference()));
        node.put("low", limits == null ? null : (Double) unit.told(limits.low()));
        node.put("high", limits == null ? null : (Double) unit.told(limits.high()));
        node.put("proven", change.proven());
        node.put("why", change.why());
    }
}
