package corewright.drawing.screen;

import corewright.drawing.kit.Pattern;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/**
 * The patterns of {@link Pattern} painted fast enough to follow a hand: the same measures, but lines are cut by the
 * screen's clip instead of exactly, which the region's edge covers.
 */
final class ScreenPattern {
    private static final double LINE = 0.25;
    private static final double PAIR = 2.40;
    private static final double HALF_GAP = 0.35;
    private static final double BAR = 1.30;
    private static final double BAR_PITCH = 2.10;
    private static final double DASH = 1.2;
    private static final double SLOPE = Math.atan2(1, 2);

    private final Graphics2D g;
    private final double size;
    private final Point2D datum;

    /** @param size of one millimetre of the pattern, in units of the graphics */
    ScreenPattern(Graphics2D g, double size, Point2D datum) {
        this.g = g;
        this.size = size;
        this.datum = datum;
    }

    void fill(Pattern pattern, Shape area, Rectangle2D seen, Color ink) {
        Rectangle2D bounds = area.getBounds2D().createIntersection(seen);
        if (bounds.isEmpty() || pattern == Pattern.NONE) {
            return;
        }
        Shape clip = g.getClip();
        AffineTransform before = g.getTransform();
        g.setColor(ink);
        if (pattern != Pattern.WET) {
            g.clip(area);
        }
        if (pattern == Pattern.UNDECIDED) {
            uprights(bounds);
        } else {
            double turn = pattern == Pattern.VOID ? SLOPE : -SLOPE;
            g.translate(datum.getX(), datum.getY());
            g.rotate(turn);
            AffineTransform back = AffineTransform.getRotateInstance(-turn);
            back.translate(-datum.getX(), -datum.getY());
            rows(pattern, area, back.createTransformedShape(bounds).getBounds2D(), turn);
        }
        g.setTransform(before);
        g.setClip(clip);
    }

    private void rows(Pattern pattern, Shape area, Rectangle2D b, double turn) {
        switch (pattern) {
            case WET -> dots(area, b, turn, 0.60, 1.70, 1.47, 0);
            case DELAMINATED -> pairs(b);
            case WET_DELAMINATED -> {
                pairs(b);
                dots(area, b, turn, 0.72, 1.40, PAIR, PAIR / 2);
            }
            case VOID -> lines(b, BAR_PITCH, 0, BAR);
            default -> {}
        }
    }

    private void pairs(Rectangle2D b) {
        lines(b, PAIR, -HALF_GAP, LINE);
        lines(b, PAIR, HALF_GAP, LINE);
    }

    private void lines(Rectangle2D b, double pitchMm, double offsetMm, double weightMm) {
        g.setStroke(new java.awt.BasicStroke((float) (weightMm * size)));
        double pitch = pitchMm * size;
        double offset = offsetMm * size;
        long last = (long) Math.floor((b.getMaxY() - offset) / pitch) + 1;
        for (long k = (long) Math.ceil((b.getMinY() - offset) / pitch) - 1; k <= last; k++) {
            double y = k * pitch + offset;
            g.draw(new Line2D.Double(b.getMinX(), y, b.getMaxX(), y));
        }
    }

    /** Dots whole, where their middle lies in the area. */
    private void dots(
            Shape area, Rectangle2D b, double turn, double mm, double pitchMm, double rowMm, double offsetMm) {
        AffineTransform out = AffineTransform.getTranslateInstance(datum.getX(), datum.getY());
        out.rotate(turn);
        double pitch = pitchMm * size;
        double row = rowMm * size;
        double offset = offsetMm * size;
        double d = mm * size;
        Point2D at = new Point2D.Double();
        long lastRow = (long) Math.floor((b.getMaxY() - offset) / row) + 1;
        for (long k = (long) Math.ceil((b.getMinY() - offset) / row) - 1; k <= lastRow; k++) {
            double y = k * row + offset;
            double shift = Math.floorMod(k, 2) == 1 ? pitch / 2 : 0;
            long last = (long) Math.floor((b.getMaxX() - shift) / pitch) + 1;
            for (long j = (long) Math.ceil((b.getMinX() - shift) / pitch) - 1; j <= last; j++) {
                double x = j * pitch + shift;
                at.setLocation(x, y);
                out.transform(at, at);
                if (area.contains(at)) {
                    g.fill(new Ellipse2D.Double(x - d / 2, y - d / 2, d, d));
                }
            }
        }
    }

    private void uprights(Rectangle2D b) {
        g.setStroke(new java.awt.BasicStroke((float) (LINE * size), 0, 1));
        double pitch = PAIR * size;
        double dash = DASH * size;
        long last = (long) Math.floor((b.getMaxX() - datum.getX()) / pitch) + 1;
        for (long k = (long) Math.ceil((b.getMinX() - datum.getX()) / pitch) - 1; k <= last; k++) {
            double x = datum.getX() + k * pitch;
            double shift = Math.floorMod(k, 2) == 1 ? dash : 0;
            double first = Math.floor((b.getMinY() - datum.getY()) / (2 * dash)) * 2 * dash + datum.getY() - dash / 2;
            for (double y = first + shift - 2 * dash; y < b.getMaxY() + dash; y += 2 * dash) {
                g.draw(new Line2D.Double(x, y, x, y + dash));
            }
        }
    }
}
