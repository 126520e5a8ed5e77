package corewright.desktop.resurvey;

import corewright.assessment.Assessed;
import corewright.assessment.Assessor;
import corewright.comparison.Comparer;
import corewright.comparison.Comparison;
import corewright.comparison.FaceComparison;
import corewright.comparison.Side;
import corewright.desktop.plan.Pixels;
import corewright.desktop.state.EditLog;
import corewright.desktop.state.SurveyOpener;
import corewright.drawing.kit.Figures;
import corewright.report.compare.ComparisonMaps;
import corewright.report.compare.ComparisonWords;
import corewright.report.page.FileNames;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/**
 * What the window shows of two surveys.
 *
 * @param title when they were made
 * @param words what changed, and whether the readings prove it, a line each
 */
public record Resurvey(String title, List<FacePictures> faces, List<String> words) {
    public Resurvey {
        faces = List.copyOf(faces);
        words = List.copyOf(words);
    }

    /** One face, all three in one scale. */
    public record FacePictures(String face, Pixels before, Pixels after, Pixels change) {}

    /**
     * Maps both surveys and compares them, the earlier with the later; of two of one day the one that is open is the later. Takes
     * seconds: not for the window's thread.
     *
     * @throws IOException where the other cannot be read
     */
    public static Resurvey of(Survey open, Path other) throws IOException {
        Survey another;
        try (EditLog log = SurveyOpener.open(other)) {
            another = log.survey();
        }
        boolean openIsLater =
                !open.heading().surveyed().isBefore(another.heading().surveyed());
        Comparison comparison =
                Comparer.compare(mapped(openIsLater ? another : open), mapped(openIsLater ? open : another));
        String title = Figures.date(comparison.before().survey().heading().surveyed()) + " beside "
                + Figures.date(comparison.after().survey().heading().surveyed());
        return new Resurvey(title, pictures(comparison), ComparisonWords.brief(comparison));
    }

    private static Side mapped(Survey survey) {
        Assessed mapped = Assessor.mapped(survey, List.of());
        return new Side(mapped.assessment(), mapped.earlier().parameters());
    }

    private static List<FacePictures> pictures(Comparison comparison) throws IOException {
        Path folder = Files.createTempDirectory(Path.of(System.getProperty("java.io.tmpdir")), "corewright-compare");
        try {
            ComparisonMaps.write(comparison, folder);
            List<String> compared = comparison.faces().stream()
                    .filter(FaceComparison::compared)
                    .map(FaceComparison::name)
                    .toList();
            Map<String, String> names = FileNames.of(compared);
            List<FacePictures> all = new ArrayList<>();
            for (String face : compared) {
                String name = names.getOrDefault(face, face);
                all.add(new FacePictures(
                        face,
                        picture(folder, name + "-before"),
                        picture(folder, name + "-after"),
                        picture(folder, name + "-change")));
            }
            return all;
        } finally {
            remove(folder);
        }
    }

    private static Pixels picture(Path folder, String name) throws IOException {
        return Pixels.of(ImageIO.read(folder.resolve(name + ".png").toFile()));
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
