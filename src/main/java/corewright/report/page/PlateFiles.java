package corewright.report.page;

import corewright.assessment.Assessment;
import corewright.drawing.plates.Plate;
import corewright.drawing.plates.Plates;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** maps: every plate as a picture and as vectors. */
public final class PlateFiles {
    private PlateFiles() {}

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
