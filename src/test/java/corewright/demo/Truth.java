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
     * @param toX the damage ends here where a divider stops it
     */
    record Damage(
            String name,
            String face,
            Ellipse shape,
            boolean wet,
            boolean loose,
            double depthMm,
            double toX,
            String story) {
        /** 0 in the middle, 1 at the edge. */
        double rho(double x, double y) {
            return shape.rho(x, y);
        }

        boolean holds(String where, double x, double y) {
            return face.equals(where) && x < toX && rho(x, y) < 1;
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
                    new Ellipse(1530, -420, 315, 190, -14, 0.4),
                    false,
                    true,
                    8.5,
                    Plan.DECK_LENGTH,
                    "The core was planed down here for a pad under a raft's cradle; pad and cradle were never fitted, "
                            + "and the outer skin was laid over the hollow."),
            new Damage(
                    "loose skin over dry core",
                    Plan.DECK,
                    new Ellipse(830, 600, 300, 150, 6, 2.1),
                    false,
                    true,
                    0.25,
                    Plan.DECK_LENGTH,
                    "A black solar mat lay here for years and the heat let the bond go; too thin a gap to measure."),
            new Damage(
                    "wet core, still bonded",
                    Plan.DECK,
                    new Ellipse(2730, 640, 265, 195, -12, 1.2),
                    true,
                    false,
                    0,
                    Plan.DECK_LENGTH,
                    "The starboard davit foot leaks."),
            new Damage(
                    "wet and loose at the signal mast step",
                    Plan.DECK,
                    new Ellipse(2110, 80, 285, 200, 10, 3.3),
                    true,
                    true,
                    0.35,
                    Plan.DIVIDER_X,
                    "The mast's cable gland leaks and the core has begun to rot; the solid rib stops the water aft."),
            new Damage(
                    "loose skin, core not looked at",
                    Plan.DECK,
                    new Ellipse(2720, -90, 200, 140, 20, 4.2),
                    false,
                    true,
                    0.25,
                    Plan.DECK_LENGTH,
                    "An outboard engine was dropped here; the core is dry, but the pilot hole's note leaves it out."),
            new Damage(
                    "empty space over dry core on the wheelhouse side",
                    Plan.FRONT,
                    new Ellipse(470, 290, 215, 130, 8, 5.0),
                    false,
                    true,
                    5.5,
                    Plan.DECK_LENGTH,
                    "The foam sheet was too stiff to follow a hollow of the mould and bridges it."),
            new Damage(
                    "wet joints under the ventilation grille",
                    Plan.FRONT,
                    new Ellipse(1340, 145, 180, 110, 0, 0.9),
                    true,
                    false,
                    0,
                    Plan.DECK_LENGTH,
                    "The grille's drain is blocked; water stands in the saw cuts of the foam, not in the foam itself."));

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
            if (d.wet() && d.face().equals(face) && x < d.toX()) {
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
