package corewright.drawing.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * A map printed in black and white at 300 dots per inch, each dot ink or none, still tells its conditions apart: each pattern is known
 * again by its texture alone. The texture is the share of ink and the structure tensor of the picture (J. Bigün and G. Granlund,
 * "Optimal orientation detection of linear symmetry", ICCV 1987): how much of its edges runs one way, and which way.
 */
class BlackAndWhiteTest {
    private static final double PX_PER_MM = 300 / 25.4;
    private static final int SIDE = 640;
    private static final int PLACES = 25;

    /** The two parts of the double angle run from -1 to 1, ink from 0 to 1: halved, all three count alike. */
    private record Texture(double ink, double along, double across) {
        double from(Texture o) {
            return Math.hypot(ink - o.ink, Math.hypot((along - o.along) / 2, (across - o.across) / 2));
        }
    }

    /** Regions of a palm and more at 1 : 20, of any shape, anywhere against the phase of the pattern. */
    @Test
    void everyPatternIsKnownByItsTextureInOneBit() {
        Map<Pattern, Texture> known = new EnumMap<>(Pattern.class);
        for (Pattern pattern : Pattern.values()) {
            known.put(pattern, texture(pattern, blob(new Random(1), 26, 24)));
        }
        Random random = new Random(20260402);
        int wrong = 0;
        StringBuilder said = new StringBuilder();
        for (Pattern pattern : Pattern.values()) {
            for (int i = 0; i < PLACES; i++) {
                double radius = 5 + 12 * random.nextDouble();
                Texture seen = texture(pattern, blob(random, 26, radius));
                Pattern taken = nearest(known, seen);
                if (taken != pattern) {
                    wrong++;
                    said.append(String.format(Locale.ROOT, "%s of %.0f mm taken for %s%n", pattern, radius, taken));
                }
            }
        }
        assertThat(wrong).as(said.toString()).isZero();
    }

    /** The measure tells what it claims to: nothing of blank paper, and which way lines lean. */
    @Test
    void blankPaperHasNoTexture() {
        Texture none = texture(
                new BufferedImage(SIDE, SIDE, BufferedImage.TYPE_BYTE_BINARY),
                blob(new Random(1), 26, 20),
                Color.WHITE);
        assertThat(none).isEqualTo(new Texture(0, 0, 0));
        assertThat(texture(Pattern.VOID, blob(new Random(1), 26, 20)).across()
                        * texture(Pattern.DELAMINATED, blob(new Random(1), 26, 20))
                                .across())
                .as("bars fall, line pairs rise")
                .isNegative();
    }

    private static Pattern nearest(Map<Pattern, Texture> known, Texture seen) {
        Pattern best = Pattern.WET;
        for (Map.Entry<Pattern, Texture> each : known.entrySet()) {
            Texture other = each.getValue();
            if (seen.from(other) < seen.from(Objects.requireNonNull(known.get(best)))) {
                best = each.getKey();
            }
        }
        return best;
    }

    /** A blob about (at, at) whose edge wanders by a fifth. */
    private static Polygon blob(Random random, double at, double radius) {
        Coordinate[] ring = new Coordinate[25];
        double shiftX = 5 * random.nextDouble();
        double shiftY = 5 * random.nextDouble();
        for (int i = 0; i < 24; i++) {
            double r = radius * (0.8 + 0.4 * random.nextDouble());
            double a = 2 * Math.PI * i / 24;
            ring[i] = new Coordinate(at + shiftX + r * Math.cos(a), at + shiftY + r * Math.sin(a));
        }
        ring[24] = ring[0];
        return Shapes.FACTORY.createPolygon(ring);
    }

    private static Texture texture(Pattern pattern, Polygon area) {
        BufferedImage image = new BufferedImage(SIDE, SIDE, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, SIDE, SIDE);
        g.scale(PX_PER_MM, PX_PER_MM);
        pattern.paint(new Paper(g), area, new Point2D.Double(0.3, 0.7));
        g.dispose();
        return measured(image, area);
    }

    private static Texture texture(BufferedImage image, Polygon area, Color ground) {
        Graphics2D g = image.createGraphics();
        g.setColor(ground);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.dispose();
        return measured(image, area);
    }

    /** Of the dots well inside the area, each ink or none. */
    private static Texture measured(BufferedImage image, Polygon area) {
        Geometry inside = area.buffer(-0.5);
        var box = inside.getEnvelopeInternal();
        int ink = 0;
        int all = 0;
        double xx = 0;
        double yy = 0;
        double xy = 0;
        for (int x = (int) (box.getMinX() * PX_PER_MM); x < box.getMaxX() * PX_PER_MM; x++) {
            for (int y = (int) (box.getMinY() * PX_PER_MM); y < box.getMaxY() * PX_PER_MM; y++) {
                double mmX = x / PX_PER_MM - box.centre().getX();
                double mmY = y / PX_PER_MM - box.centre().getY();
                if (Math.hypot(mmX, mmY) > box.getWidth() / 3) {
                    continue;
                }
                ink += bit(image, x, y);
                all++;
                // Sobel's differences, which blur the stairs of single dots
                double gx = column(image, x + 1, y) - column(image, x - 1, y);
                double gy = row(image, x, y + 1) - row(image, x, y - 1);
                xx += gx * gx;
                yy += gy * gy;
                xy += gx * gy;
            }
        }
        double edges = xx + yy;
        return new Texture((double) ink / all, edges == 0 ? 0 : (xx - yy) / edges, edges == 0 ? 0 : 2 * xy / edges);
    }

    private static int column(BufferedImage image, int x, int y) {
        return bit(image, x, y - 1) + 2 * bit(image, x, y) + bit(image, x, y + 1);
    }

    private static int row(BufferedImage image, int x, int y) {
        return bit(image, x - 1, y) + 2 * bit(image, x, y) + bit(image, x + 1, y);
    }

    private static int bit(BufferedImage image, int x, int y) {
        return (image.getRGB(x, y) & 255) < 128 ? 1 : 0;
    }
}
