package corewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.assessment.Assessment;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.placing.Layer;
import corewright.drawing.placing.MapSpec;
import corewright.drawing.placing.MapWording;
import corewright.drawing.plates.MapPainter;
import corewright.drawing.plates.Plate;
import corewright.drawing.plates.Plates;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** Pictures for the eye, written to target/drawing. */
class PictureTest {
    private static final double DPI = 200;

    /** A sheet with words and lines on it, and no more black than a page of print, in shares of the page. */
    private static final double LEAST_INK = 0.01;

    private static final double MOST_INK = 0.15;

    @Test
    void paintsTheForedeck() throws IOException {
        plates("ronja", DrawingFixture.foredeck());
    }

    @Test
    void paintsADeckWithoutDamage() throws IOException {
        plates("none", DrawingFixture.plain("POLYGON((0 -600,2400 -600,2400 600,0 600,0 -600))", 2, 180, 0, 200));
    }

    @Test
    void paintsOneRegion() throws IOException {
        plates("one", DrawingFixture.plain("POLYGON((0 -600,2400 -600,2400 600,0 600,0 -600))", 2, 180, 1, 400));
    }

    @Test
    void paintsTwelveRegions() throws IOException {
        plates("twelve", DrawingFixture.plain("POLYGON((0 -1000,3600 -1000,3600 1000,0 1000,0 -1000))", 2, 0, 12, 400));
    }

    @Test
    void paintsASteepNarrowFace() throws IOException {
        plates("steep", DrawingFixture.plain("POLYGON((500 0,4700 0,4700 380,500 300,500 0))", 82, 90, 5, 200));
    }

    @Test
    void paintsAnOwnersMap() throws IOException {
        MapSpec spec = new MapSpec(
                DrawingFixture.foredeck(),
                DrawingFixture.FACE,
                new Box(18, 10, 174, 112),
                MapSpec.LARGEST,
                EnumSet.of(Layer.NEXT, Layer.REGION_LABELS, Layer.SCALE_AND_UPHILL),
                MapWording.OWNER);
        picture("owner-map", 210, 130, g -> MapPainter.paint(new Paper(g), spec));
    }

    private static void plates(String prefix, Assessment assessment) throws IOException {
        for (Plate plate : Plates.of(assessment)) {
            picture(prefix + "-" + plate.name(), plate.widthMm(), plate.heightMm(), plate::paint);
        }
    }

    private static double inkShare(BufferedImage image) {
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        return Arrays.stream(pixels).mapToDouble(p -> (255 - (p & 255)) / 255.0).sum() / pixels.length;
    }

    static BufferedImage picture(String name, double widthMm, double heightMm, Consumer<Graphics2D> painter)
            throws IOException {
        double scale = DPI / 25.4;
        BufferedImage image = new BufferedImage(
                (int) Math.round(widthMm * scale), (int) Math.round(heightMm * scale), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.scale(scale, scale);
        painter.accept(g);
        g.dispose();
        Path dir = Files.createDirectories(Path.of("target", "drawing"));
        assertThat(inkShare(image)).as(name).isBetween(LEAST_INK, MOST_INK);
        ImageIO.write(image, "png", dir.resolve(name + ".png").toFile());
        return image;
    }
}
