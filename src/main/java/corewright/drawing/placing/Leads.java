package corewright.drawing.placing;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Shapes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.LinearComponentExtracter;

/**
 * Ways out of a region for its leader: places for the dot, and the upright leg from there to beyond the deck's edge, with
 * what each would cost.
 */
final class Leads {
    /**
     * @param dotY place of the dot
     * @param edgeY where the leg has left the deck
     * @param cost in millimetres: length on the deck, and more for everything touched
     */
    record Lead(double x, double dotY, double edgeY, boolean up, double cost) {}

    /** Places tried across a region: finer than two reading columns at 1 : 100. */
    private static final int TRIES = 28;

    /** Ways kept up and down: enough to choose from, few enough to try them all with every label. */
    private static final int EACH_WAY = 7;

    private static final double DOT_ROOM = 0.75;
    private static final double DEEPEST = 4;
    private static final double LEG_CLEAR = 0.45;

    /** A reading lost is worth a detour of 25 mm, a mark touched one of 120 mm. */
    private static final double READING_COST = 25;

    private static final double MARK_COST = 120;

    /** Passing through another region reads as if that were meant. */
    private static final double REGION_COST = 15;

    private final Polygon deck;
    private final Obstacles marks;
    private final Obstacles readings;

    Leads(Polygon deck, Obstacles marks, Obstacles readings) {
        this.deck = deck;
        this.marks = marks;
        this.readings = readings;
    }

    /** All ways out of an area on paper, the cheapest first. */
    List<Lead> of(Geometry area, List<? extends Geometry> others) {
        Envelope box = area.getEnvelopeInternal();
        List<Lead> leads = new ArrayList<>();
        for (int i = 0; i < TRIES; i++) {
            double x = box.getMinX() + box.getWidth() * (i + 0.5) / TRIES;
            List<double[]> spans = spans(area, x);
            if (!spans.isEmpty()) {
                leads.add(around(lead(x, spans.get(0), true), others));
                leads.add(around(lead(x, spans.get(spans.size() - 1), false), others));
            }
        }
        List<Lead> best = new ArrayList<>(few(leads, true, box));
        best.addAll(few(leads, false, box));
        best.sort(Comparator.comparingDouble(Lead::cost));
        return best;
    }

    /** The same way, dearer for every other region it passes through. */
    private static Lead around(Lead lead, List<? extends Geometry> others) {
        LineString leg = Shapes.FACTORY.createLineString(
                new Coordinate[] {new Coordinate(lead.x, lead.dotY), new Coordinate(lead.x, lead.edgeY)});
        long passed = others.stream().filter(o -> o.intersects(leg)).count();
        return new Lead(lead.x, lead.dotY, lead.edgeY, lead.up, lead.cost + REGION_COST * passed);
    }

    /** The cheapest way in each of a few strips of the region, so that ways differ. */
    private static List<Lead> few(List<Lead> leads, boolean up, Envelope box) {
        Map<Integer, Lead> best = new TreeMap<>();
        for (Lead lead : leads) {
            int strip = (int) Math.floor((lead.x - box.getMinX()) / Math.max(box.getWidth(), 1e-9) * EACH_WAY);
            if (lead.up == up) {
                best.merge(strip, lead, (a, b) -> a.cost <= b.cost ? a : b);
            }
        }
        return List.copyOf(best.values());
    }

    /** Stretches of the upright at x inside the area, from the top down. */
    private static List<double[]> spans(Geometry area, double x) {
        List<?> rings = LinearComponentExtracter.getLines(area);
        double[] crossings = rings.stream()
                .flatMapToDouble(ring -> crossings(((LineString) ring).getCoordinateSequence(), x))
                .sorted()
                .toArray();
        List<double[]> spans = new ArrayList<>();
        for (int i = 0; i + 1 < crossings.length; i += 2) {
            if (crossings[i + 1] > crossings[i]) {
                spans.add(new double[] {crossings[i], crossings[i + 1]});
            }
        }
        return spans;
    }

    /** Where a ring crosses the upright at x; a corner on it counts as right of it, so inside and outside take turns. */
    private static DoubleStream crossings(CoordinateSequence ring, double x) {
        return IntStream.range(1, ring.size())
                .filter(i -> ring.getX(i - 1) < x != ring.getX(i) < x)
                .mapToDouble(i -> {
                    double part = (x - ring.getX(i - 1)) / (ring.getX(i) - ring.getX(i - 1));
                    return ring.getY(i - 1) + part * (ring.getY(i) - ring.getY(i - 1));
                });
    }

    private Lead lead(double x, double[] span, boolean up) {
        double edgeY = edge(x, up);
        double near = up ? span[0] : span[1];
        double room = Math.min((span[1] - span[0]) / 2, DEEPEST);
        Lead best = null;
        for (double deep = room; best == null || deep > DOT_ROOM; deep -= 0.6) {
            double dotY = up ? near + deep : near - deep;
            int readingHits = readings.hits(x, dotY, x, edgeY, LEG_CLEAR) + dot(readings, x, dotY);
            int markHits = marks.hits(x, dotY, x, edgeY, LEG_CLEAR) + dot(marks, x, dotY);
            double narrow = room < DOT_ROOM ? 6 : 0;
            double shallow = (room - deep) / 2;
            double cost = Math.abs(edgeY - near) + shallow + narrow + READING_COST * readingHits + MARK_COST * markHits;
            if (best == null || cost < best.cost) {
                best = new Lead(x, dotY, edgeY, up, cost);
            }
        }
        return best;
    }

    private static int dot(Obstacles taken, double x, double y) {
        return taken.hits(Box.round(x, y, DOT_ROOM));
    }

    /** The deck's uppermost or lowest edge at x. */
    private double edge(double x, boolean up) {
        List<double[]> spans = spans(deck, x);
        if (spans.isEmpty()) {
            Envelope box = deck.getEnvelopeInternal();
            return up ? box.getMinY() : box.getMaxY();
        }
        return up ? spans.get(0)[0] : spans.get(spans.size() - 1)[1];
    }
}
