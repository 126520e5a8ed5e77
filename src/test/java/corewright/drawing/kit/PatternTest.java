package corewright.drawing.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

class PatternTest {
    private static final double DPI = 300;

    /** The design's computed tones; tolerance one point, half of it for cut edges of a 40 mm square. */
    @ParameterizedTest
    @CsvSource({"UNDECIDED, 5", "WET, 11", "DELAMINATED, 21", "WET_DELAMINATED, 33", "VOID, 62"})
    void hasTheToneOfTheDesign(Pattern pattern, double percent) {
        assertThat(ink(pattern, square(30, 30, 40), 100) * 100).isEqualTo(percent, within(1.0));
    }

    /** Smallest squares of the pattern set and one that is drawn enlarged. */
    @ParameterizedTest
    @CsvSource({
        "WET, 8",
        "WET, 4",
        "WET, 2",
        "WET, 0.6",
        "DELAMINATED, 2",
        "DELAMINATED, 0.6",
        "WET_DELAMINATED, 2",
        "WET_DELAMINATED, 0.6",
        "VOID, 2",
        "VOID, 0.6",
        "UNDECIDED, 2",
        "UNDECIDED, 0.6"
    })
    void leavesItsTokenInTheSmallestRegionWhereverItLies(Pattern pattern, double side) {
        for (int i = 0; i < 7; i++) {
            Polygon area = square(10 + 0.37 * i, 10 + 0.53 * i, side);
            double dot = 0.02; // a share of the square that no smoothing at its edge reaches by itself

            assertThat(ink(pattern, area, 30)).as("place %d", i).isGreaterThan(dot);
        }
    }

    @ParameterizedTest
    @CsvSource({"WET", "DELAMINATED", "WET_DELAMINATED", "VOID"})
    void joinsWithItsNeighbourAcrossASharedEdge(Pattern pattern) {
        Point2D datum = new Point2D.Double(3, 4);
        BufferedImage whole = image(60);
        pattern.paint(paper(whole), rectangle(10, 10, 50, 40), datum);
        BufferedImage halves = image(60);
        pattern.paint(paper(halves), rectangle(10, 10, 30, 40), datum);
        pattern.paint(paper(halves), rectangle(30, 10, 50, 40), datum);

        int differing = 0;
        for (int x = 0; x < whole.getWidth(); x++) {
            for (int y = 0; y < whole.getHeight(); y++) {
                int difference = Math.abs((whole.getRGB(x, y) & 255) - (halves.getRGB(x, y) & 255));
                differing += difference > 64 ? 1 : 0;
            }
        }

        // smoothing may differ along the seam of 30 mm, 354 pixels; a broken phase would differ everywhere
        assertThat(differing).isLessThan(354);
    }

    private static double ink(Pattern pattern, Polygon area, double pageMm) {
        BufferedImage image = image(pageMm);
        pattern.paint(paper(image), area, new Point2D.Double(0.3, 0.7));
        double scale = DPI / 25.4;
        var box = area.getEnvelopeInternal();
        double dark = 0;
        int pixels = 0;
        for (int x = (int) (box.getMinX() * scale); x < box.getMaxX() * scale; x++) {
            for (int y = (int) (box.getMinY() * scale); y < box.getMaxY() * scale; y++) {
                dark += (255 - (image.getRGB(x, y) & 255)) / 255.0;
                pixels++;
            }
        }
        return dark / pixels;
    }

    private static BufferedImage image(double pageMm) {
        int side = (int) Math.ceil(pageMm * DPI / 25.4);
        return new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
    }

    private static Paper paper(BufferedImage image) {
        Graphics2D g = image.createGraphics();
        if ((image.getRGB(0, 0) & 255) == 0) {
            g.setColor(Color.WHITE);
            g.fillRect(0, 0, image.getWidth(), image.getHeight());
        }
        g.scale(DPI / 25.4, DPI / 25.4);
        return new Paper(g);
    }

    private static Polygon square(double x, double y, double side) {
        return rectangle(x, y, x + side, y + side);
    }

    private static Polygon rectangle(double x1, double y1, double x2, double y2) {
        return Shapes.FACTORY.createPolygon(new Coordinate[] {
            new Coordinate(x1, y1),
            new Coordinate(x2, y1),
            new Coordinate(x2, y2),
            new Coordinate(x1, y2),
            new Coordinate(x1, y1)
        });
    }
}
