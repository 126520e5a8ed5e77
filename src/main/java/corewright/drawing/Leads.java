package corewright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

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

    private static final double DOT_ROOM = 0.75;
    private static final double DEEPEST = 4;
    private static final double LEG_CLEAR = 0.45;

    /** A reading lost is worth a detour of 25 mm, a mark touched one of 120 mm. */
    private static final double READING_COST = 25;

    private static final double MARK_COST = 120;

    private final Polygon deck;
    private final Obstacles marks;
    private final Obstacles readings;

    Leads(Polygon deck, Obstacles marks, Obstacles readings) {
        this.deck = deck;
        this.marks = marks;
        this.readings = readings;
    }

    /** All ways out of an area on paper, the cheapest first. */
    List<Lead> of(Geometry area) {
        Envelope box = area.getEnvelopeInternal();
        List<Lead> leads = new ArrayList<>();
        for (int i = 0; i < TRIES; i++) {
            double x = box.getMinX() + box.getWidth() * (i + 0.5) / TRIES;
            List<double[]> spans = spans(area, x);
            if (!spans.isEmpty()) {
                leads.add(lead(x, spans.get(0), true));
                leads.add(lead(x, spans.get(spans.size() - 1), false));
            }
        }
        leads.sort(Comparator.comparingDouble(Lead::cost));
        return leads;
    }

    /** Stretches of the upright at x inside the area, from the top down. */
    private static List<double[]> spans(Geometry area, double x) {
        Envelope box = area.getEnvelopeInternal();
        LineString upright = Shapes.FACTORY.createLineString(
                new Coordinate[] {new Coordinate(x, box.getMinY() - 1), new Coordinate(x, box.getMaxY() + 1)});
        Geometry cut = upright.intersection(area);
        List<double[]> spans = new ArrayList<>();
        for (int i = 0; i < cut.getNumGeometries(); i++) {
            Envelope e = cut.getGeometryN(i).getEnvelopeInternal();
            if (e.getHeight() > 0) {
                spans.add(new double[] {e.getMinY(), e.getMaxY()});
            }
        }
        spans.sort(Comparator.comparingDouble(s -> s[0]));
        return spans;
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
            double cost = Math.abs(edgeY - dotY) + narrow + READING_COST * readingHits + MARK_COST * markHits;
            if (best == null || cost < best.cost - 0.7) {
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
