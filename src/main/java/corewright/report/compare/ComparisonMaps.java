package corewright.report.compare;

import corewright.comparison.Comparison;
import corewright.comparison.FaceComparison;
import corewright.report.page.FileNames;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** maps: every compared face before, after, and what changed, as pictures and as vectors. */
public final class ComparisonMaps {
    private ComparisonMaps() {}

    public static void write(Comparison comparison, Path folder) throws IOException {
        List<FaceComparison> faces =
                comparison.faces().stream().filter(FaceComparison::compared).toList();
        Map<String, String> names =
                FileNames.of(faces.stream().map(FaceComparison::name).toList());
        for (FaceComparison face : faces) {
            new FaceMaps(comparison, face).pictures(folder, names.getOrDefault(face.name(), face.name()));
        }
    }
}
