package corewright.drawing.kit;

import corewright.damage.Condition;
import corewright.overlay.Overlay;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/**
 * How each condition is drawn, in paper millimetres and independent of the map's scale. Dots are water, a line pair is two
 * skins apart, both is both, solid bars are nothing left; broken uprights are a question not decided yet.
 *
 * <p>Lines lie at (p - anchor) . n = k pitch with the normal n = (1, 2)/sqrt 5: slope 1 : 2, an even staircase on any
 * raster. Bars of void fall instead. The anchor is the survey datum on the paper, so that neighbours of one condition join
 * and reprints match; a region whose largest inscribed circle is under 4 mm is anchored at that circle's centre, so that a
 * dot, a pair or a bar always falls inside.
 */
public enum Pattern {
    /** Nothing. */
    NONE,
    /** Dot 0.60, 1.70 along the row, rows 1.47 apart, odd rows shifted by half. */
    WET,
    /** Two lines 0.25, centres 0.70 apart, a pair every 2.40. */
    DELAMINATED,
    /** The same pairs, a dot 0.72 midway between them every 1.40. */
    WET_DELAMINATED,
    /** Bar 1.30 every 2.10, falling. */
    VOID,
    /** Upright 0.25, dash 1.2, gap 1.2, every 2.40, odd columns shifted by 1.2. */
    UNDECIDED;

    private static final double LINE = 0.25;
    private static final double PAIR = 2.40;
    private static final double PAIR_HALF_GAP = 0.35;
    private static final double BAR = 1.30;
    private static final double BAR_PITCH = 2.10;
    private static final double DASH = 1.2;
    private static final double WET_DOT = 0.60;
    private static final double LOOSE_DOT = 0.72;
    private static final double SMALL = 4;
    private static final double LEAST = 1.2;

    /** Accuracy of the inscribed circle: a quarter of the thinnest line. */
    private static final double CIRCLE_TOLERANCE = 0.05;

    private static final double ROOT5 = Math.sqrt(5);

    /** Rows in a frame of their own: d along the row, n across it. */
    private record Rows(Coordinate anchor, double dx, double dy) {
        static Rows rising(Coordinate anchor) {
            return new Rows(anchor, 2 / ROOT5, -1 / ROOT5);
        }

        static Rows falling(Coordinate anchor) {
            return new Rows(anchor, 2 / ROOT5, 1 / ROOT5);
        }

        /** Normal, a quarter turn from d towards positive y. */
        Coordinate at(double along, double across) {
            return new Coordinate(anchor.x + along * dx - across * dy, anchor.y + along * dy + across * dx);
        }

        double along(double x, double y) {
            return (x - anchor.x) * dx + (y - anchor.y) * dy;
        }

        double across(double x, double y) {
            return (y - anchor.y) * dx - (x - anchor.x) * dy;
        }
    }

    private record Span(double least, double most) {
        static Span of(Envelope box, DoubleBinaryOperator measure) {
            double a = measure.applyAsDouble(box.getMinX(), box.getMinY());
            double b = measure.applyAsDouble(box.getMinX(), box.getMaxY());
            double c = measure.applyAsDouble(box.getMaxX(), box.getMinY());
            double d = measure.applyAsDouble(box.getMaxX(), box.getMaxY());
            return new Span(Math.min(Math.min(a, b), Math.min(c, d)), Math.max(Math.max(a, b), Math.max(c, d)));
        }
    }

    /** The pattern of a condition. */
    public static Pattern of(Condition condition) {
        return switch (condition) {
            case SOUND -> NONE;
            case WET -> WET;
            case DELAMINATED -> DELAMINATED;
            case WET_DELAMINATED -> WET_DELAMINATED;
            case VOID -> VOID;
        };
    }

    /** The area as drawn: itself, or grown to 1.2 mm where it would be lost. */
    public static Geometry drawn(Polygon onPaper) {
        if (plainlyWider(onPaper, LEAST)) {
            return onPaper;
        }
        double wide = 2 * inscribed(onPaper).getRadiusLine().getLength();
        return wide < LEAST ? onPaper.buffer((LEAST - wide) / 2) : onPaper;
    }

    /** Fills a polygon that is already on paper. */
    public void paint(Paper paper, Polygon onPaper, Point2D datum) {
        paint(paper, drawn(onPaper), anchor(onPaper, datum));
    }

    /** Fills a sample: rows counted from its upper left corner, and no dot over its frame. */
    public void swatch(Paper paper, Polygon frame) {
        Envelope box = frame.getEnvelopeInternal();
        Coordinate corner = new Coordinate(box.getMinX(), box.getMinY());
        Geometry lines = clip(lines(corner, frame), frame);
        if (!lines.isEmpty()) {
            paper.fill(PlanView.shape(lines));
        }
        dots(paper, frame.buffer(-2 * dotRadius()), corner);
    }

    private double dotRadius() {
        return this == WET ? WET_DOT / 2 : this == WET_DELAMINATED ? LOOSE_DOT / 2 : 0;
    }

    /** Fills a band of an area on paper; the anchor is where the rows are counted from. */
    public void paint(Paper paper, Geometry area, Coordinate anchor) {
        if (this == NONE || area.isEmpty()) {
            return;
        }
        Geometry lines = clip(lines(anchor, area), area);
        if (!lines.isEmpty()) {
            paper.fill(PlanView.shape(lines));
        }
        dots(paper, area, anchor);
    }

    /** Where the rows are counted from: the datum, or the middle of a small area. */
    public Coordinate anchor(Polygon onPaper, Point2D datum) {
        if (plainlyWider(onPaper, SMALL)) {
            return new Coordinate(datum.getX(), datum.getY());
        }
        MaximumInscribedCircle circle = inscribed(onPaper);
        if (2 * circle.getRadiusLine().getLength() >= SMALL) {
            return new Coordinate(datum.getX(), datum.getY());
        }
        Coordinate centre = circle.getCenter().getCoordinate();
        // between a pair and a row of dots, so that both fall inside
        return this == WET_DELAMINATED ? Rows.rising(centre).at(0, -PAIR / 4) : centre;
    }

    /** Some circle of this diameter fits in, which saves looking for the largest. */
    private static boolean plainlyWider(Polygon onPaper, double diameter) {
        return !onPaper.isEmpty() && 2 * onPaper.getInteriorPoint().distance(onPaper.getBoundary()) >= diameter;
    }

    private static MaximumInscribedCircle inscribed(Polygon onPaper) {
        return new MaximumInscribedCircle(onPaper, CIRCLE_TOLERANCE);
    }

    private List<Polygon> lines(Coordinate anchor, Geometry area) {
        Envelope box = area.getEnvelopeInternal();
        List<Polygon> lines = new ArrayList<>();
        switch (this) {
            case DELAMINATED, WET_DELAMINATED -> {
                rows(Rows.rising(anchor), box, PAIR, -PAIR_HALF_GAP, LINE, lines);
                rows(Rows.rising(anchor), box, PAIR, PAIR_HALF_GAP, LINE, lines);
            }
            case VOID -> rows(Rows.falling(anchor), box, BAR_PITCH, 0, BAR, lines);
            case UNDECIDED -> uprights(anchor, box, lines);
            default -> {}
        }
        return lines;
    }

    private static void rows(Rows rows, Envelope box, double pitch, double offset, double weight, List<Polygon> lines) {
        Span across = Span.of(box, rows::across);
        Span along = Span.of(box, rows::along);
        long last = (long) Math.floor((across.most - offset + weight) / pitch);
        for (long k = (long) Math.ceil((across.least - offset - weight) / pitch); k <= last; k++) {
            double middle = k * pitch + offset;
            lines.add(quad(
                    rows.at(along.least - 1, middle - weight / 2),
                    rows.at(along.most + 1, middle - weight / 2),
                    rows.at(along.most + 1, middle + weight / 2),
                    rows.at(along.least - 1, middle + weight / 2)));
        }
    }

    private static void uprights(Coordinate anchor, Envelope box, List<Polygon> lines) {
        long lastColumn = (long) Math.floor((box.getMaxX() - anchor.x + LINE) / PAIR);
        long lastDash = (long) Math.floor((box.getMaxY() - anchor.y) / (2 * DASH)) + 1;
        for (long k = (long) Math.ceil((box.getMinX() - anchor.x - LINE) / PAIR); k <= lastColumn; k++) {
            double x = anchor.x + k * PAIR;
            double shift = Math.floorMod(k, 2) == 1 ? DASH : 0;
            for (long j = (long) Math.floor((box.getMinY() - anchor.y) / (2 * DASH)) - 1; j <= lastDash; j++) {
                double y = anchor.y + j * 2 * DASH + shift - DASH / 2;
                lines.add(quad(
                        new Coordinate(x - LINE / 2, y),
                        new Coordinate(x + LINE / 2, y),
                        new Coordinate(x + LINE / 2, y + DASH),
                        new Coordinate(x - LINE / 2, y + DASH)));
            }
        }
    }

    private static Polygon quad(Coordinate a, Coordinate b, Coordinate c, Coordinate d) {
        return Shapes.FACTORY.createPolygon(new Coordinate[] {a, b, c, d, a});
    }

    /** Exact cut at the area's edge: the same in every output, with no clip to be rounded to pixels. */
    private static Geometry clip(List<Polygon> lines, Geometry area) {
        Geometry all = Shapes.FACTORY.createMultiPolygon(lines.toArray(Polygon[]::new));
        return Overlay.intersection(all, area);
    }

    private void dots(Paper paper, Geometry area, Coordinate anchor) {
        if (this == WET) {
            dots(paper, area, Rows.rising(anchor), WET_DOT, 1.70, 1.47, 0);
        } else if (this == WET_DELAMINATED) {
            dots(paper, area, Rows.rising(anchor), LOOSE_DOT, 1.40, PAIR, PAIR / 2);
        }
    }

    /** Every dot whole that touches the area. */
    private static void dots(
            Paper paper, Geometry area, Rows rows, double diameter, double pitch, double rowPitch, double offset) {
        Geometry touching = area.buffer(diameter / 2);
        IndexedPointInAreaLocator inside = new IndexedPointInAreaLocator(touching);
        Envelope box = touching.getEnvelopeInternal();
        Span across = Span.of(box, rows::across);
        Span along = Span.of(box, rows::along);
        Path2D all = new Path2D.Double(Path2D.WIND_NON_ZERO);
        long lastRow = (long) Math.floor((across.most - offset) / rowPitch);
        for (long k = (long) Math.ceil((across.least - offset) / rowPitch); k <= lastRow; k++) {
            double shift = Math.floorMod(k, 2) == 1 ? pitch / 2 : 0;
            long last = (long) Math.floor((along.most - shift) / pitch);
            for (long j = (long) Math.ceil((along.least - shift) / pitch); j <= last; j++) {
                Coordinate at = rows.at(j * pitch + shift, k * rowPitch + offset);
                if (inside.locate(at) != Location.EXTERIOR) {
                    all.append(Paper.circle(at.x, at.y, diameter), false);
                }
            }
        }
        paper.fill(all);
    }
}
