package corewright.demo;

import corewright.demo.Plan.Fitting;
import corewright.demo.Truth.Damage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TreeSet;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;

/**
 * A surveyor's walk over the boat: chalked grids, closer where something was found, with scatter and a few mistakes.
 *
 * <p>Over balsa the relative meter reads 10 where the core is dry, 25 at the edge of wet core and above 40 well inside it;
 * over foam, which holds water in its joints only, 6, 16 and 30. Metal raises it.
 */
final class Walk {
    /** What the meter reads over dry core, at the edge of wet core, and most where the core is wettest. */
    private record Scale(String meter, double dry, double edge, double most) {
        double reads(double wetness) {
            return wetness < 1 ? dry + (edge - dry) * wetness : edge + (most - edge) * Math.sqrt(wetness - 1);
        }
    }

    private static final Scale OVER_BALSA = new Scale("A", 10, 25, 46);
    private static final Scale OVER_FOAM = new Scale("B", 6, 16, 30);

    /** How far metal upsets the meter, and by how much beside it. */
    private static final double METAL_MM = 95;

    private static final double METAL_RISE = 38;

    /** The pilot hole whose note leaves out the core. */
    private static final double[] NOT_LOOKED_AT = {2720, -100};

    /** Of a dozen seeds tried one that leaves no slivers of a few square centimetres beside the damage: the maps read better. */
    private final Random random = new Random(41);

    /** A place on a chalked grid. */
    private record Place(double x, double y) implements Comparable<Place> {
        @Override
        public int compareTo(Place o) {
            return x != o.x ? Double.compare(x, o.x) : Double.compare(y, o.y);
        }
    }

    String moisture() {
        StringBuilder csv = new StringBuilder("id,face,x,y,value,meter,reference,note\n");
        int n = 0;
        for (String face : List.of(Plan.DECK, Plan.FRONT)) {
            for (Place p : grid(face, face.equals(Plan.DECK) ? 180 : 140, face.equals(Plan.DECK) ? 90 : 70, true)) {
                csv.append(moistureRow("M" + ++n, face, p, "", ""));
            }
        }
        for (double y : new double[] {-40, -20, 0, 20, 40}) {
            csv.append(
                    moistureRow("M" + ++n, Plan.DECK, new Place(300, y), "yes", "dry by a plug of an earlier survey"));
        }
        csv.append(moistureRow("M" + ++n, Plan.DECK, new Place(2790, 720), "", "read again"));
        csv.append(moistureRow("M" + ++n, Plan.DECK, new Place(450, -360), "", "read again"));
        csv.append(offScale("M" + ++n, 2050, 70, ">100"));
        csv.append(offScale("M" + ++n, 2120, 70, "100+"));
        return csv.toString();
    }

    private String moistureRow(String id, String face, Place p, String reference, String note) {
        Scale scale = face.equals(Plan.DECK) ? OVER_BALSA : OVER_FOAM;
        double mean = scale.reads(Truth.wetness(face, p.x, p.y));
        double value = mean + metal(face, p) + (1.2 + 0.06 * mean) * random.nextGaussian();
        return String.format(
                Locale.ROOT,
                "%s,%s,%.0f,%.0f,%d,%s,%s,%s%n",
                id,
                face,
                p.x,
                p.y,
                Math.round(Math.min(99, Math.max(2, value))),
                scale.meter(),
                reference,
                note);
    }

    private static String offScale(String id, double x, double y, String value) {
        return String.format(Locale.ROOT, "%s,%s,%.0f,%.0f,%s,A,,needle at its stop%n", id, Plan.DECK, x, y, value);
    }

    private static double metal(String face, Place p) {
        double rise = 0;
        for (Fitting f : Plan.FITTINGS) {
            if (f.metal() && f.face().equals(face)) {
                double share = 1 - StrictMath.hypot(p.x - f.x(), p.y - f.y()) / METAL_MM;
                rise = Math.max(rise, METAL_RISE * Math.max(0, share));
            }
        }
        return rise;
    }

    String taps() {
        StringBuilder csv = new StringBuilder("id,face,x,y,sound\n");
        int n = 0;
        for (String face : List.of(Plan.DECK, Plan.FRONT)) {
            for (Place p : grid(face, 160, 80, false)) {
                boolean misheard = face.equals(Plan.DECK) && p.x == 1360 && p.y == 480;
                String sound = misheard ? "hollow" : sound(face, p);
                csv.append(String.format(Locale.ROOT, "T%d,%s,%.0f,%.0f,%s%n", ++n, face, p.x, p.y, sound));
            }
        }
        return csv.toString();
    }

    /** Edges are heard within some 15 mm; a skin over wet, soft core sounds dull as often as hollow. */
    private String sound(String face, Place p) {
        double x = p.x + 15 * random.nextGaussian();
        double y = p.y + 15 * random.nextGaussian();
        double chance = random.nextDouble();
        if (!Truth.isLoose(face, x, y)) {
            return "sound";
        }
        boolean wet = Truth.isWet(face, p.x, p.y);
        return chance < (wet ? 0.5 : Truth.depthMm(face, x, y) > 0.5 ? 0.05 : 0.25) ? "dull" : "hollow";
    }

    String probes() {
        StringBuilder csv = new StringBuilder("id,face,x,y,void_depth,core_state,core_moisture,note\n");
        double[][] deck = {
            // empty space, from its middle to its rim, and beyond
            {1530, -420},
            {1420, -370},
            {1660, -480},
            {1310, -400},
            {1560, -290},
            {1500, -550},
            {1880, -580},
            // loose over dry core
            {830, 600},
            {690, 640},
            {990, 600},
            // wet, bonded
            {2700, 650},
            {2830, 560},
            // wet and loose
            {2140, 150},
            {2000, 110},
            {2230, 60},
            // abaft the rib
            {2450, 120},
            // loose; the core was not looked at
            NOT_LOOKED_AT,
        };
        double[][] front = {{470, 290}, {330, 270}, {620, 315}, {1340, 140}};
        int n = 0;
        for (double[] p : deck) {
            csv.append(probeRow("P" + ++n, Plan.DECK, p[0], p[1]));
        }
        for (double[] p : front) {
            csv.append(probeRow("P" + ++n, Plan.FRONT, p[0], p[1]));
        }
        return csv.toString();
    }

    /** Depths are read off the drill to half a millimetre. */
    private String probeRow(String id, String face, double x, double y) {
        double depth = Truth.depthMm(face, x, y);
        double error = 0.35 * random.nextGaussian();
        double read = depth < 0.5 ? 0 : Math.max(0.5, Math.rint(2 * (depth + error)) / 2);
        boolean wet = Truth.isWet(face, x, y);
        String state = x == NOT_LOOKED_AT[0] && y == NOT_LOOKED_AT[1]
                ? ""
                : !wet ? "dry" : Truth.isLoose(face, x, y) && x < 2200 ? "rotted" : "wet";
        String water = state.equals("rotted") ? "wet" : "";
        return String.format(Locale.ROOT, "%s,%s,%.0f,%.0f,%.1f,%s,%s,%n", id, face, x, y, read, state, water);
    }

    /** Places of a coarse grid, and of a finer one where the first walk would have found something. */
    private static Iterable<Place> grid(String face, double coarse, double fine, boolean water) {
        Geometry core = Plan.core(face).buffer(-30);
        var inside = new IndexedPointInAreaLocator(core);
        var box = core.getEnvelopeInternal();
        TreeSet<Place> places = new TreeSet<>();
        for (double step : new double[] {coarse, fine}) {
            double x0 = step == coarse ? coarse / 2 : fine;
            for (double x = x0; x < box.getMaxX(); x += step) {
                for (double y = first(box.getMinY(), step); y < box.getMaxY(); y += step) {
                    if (inside.locate(new Coordinate(x, y)) == Location.INTERIOR
                            && (step == coarse || isClosely(face, x, y, water))) {
                        places.add(new Place(x, y));
                    }
                }
            }
        }
        return new ArrayList<>(places);
    }

    /** Rows stand on both sides of the centreline alike. */
    private static double first(double least, double step) {
        return Math.ceil(least / step) * step;
    }

    private static boolean isClosely(String face, double x, double y, boolean water) {
        for (Damage d : Truth.DAMAGES) {
            boolean heard = water ? d.wet() : d.loose();
            double rho = d.rho(x, y);
            if (heard && d.face().equals(face) && x < d.toX() && rho > (water ? 0.4 : 0.6) && rho < 1.35) {
                return true;
            }
        }
        return false;
    }
}
