package corewright.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.contour.Band;
import corewright.contour.Contours;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code corewright contour}: the bands between levels of an ESRI ASCII grid as GeoJSON. */
@Command(
        name = "contour",
        mixinStandardHelpOptions = true,
        description = "Polygons of the bands between levels of a grid; a band holds lower <= value < upper.")
final class ContourCommand implements Callable<Integer> {
    @Option(names = "--grid", required = true, paramLabel = "G.asc", description = "ESRI ASCII grid, values at centres")
    private Path grid = Path.of("");

    @Option(names = "--levels", required = true, split = ",", paramLabel = "LEVEL", description = "such as 0.5,0.8")
    private double[] levels = {};

    @Option(names = "--out", required = true, paramLabel = "C.geojson", description = "the file to write")
    private Path out = Path.of("");

    @Option(names = "--json", description = "print the bands' areas as JSON")
    private boolean json;

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (Arrays.stream(levels).anyMatch(level -> !Double.isFinite(level))) {
            throw new ParameterException(spec.commandLine(), "--levels: found a level that is not finite");
        }
        if (Files.exists(out) && Files.exists(grid) && Files.isSameFile(grid, out)) {
            throw new ParameterException(spec.commandLine(), "--out: would overwrite the grid " + grid);
        }
        WholeFile.check(out);
        List<Band> bands = Contours.bands(GridReader.read(grid), levels);
        WholeFile.write(out, BandsGeoJson.of(bands) + "\n");
        PrintWriter printer = spec.commandLine().getOut();
        if (json) {
            printer.println(summary(bands).toPrettyString());
        } else {
            bands.forEach(band -> printer.println(sentence(band)));
            printer.println(bands.size() + " bands written to " + out);
        }
        return Corewright.DONE;
    }

    private static String sentence(Band band) {
        String upper = Double.isInfinite(band.upper()) ? "up" : "to below " + band.upper();
        String from = Double.isInfinite(band.lower()) ? "below " + band.upper() : "from " + band.lower() + " " + upper;
        boolean all = Double.isInfinite(band.lower()) && Double.isInfinite(band.upper());
        return String.format(
                Locale.ROOT, "%s: area %.9g", all ? "all" : from, band.area().getArea());
    }

    private ObjectNode summary(List<Band> bands) {
        ObjectNode root = new ObjectMapper().createObjectNode().put("out", out.toString());
        ArrayNode list = root.putArray("bands");
        for (Band band : bands) {
            ObjectNode node = list.addObject();
            BandsGeoJson.levels(node, band);
            node.put("area", band.area().getArea());
            node.put("polygons", band.area().getNumGeometries());
        }
        return root;
    }
}
