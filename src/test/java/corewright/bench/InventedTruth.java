package corewright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;

/**
 * What is under an invented deck: patches, each with a ragged edge. A patch's inner distance is about the millimetres from
 * its edge, positive inside; water, looseness and void begin at depths of their own.
 */
public final class InventedTruth {
    /** How damage comes about. */
    public enum Kind {
        /** Ragged leaks around fittings: wet, loose inside that, empty in the middle. */
        FITTINGS,
        /** Long and narrow along an edge of the deck. */
        EDGE,
        /** Many small ones anywhere. */
        MANY,
        /** A few large leaks far from any fitting. */
        ELSEWHERE,
        /** Skins loose over dry core, some with a void; sometimes a leak elsewhere. */
        DRY_LOOSE,
        /** Nothing at all. */
        NONE
    }

    /** A patch about a line; {@code wetFrom} and the others are inner distances, infinite where it never comes to that. */
    private record Patch(
            LineSegment spine,
            double radius,
            double wetFrom,
            double looseFrom,
            double voidFrom,
            double deepMm,
            Waves edge) {
        double inner(double x, double y) {
            return radius - spine.distance(new Coordinate(x, y)) + radius * edge.at(x, y);
        }
    }

    /** Smooth random unevenness: six plane waves of 150 to 700 mm, standard deviation {@code size}. */
    private record Waves(double size, List<double[]> waves) {
        static Waves of(Random random, double size) {
            List<double[]> waves = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                double k = 2 * Math.PI / (150 + 550 * random.nextDouble());
                double angle = 2 * Math.PI * random.nextDouble();
                waves.add(new double[] {k * Math.cos(angle), k * Math.sin(angle), 2 * Math.PI * random.nextDouble()});
            }
            return new Waves(size, waves);
        }

        double at(double x, double y) {
            double sum = 0;
            for (double[] w : waves) {
                sum += Math.sin(w[0] * x + w[1] * y + w[2]);
            }
            return size * sum / Math.sqrt(3);
        }
    }

    private static final double NEVER = Double.POSITIVE_INFINITY;

    private final double coreMm;
    private final List<Patch> patches = new ArrayList<>();

    /** @param fittings places of the fittings; lengthMm, widthMm the deck's, from the origin */
    InventedTruth(Kind kind, Random random, double lengthMm, double widthMm, double coreMm, List<Coordinate> fittings) {
        this.coreMm = coreMm;
        switch (kind) {
            case FITTINGS ->
                fittings.forEach(f -> {
                    if (random.nextDouble() < 0.5) {
                        add(random, spot(f), 120 + 280 * random.nextDouble(), true);
                    }
                });
            case EDGE -> {
                double y = random.nextBoolean() ? 0 : widthMm;
                double from = 0.5 * lengthMm * random.nextDouble();
                double to = from + (0.25 + 0.25 * random.nextDouble()) * lengthMm;
                add(random, new LineSegment(from, y, to, y), 90 + 150 * random.nextDouble(), true);
            }
            case MANY -> {
                for (int i = 8 + random.nextInt(10); i > 0; i--) {
                    add(random, anywhere(random, lengthMm, widthMm, 0), 70 + 90 * random.nextDouble(), true);
                }
            }
            case ELSEWHERE -> {
                for (int i = 1 + random.nextInt(3); i > 0; i--) {
                    double stretch = 400 * random.nextDouble();
                    add(random, anywhere(random, lengthMm, widthMm, stretch), 150 + 250 * random.nextDouble(), true);
                }
            }
            case DRY_LOOSE -> {
                for (int i = 1 + random.nextInt(3); i > 0; i--) {
                    double stretch = 300 * random.nextDouble();
                    add(random, anywhere(random, lengthMm, widthMm, stretch), 120 + 250 * random.nextDouble(), false);
                }
                if (random.nextBoolean()) {
                    add(random, anywhere(random, lengthMm, widthMm, 0), 120 + 200 * random.nextDouble(), true);
                }
            }
            case NONE -> {}
        }
    }

    private InventedTruth(double coreMm, List<Patch> patches) {
        this.coreMm = coreMm;
        this.patches.addAll(patches);
    }

    /** The same deck with one more patch of bonded wet, dry loose, or wet and loose core, its edge ragged like the others'. */
    InventedTruth with(Coordinate middle, double radius, boolean wet, boolean loose, Random random) {
        InventedTruth more = new InventedTruth(coreMm, patches);
        more.patches.add(
                new Patch(spot(middle), radius, wet ? 0 : NEVER, loose ? 0 : NEVER, NEVER, 0, Waves.of(random, 0.12)));
        return more;
    }

    private static LineSegment spot(Coordinate c) {
        return new LineSegment(c, c);
    }

    private static LineSegment anywhere(Random random, double lengthMm, double widthMm, double stretch) {
        double x = lengthMm * (0.1 + 0.8 * random.nextDouble());
        double y = widthMm * (0.1 + 0.8 * random.nextDouble());
        double angle = Math.PI * random.nextDouble();
        return new LineSegment(x, y, x + stretch * Math.cos(angle), y + stretch * Math.sin(angle));
    }

    private void add(Random random, LineSegment spine, double radius, boolean wet) {
        double looseFrom = wet ? radius * (0.1 + 0.4 * random.nextDouble()) : 0;
        boolean loose = !wet || random.nextDouble() < 0.8;
        double voidFrom = looseFrom + radius * (0.05 + 0.3 * random.nextDouble());
        boolean empty = loose && random.nextDouble() < 0.7;
        patches.add(new Patch(
                spine,
                radius,
                wet ? 0 : NEVER,
                loose ? looseFrom : NEVER,
                empty ? voidFrom : NEVER,
                coreMm * (0.2 + 0.8 * random.nextDouble()),
                Waves.of(random, 0.12)));
    }

    /** Inner distance from where water begins, millimetres; far below zero where there is none near. */
    double wetInner(double x, double y) {
        return patches.stream()
                .mapToDouble(p -> p.inner(x, y) - p.wetFrom)
                .max()
                .orElse(-1e4);
    }

    double looseInner(double x, double y) {
        return patches.stream()
                .mapToDouble(p -> p.inner(x, y) - p.looseFrom)
                .max()
                .orElse(-1e4);
    }

    /** Thinning to the rim over some 80 mm. */
    double depthMm(double x, double y) {
        double deepest = 0;
        for (Patch p : patches) {
            double in = p.inner(x, y) - p.voidFrom;
            deepest = Math.max(deepest, in > 0 ? p.deepMm * (1 - Math.exp(-in / 80)) : 0);
        }
        return Math.min(deepest, coreMm);
    }
}
