package corewright.repair.pattern;

import corewright.overlay.Overlay;
import corewright.repair.plan.Hole;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Feeler;
import corewright.survey.Spot;
import corewright.survey.settings.Drilling;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.locationtech.jts.densify.Densifier;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;

/**
 * Places in a cavity that a long nozzle reaches through an opening that is there already, so that no hole is drilled for
 * them.
 *
 * <p>The nozzle goes in at an access and straight on, as far as it is long, where a rod went before; at the edge of an opening
 * also where the gap lets it through. Through a hole in the skin it comes in at a slant and meets the bottom of the gap: see {@link
 * #slantMm}. Farther in is a possibility that no plan leans on. Of all places it reaches, the one from which the mix newly covers most is taken first, each cell counted the more
 * the fewer places cover it, so that no corner is left over; and so on while a place is worth its shot. Whether it saves a
 * hole is found with the pattern.
 */
final class NozzleTips {
    /** The opening's own size, and the play of the nozzle in it: so near to it the gap is not asked. Practice. */
    private static final double OPENING_MM = 25;

    /** A rod's way, to either side. Practice. */
    private static final double ROD_MM = 15;

    /** Openings longer than this are entered at several points. */
    private static final double ENTRY_STEP_MM = 50;

    /** A shot is worth its trouble where it covers this share of what it would in the open. Practice. */
    private static final double WORTH_SHARE = 0.2;

    private static final int MOST = 4;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Cavity cavity;
    private final Drilling drilling;
    private final List<LineString> rods;
    private final ToDoubleFunction<Coordinate> skinMm;

    /** @param skinMm outer skin at a place */
    NozzleTips(Cavity cavity, Drilling drilling, List<Feeler> feelers, ToDoubleFunction<Coordinate> skinMm) {
        this.cavity = cavity;
        this.drilling = drilling;
        this.skinMm = skinMm;
        rods = feelers.stream()
                .map(f -> FACTORY.createLineString(
                        new Coordinate[] {f.spot().coordinate(), f.tip().coordinate()}))
                .toList();
    }

    /** A place of the nozzle's mouth. */
    record Tip(int cell, double reachMm, Hole.Nozzle nozzle) {}

    /**
     * The places, the most telling first.
     *
     * @param reachMm by flat index, of mix from the nozzle's mouth
     * @param filled by flat index, filled from elsewhere
     */
    List<Tip> chosen(Face face, Travel travel, double[] reachMm, boolean[] filled) {
        List<Tip> reached = new ArrayList<>();
        for (Feature.Access access : face.all(Feature.Access.class)) {
            reach(access, face.name(), reachMm, reached);
        }
        return worthwhile(reached, travel, filled.clone());
    }

    /** One opening after another, the deepest first, so that the nozzle is withdrawn as it fills; by cell. */
    static Map<Integer, Hole.Nozzle> deepestFirst(List<Tip> tips) {
        Map<Integer, Hole.Nozzle> ordered = new LinkedHashMap<>();
        tips.stream()
                .sorted(Comparator.comparingDouble((Tip t) -> t.nozzle.in().xMm())
                        .thenComparingDouble(t -> t.nozzle.in().yMm())
                        .thenComparingDouble(t -> -t.nozzle.pushMm()))
                .forEach(t -> ordered.put(t.cell, t.nozzle));
        return ordered;
    }

    /** Every second cell each way, once for each point at which the nozzle can go in. */
    private void reach(Feature.Access access, String face, double[] reachMm, List<Tip> reached) {
        for (Coordinate in : entries(access.geometry())) {
            for (int c : cavity.cells) {
                boolean second = c / cavity.columns % 2 == 0 && c % cavity.columns % 2 == 0;
                double far = cavity.centre(c).distance(in);
                if (second && cavity.open[c] != 0 && far <= drilling.nozzleLengthMm() && way(access, in, c)) {
                    reached.add(
                            new Tip(c, reachMm[c], new Hole.Nozzle(access.name(), new Spot(face, in.x, in.y), far)));
                }
            }
        }
    }

    /** A small hole is entered at its middle, what is longer all along its edge. */
    private static Coordinate[] entries(Geometry opening) {
        boolean small = opening.getDimension() == 2
                && opening.getEnvelopeInternal().getWidth() <= ENTRY_STEP_MM
                && opening.getEnvelopeInternal().getHeight() <= ENTRY_STEP_MM;
        return small
                ? new Coordinate[] {opening.getCentroid().getCoordinate()}
                : Densifier.densify(opening, ENTRY_STEP_MM).getCoordinates();
    }

    /** Whether the nozzle passes from the opening to the cell. */
    private boolean way(Feature.Access access, Coordinate in, int cell) {
        LineSegment way = new LineSegment(in, cavity.centre(cell));
        int steps = (int) Math.ceil(way.getLength() / (cavity.cell / 2));
        double straightMm = straightMm(access, way, cavity.gapMm[cell]);
        for (int i = 1; i <= steps; i++) {
            Coordinate at = way.pointAlong((double) i / steps);
            boolean opened = access.geometry().isWithinDistance(FACTORY.createPoint(at), OPENING_MM);
            if (!opened && !passes(at, way.p0.distance(at) <= straightMm)) {
                return false;
            }
        }
        return true;
    }

    /** How far it goes in by itself: through an edge as far as it is long, through a hole as its slant lets it. */
    private double straightMm(Feature.Access access, LineSegment way, double gapMm) {
        if (access.geometry().getDimension() == 1) {
            return Double.POSITIVE_INFINITY;
        }
        double acrossMm = OPENING_MM;
        if (access.geometry().getDimension() == 2) {
            double back = access.geometry().getEnvelopeInternal().getDiameter() / way.getLength();
            LineString line = FACTORY.createLineString(new Coordinate[] {way.pointAlong(-back), way.p1});
            acrossMm = Overlay.intersection(access.geometry(), line).getLength();
        }
        return slantMm(acrossMm, drilling.nozzleOuterMm(), skinMm.applyAsDouble(way.p0), gapMm);
    }

    /**
     * How far a straight tube of diameter d gets under the skin through a hole: at the slant a at which it touches both edges,
     * {@code D = d / sin a + t / tan a}, it meets the bottom of the gap h after {@code h / tan a}.
     *
     * @param acrossMm D, of the hole along the way
     * @param skinMm t
     */
    static double slantMm(double acrossMm, double tubeMm, double skinMm, double gapMm) {
        if (acrossMm <= tubeMm) {
            return 0;
        }
        double low = 1e-4;
        double high = Math.PI / 2;
        for (int i = 0; i < 60; i++) {
            double a = (low + high) / 2;
            boolean steepEnough = tubeMm / Math.sin(a) + skinMm / Math.tan(a) <= acrossMm;
            low = steepEnough ? low : a;
            high = steepEnough ? a : high;
        }
        return gapMm / Math.tan(high);
    }

    private boolean passes(Coordinate at, boolean straight) {
        int row = (int) Math.floor((at.y - cavity.y0) / cavity.cell);
        int column = (int) Math.floor((at.x - cavity.x0) / cavity.cell);
        if (row < 0 || column < 0 || row >= cavity.rows || column >= cavity.columns) {
            return false;
        }
        int cell = row * cavity.columns + column;
        boolean hollow = cavity.inside(cell) && cavity.open[cell] != 0;
        return hollow && (straight && cavity.gapMm[cell] >= drilling.nozzleOuterMm() || rodWent(at));
    }

    private boolean rodWent(Coordinate at) {
        return rods.stream().anyMatch(r -> r.isWithinDistance(FACTORY.createPoint(at), ROD_MM));
    }

    private List<Tip> worthwhile(List<Tip> reached, Travel travel, boolean[] done) {
        int[][] covered = new int[reached.size()][];
        int[] times = new int[cavity.size()];
        for (int t = 0; t < covered.length; t++) {
            covered[t] = travel.coveredFrom(reached.get(t).cell, reached.get(t).reachMm);
            for (int c : covered[t]) {
                times[c]++;
            }
        }
        List<Tip> taken = new ArrayList<>();
        while (taken.size() < MOST) {
            int best = -1;
            double most = 0;
            for (int t = 0; t < covered.length; t++) {
                int gain = 0;
                double rare = 0;
                for (int c : covered[t]) {
                    gain += done[c] ? 0 : 1;
                    rare += done[c] ? 0 : 1.0 / times[c];
                }
                if (rare > most && worth(gain, reached.get(t).reachMm)) {
                    most = rare;
                    best = t;
                }
            }
            if (best < 0) {
                break;
            }
            taken.add(reached.get(best));
            for (int c : covered[best]) {
                done[c] = true;
            }
        }
        return taken;
    }

    private boolean worth(int cells, double reachMm) {
        return cells * cavity.cell * cavity.cell >= WORTH_SHARE * Math.PI * reachMm * reachMm;
    }
}
