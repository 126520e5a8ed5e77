package corewright.drawing.placing;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Tone;
import corewright.drawing.kit.Type;
import java.awt.geom.Path2D;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * What a region is, outside the deck, with its leader: from a 0.9 dot inside the region straight up or down, one bend, a
 * run-in to the words. First line 8.5 pt with the id bold and the rest semibold, further lines 7.5 pt, all ranged towards
 * the leader.
 *
 * @param leadY of the level leg
 * @param toLeft words stand left of the leader
 * @param led false where there was no room outside and only the id stands on the region itself
 */
public record RegionLabel(
        String region,
        List<String> lines,
        Box box,
        double dotX,
        double dotY,
        double leadY,
        boolean toLeft,
        boolean led) {
    private static final Type ID = Type.LABEL_BOLD;
    private static final Type HEAD = Type.LABEL;
    private static final Type BODY = Type.NOTE;
    private static final double RUN_IN = 1;
    private static final double HEAD_ABOVE_LEG = 0.4;
    private static final double LEAD = 3.5;
    private static final double ID_GAP = 0.9;
    private static final double DOT = 0.9;
    private static final double CASING = 0.8;

    /** An id is looked a place for this far round its region's middle, in steps. */
    private static final double FURTHEST = 20;

    private static final double AWAY = 1;
    private static final int WAYS = 12;
    private static final double BESIDE = 4;

    public RegionLabel {
        lines = List.copyOf(lines);
    }

    /** Words of the given size beside a leader that bends at {@code leadY} and is {@code run} long from there. */
    static RegionLabel beside(
            String region, List<String> lines, Box size, Leads.Lead lead, double leadY, double run, boolean toLeft) {
        double left = toLeft ? lead.x() - run - RUN_IN - size.width() : lead.x() + run + RUN_IN;
        double top = leadY - HEAD_ABOVE_LEG - HEAD.capMm();
        Box box = new Box(left, top, size.width(), size.height());
        return new RegionLabel(region, lines, box, lead.x(), lead.dotY(), leadY, toLeft, true);
    }

    /** The id alone, on the region. */
    static RegionLabel inside(String region, List<String> lines, double x, double y) {
        double width = ID.width(region);
        Box box = new Box(x - width / 2, y - ID.capMm() / 2, width, ID.capMm());
        return new RegionLabel(region, lines, box, x, y, y, true, false);
    }

    /** An id at the nearest place in its region where it covers nothing, else close beside the region, else where it is. */
    RegionLabel clear(Geometry area, Obstacles taken, double wordClear) {
        RegionLabel inside = nearest(area, taken, wordClear);
        return inside != null
                ? inside
                : Objects.requireNonNullElse(nearest(area.buffer(BESIDE), taken, wordClear), this);
    }

    private @Nullable RegionLabel nearest(Geometry area, Obstacles taken, double wordClear) {
        for (double away = 0; away <= FURTHEST; away += AWAY) {
            for (int i = 0; i < WAYS; i++) {
                double x = dotX + away * Math.cos(2 * Math.PI * i / WAYS);
                double y = dotY + away * Math.sin(2 * Math.PI * i / WAYS);
                RegionLabel moved = inside(region, lines, x, y);
                boolean within = away == 0 || area.contains(area.getFactory().createPoint(new Coordinate(x, y)));
                if (within && taken.free(moved.box.grown(wordClear))) {
                    return moved;
                }
            }
        }
        return null;
    }

    static double width(String region, List<String> lines) {
        double width = headWidth(region, lines);
        for (String line : lines.subList(1, lines.size())) {
            width = Math.max(width, BODY.width(line));
        }
        return width;
    }

    static double height(List<String> lines) {
        return HEAD.capMm() + (lines.size() - 1) * LEAD + BODY.descentMm();
    }

    private static double headWidth(String region, List<String> lines) {
        return ID.width(region) + ID_GAP + HEAD.width(lines.get(0));
    }

    private double legEnd() {
        return toLeft ? box.right() + RUN_IN : box.x() - RUN_IN;
    }

    Box levelLeg() {
        return Box.between(dotX, leadY, legEnd(), leadY);
    }

    /** Keeps words and leader free from what comes later. */
    void claim(Obstacles taken, double wordClear, double lineClear) {
        taken.add(box.grown(wordClear));
        if (led) {
            taken.add(Box.between(dotX, dotY, dotX, leadY).grown(lineClear));
            taken.add(levelLeg().grown(lineClear));
        }
    }

    public void paintLeader(Paper paper) {
        if (!led) {
            return;
        }
        Path2D line = Paper.path(dotX, dotY, dotX, leadY, legEnd(), leadY);
        paper.casing(line, CASING);
        paper.draw(line, Pen.LEADER);
        paper.disc(dotX, dotY, DOT + 0.6, Tone.WHITE);
        paper.disc(dotX, dotY, DOT);
    }

    public void paintWords(Paper paper) {
        if (!led) {
            paper.haloText(region, box.middleX(), box.bottom(), ID, Paper.Anchor.CENTRE, 0.8);
            return;
        }
        paper.fill(box.grown(0.3).shape(), Tone.WHITE);
        double y = box.y() + HEAD.capMm();
        double x = toLeft ? box.right() - headWidth(region, lines) : box.x();
        paper.text(region, x, y, ID, Paper.Anchor.LEFT);
        paper.text(lines.get(0), x + ID.width(region) + ID_GAP, y, HEAD, Paper.Anchor.LEFT);
        for (int i = 1; i < lines.size(); i++) {
            double edge = toLeft ? box.right() : box.x();
            Paper.Anchor anchor = toLeft ? Paper.Anchor.RIGHT : Paper.Anchor.LEFT;
            paper.text(lines.get(i), edge, y + i * LEAD, BODY, anchor);
        }
    }
}
