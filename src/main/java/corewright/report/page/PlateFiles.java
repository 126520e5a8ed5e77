package corewright.report.page;

import corewright.assessment.Assessment;
import corewright.drawing.plates.Plate;
import corewright.drawing.plates.Plates;
import java.awt.Graphics2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** maps: every plate as a picture and as vectors. */
public final class PlateFiles {
    private PlateFiles() {}

    /** One picture that is no plate, with the same two endings; one unit of what is painted on is one millimetre. */
    public static void picture(Path folder, String name, double widthMm, double heightMm, Consumer<Graphics2D> painting)
            throws IOException {
        PngPlate.write(widthMm, heightMm, painting, folder.resolve(name + ".png"));
        SvgPlate.write(widthMm, heightMm, painting, folder.resolve(name + ".svg"));
    }

    public static void write(Assessment assessment, Path folder) throws IOException {
        List<Plate> plates = Plates.of(assessment);
        Map<String, String> names =
                FileNames.of(plates.stream().map(Plate::name).toList());
        for (Plate plate : plates) {
            String name = names.get(plate.name());
            PngPlate.write(plate, folder.resolve(name + ".png"));
            SvgPlate.write(plate, folder.resolve(name + ".svg"));
        }
    }
}
