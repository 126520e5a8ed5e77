package corewright.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.field.CrossValidation;
import corewright.field.Estimates;
import corewright.field.ExperimentalVariogram;
import corewright.field.ModelChoice;
import corewright.field.OrdinaryKriging;
import corewright.field.Samples;
import corewright.field.Shape;
import corewright.field.Variogram;
import corewright.intake.text.Complaint;
import corewright.intake.text.RefusedException;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code corewright estimate}: ordinary kriging of a CSV column at the nodes of another CSV file. */
@Command(
        name = "estimate",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Estimates a value at nodes from scattered points, each with its variance (ordinary kriging).",
            "Without --model the variogram is fitted and printed."
        })
@SuppressWarnings("NullAway.Init") // the command line sets the required options
final class EstimateCommand implements Callable<Integer> {
    /** Time grows with the cube of the points at once; beyond this the nearest ones are used. Judgement. */
    private static final int MOST_AT_ONCE = 3000;

    /** Neighbours where none were asked for and the points are too many; two to three times the usual 24. Judgement. */
    private static final int USUAL_NEIGHBOURS = 64;

    @Spec
    private CommandSpec spec;

    @Option(names = "--points", required = true, paramLabel = "FILE", description = "CSV with columns x, y and COL.")
    private Path points;

    @Option(names = "--value", required = true, paramLabel = "COL", description = "The column to estimate.")
    private String value;

    @Option(names = "--at", required = true, paramLabel = "FILE", description = "CSV with the nodes' columns x and y.")
    private Path nodes;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "Written: x,y,estimate,variance.")
    private Path out;

    @Option(names = "--log", description = "Work in, and give, natural logarithms of the value.")
    private boolean log;

    @Option(names = "--model", paramLabel = "SHAPE", description = "spherical, exponential, gaussian or matern32.")
    private @Nullable Shape model;

    @Option(names = "--nugget", paramLabel = "N", description = "Value unit squared; 0 when not given.")
    private @Nullable Double nugget;

    @Option(names = "--sill", paramLabel = "S", description = "The partial sill: without the nugget.")
    private @Nullable Double sill;

    @Option(names = "--range", paramLabel = "R", description = "Range, in the unit of x and y.")
    private @Nullable Double range;

    @Option(names = "--major-deg", paramLabel = "A", description = "Long axis, degrees from +x towards +y.")
    private @Nullable Double majorDeg;

    @Option(names = "--ratio", paramLabel = "Q", description = "Short range over long range.")
    private @Nullable Double ratio;

    @Option(names = "--neighbours", paramLabel = "K", description = "Use only the nearest K points for a node.")
    private @Nullable Integer neighbours;

    @Option(names = "--cross-validate", description = "Add the leave-one-out errors.")
    private boolean crossValidate;

    @Option(names = "--json", description = "Print results as JSON.")
    private boolean json;

    /** What was used, for printing. */
    private record Used(Variogram variogram, String why, int neighbours, List<String> notes) {}

    @Override
    public Integer call() throws IOException {
        Variogram given = given();
        refuseOverwriting();
        WholeFile.check(out);
        List<Complaint> complaints = new ArrayList<>();
        NumberTable pointTable = read(points, List.of("x", "y", value), complaints);
        NumberTable nodeTable = read(nodes, List.of("x", "y"), complaints);
        if (pointTable == null || nodeTable == null) {
            throw new RefusedException(complaints);
        }
        Samples samples = samples(pointTable);
        Used used = used(given, samples);
        double[] x = nodeTable.column("x");
        double[] y = nodeTable.column("y");
        Estimates estimates = new OrdinaryKriging(samples, used.variogram()).estimate(x, y, used.neighbours());
        CrossValidation score =
                crossValidate ? CrossValidation.leaveOneOut(samples, used.variogram(), used.neighbours()) : null;
        WholeFile.write(out, csv(x, y, estimates));
        if (json) {
            printJson(used, x.length, score);
        } else {
            print(used, x.length, score);
        }
        return Corewright.DONE;
    }

    /** The variogram asked for, or null when it is to be fitted. */
    private @Nullable Variogram given() {
        if (neighbours != null && neighbours < 1) {
            throw wrong("--neighbours is " + neighbours + ", expected 1 or more");
        }
        if (model == null) {
            if (nugget != null || sill != null || range != null || majorDeg != null || ratio != null) {
                throw wrong("--nugget, --sill, --range, --major-deg and --ratio describe a --model, and none is given");
            }
            return null;
        }
        if (sill == null || range == null) {
            throw wrong("--model needs --sill and --range");
        }
        if ((majorDeg == null) != (ratio == null)) {
            throw wrong("--major-deg and --ratio go together");
        }
        double jump = nugget == null ? 0 : nugget;
        if (jump + sill == 0) {
            throw wrong("--nugget and --sill are both 0: such a value would be the same everywhere");
        }
        try {
            return new Variogram(model, jump, sill, range, majorDeg == null ? 0 : majorDeg, ratio == null ? 1 : ratio);
        } catch (IllegalArgumentException e) { // the record knows what is possible, and says it
            throw wrong(String.valueOf(e.getMessage()));
        }
    }

    private void refuseOverwriting() {
        Path target = out.toAbsolutePath().normalize();
        for (Path input : List.of(points, nodes)) {
            if (input.toAbsolutePath().normalize().equals(target)) {
                throw wrong("--out would overwrite " + input);
            }
        }
    }

    private ParameterException wrong(String sentence) {
        return new ParameterException(spec.commandLine(), sentence);
    }

    private static @Nullable NumberTable read(Path file, List<String> columns, List<Complaint> complaints) {
        try {
            return NumberTable.read(file, columns);
        } catch (RefusedException e) {
            complaints.addAll(e.complaints());
            return null;
        }
    }

    private Samples samples(NumberTable table) throws RefusedException {
        double[] values = table.column(value);
        List<Complaint> complaints = new ArrayList<>();
        for (int i = 0; i < values.length && log; i++) {
            if (!(values[i] > 0)) {
                complaints.add(Complaint.of(
                        table.origin(i), value, String.valueOf(values[i]), "a number above 0, for its logarithm"));
            }
            values[i] = Math.log(values[i]);
        }
        if (!complaints.isEmpty()) {
            throw new RefusedException(complaints);
        }
        return Samples.of(table.column("x"), table.column("y"), values);
    }

    private Used used(@Nullable Variogram given, Samples samples) {
        List<String> notes = new ArrayList<>();
        int places = samples.merged().size();
        if (places < samples.size()) {
            notes.add("averaged with another point at the same place: " + (samples.size() - places) + " of "
                    + samples.size() + " points");
        }
        int nearest = neighbours == null || neighbours >= places ? 0 : neighbours;
        if (nearest == 0 && places > MOST_AT_ONCE) {
            if (neighbours != null) {
                throw wrong("--neighbours is " + neighbours + " of " + places + " points, expected at most "
                        + MOST_AT_ONCE);
            }
            nearest = USUAL_NEIGHBOURS;
            notes.add(places + " points are too many at once: the nearest " + nearest + " were used for each node");
        }
        if (given != null) {
            return new Used(given, "", nearest, notes);
        }
        double third = ExperimentalVariogram.usualCutoff(samples);
        ModelChoice.Choice choice = ModelChoice.choose(samples, third > 0 ? third : 1);
        return new Used(choice.variogram(), choice.why(), nearest, notes);
    }

    private static String csv(double[] x, double[] y, Estimates estimates) {
        StringBuilder csv = new StringBuilder("x,y,estimate,variance\n");
        for (int i = 0; i < x.length; i++) {
            csv.append(x[i]).append(',').append(y[i]).append(',');
            csv.append(estimates.estimate(i))
                    .append(',')
                    .append(estimates.variance(i))
                    .append('\n');
        }
        return csv.toString();
    }

    private void print(Used used, int nodeCount, @Nullable CrossValidation score) {
        PrintWriter printer = spec.commandLine().getOut();
        Variogram v = used.variogram();
        if (!used.why().isEmpty()) {
            printer.println(used.why());
            printer.println(String.format(
                    Locale.ROOT,
                    "fitted: --model %s --nugget %s --sill %s --range %s --major-deg %s --ratio %s",
                    name(v.shape()),
                    v.nugget(),
                    v.partialSill(),
                    v.range(),
                    v.majorDeg(),
                    v.ratio()));
        }
        used.notes().forEach(printer::println);
        if (score != null) {
            printer.println(String.format(
                    Locale.ROOT,
                    "leave-one-out: mean error %.9g, root mean square %.9g, %d points",
                    score.meanError(),
                    score.rootMeanSquare(),
                    score.samples()));
        }
        printer.println(nodeCount + " estimates in " + out);
    }

    private void printJson(Used used, int nodeCount, @Nullable CrossValidation score) {
        Variogram v = used.variogram();
        ObjectNode root = new ObjectMapper().createObjectNode();
        root.put("out", out.toString()).put("nodes", nodeCount).put("neighbours", used.neighbours());
        root.putObject("model")
                .put("shape", name(v.shape()))
                .put("nugget", v.nugget())
                .put("sill", v.partialSill())
                .put("range", v.range())
                .put("major_deg", v.majorDeg())
                .put("ratio", v.ratio());
        root.put("fitted", !used.why().isEmpty()).put("why", used.why());
        used.notes().forEach(root.putArray("notes")::add);
        if (score != null) {
            root.putObject("cross_validation")
                    .put("points", score.samples())
                    .put("mean_error", score.meanError())
                    .put("root_mean_square", score.rootMeanSquare())
                    .put("mean_absolute_error", score.meanAbsolute())
                    .put("mean_z", score.meanZ())
                    .put("rms_z", score.rmsZ());
        }
        spec.commandLine().getOut().println(root.toPrettyString());
    }

    private static String name(Shape shape) {
        return shape.name().toLowerCase(Locale.ROOT);
    }
}
