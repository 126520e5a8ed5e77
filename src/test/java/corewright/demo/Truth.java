package corewright.demo;

import java.util.List;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;

/** What is wrong with the boat, place by place. Invented. */
final class Truth {
    /** Grid of the areas and volumes that the README names. */
    private static final double STEP_MM = 5;

    private Truth() {}

    /**
     * One damage: a ragged ellipse.
     *
     * @param along half axis along the direction {@code turnDeg}, from +x towards +y
     * @param wet the core holds water
     * @param loose the skin is off the core
     * @param depthMm empty space at the middle; falls to nothing at the edge
     * @param fromX the damage ends here where a divider stops it
     */
    record Damage(
            String name,
            String face,
            Ellipse shape,
            boolean wet,
            boolean loose,
            double depthMm,
            double fromX,
            String story) {
        /** 0 in the middle, 1 at the edge. */
        double rho(double x, double y) {
            return shape.rho(x, y);
        }

        boolean holds(String where, double x, double y) {
            return face.equals(where) && x > fromX && rho(x, y) < 1;
        }

        double depthAt(double x, double y) {
            double rho = rho(x, y);
            return rho < 1 ? depthMm * StrictMath.pow(1 - rho * rho, 0.7) : 0;
        }
    }

    /** Half axes {@code along} and {@code across}; the edge wanders by about a tenth. */
    record Ellipse(double x, double y, double along, double across, double turnDeg, double phase) {
        double rho(double px, double py) {
            double turn = StrictMath.toRadians(turnDeg);
            double u = (px - x) * StrictMath.cos(turn) + (py - y) * StrictMath.sin(turn);
            double v = (py - y) * StrictMath.cos(turn) - (px - x) * StrictMath.sin(turn);
            double angle = StrictMath.atan2(v / across, u / along);
            double edge = 1 + 0.10 * StrictMath.sin(2 * angle + phase) + 0.07 * StrictMath.sin(3 * angle + 2 * phase);
            return StrictMath.hypot(u / along, v / across) / edge;
        }

        double meanRadius() {
            return StrictMath.sqrt(along * across);
        }
    }

    static final List<Damage> DAMAGES = List.of(
            new Damage(
                    "empty space over dry core",
                    Plan.DECK,
                    new Ellipse(1560, 400, 320, 190, 12, 0.4),
                    false,
                    true,
                    8.5,
                    0,
                    "A core panel was never pressed into its bedding when the deck was built."),
            new Damage(
                    "loose skin over dry core",
                    Plan.DECK,
                    new Ellipse(2640, -690, 290, 155, 14, 2.1),
                    false,
                    true,
                    0.25,
                    0,
                    "The bond let go where the crew jumps down from the rail; too thin a gap to measure."),
            new Damage(
                    "wet core, still bonded",
                    Plan.DECK,
                    new Ellipse(2990, 860, 270, 200, 20, 1.2),
                    true,
                    false,
                    0,
                    0,
                    "The aft starboard stanchion base leaks."),
            new Damage(
                    "wet and loose at the inner forestay plate",
                    Plan.DECK,
                    new Ellipse(1150, -130, 290, 200, -10, 3.3),
                    true,
                    true,
                    0.35,
                    Plan.DIVIDER_X,
                    "The plate leaks and its core has begun to rot; the solid web stops the water forward."),
            new Damage(
                    "empty space over dry core on the cabin front",
                    Plan.FRONT,
                    new Ellipse(290, 410, 130, 220, 8, 5.0),
                    false,
                    true,
                    5.5,
                    0,
                    "Bedding ran down the steep form before the core was set."),
            new Damage(
                    "wet core under the portlight",
                    Plan.FRONT,
                    new Ellipse(160, -520, 115, 180, 0, 0.9),
                    true,
                    false,
                    0,
                    0,
                    "The portlight's lower edge leaks."));

    static boolean isLoose(String face, double x, double y) {
        return DAMAGES.stream().anyMatch(d -> d.loose() && d.holds(face, x, y));
    }

    static boolean isWet(String face, double x, double y) {
        return DAMAGES.stream().anyMatch(d -> d.wet() && d.holds(face, x, y));
    }

    static double depthMm(String face, double x, double y) {
        return DAMAGES.stream()
                .filter(d -> d.holds(face, x, y))
                .mapToDouble(d -> d.depthAt(x, y))
                .max()
                .orElse(0);
    }

    /** 0 far away from any wet core in the same bay, 1 at its edge, up to 2 in the middle. */
    static double wetness(String face, double x, double y) {
        double most = 0;
        for (Damage d : DAMAGES) {
            if (d.wet() && d.face().equals(face) && x > d.fromX()) {
                double rho = d.rho(x, y);
                double outside = (rho - 1) * d.shape().meanRadius() / 45; // damp fringe, a few centimetres
                most = Math.max(most, rho < 1 ? 2 - rho * rho : StrictMath.exp(-outside));
            }
        }
        return most;
    }

    /** Area in square metres and empty volume in litres. */
    record Size(double areaM2, double volumeL) {}

    static Size size(Damage damage) {
        var core = new IndexedPointInAreaLocator(Plan.core(damage.face()));
        var box = Plan.outline(damage.face()).getEnvelopeInternal();
        double area = 0;
        double volume = 0;
        for (double x = box.getMinX() + STEP_MM / 2; x < box.getMaxX(); x += STEP_MM) {
            for (double y = box.getMinY() + STEP_MM / 2; y < box.getMaxY(); y += STEP_MM) {
                if (damage.holds(damage.face(), x, y) && core.locate(new Coordinate(x, y)) != Location.EXTERIOR) {
                    area += STEP_MM * STEP_MM;
                    volume += STEP_MM * STEP_MM * damage.depthAt(x, y);
                }
            }
        }
        return new Size(area * 1e-6, volume * 1e-6);
    }
}
