package corewright.drawing;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** Pictures for the eye, written to target/drawing. */
class PictureTest {
    private static final double DPI = 200;

    @Test
    void paintsTheForedeck() throws IOException {
        MapSpec spec = new MapSpec(
                DrawingFixture.foredeck(),
                DrawingFixture.FACE,
                new Box(12, 19.5, 201, 151),
                MapSpec.LARGEST,
                EnumSet.complementOf(EnumSet.of(Layer.HOLES, Layer.CUTS, Layer.METHODS)),
                MapSpec.Wording.TRADE);
        picture("foredeck-map", 297, 210, g -> MapPainter.paint(new Paper(g), spec));
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
        ImageIO.write(image, "png", dir.resolve(name + ".png").toFile());
        return image;
    }
}
