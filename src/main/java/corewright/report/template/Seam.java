package corewright.report.template;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.PlanView;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.template.Job;
import corewright.drawing.template.Leaf;
import corewright.drawing.template.Tiling;
import corewright.drawing.template.Tiling.Tile;
import corewright.repair.plan.Hole;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Rings about a place on the seam of two sheets; they close when the sheets lie right.
 *
 * @param beside of the word's middle
 * @param other the sheet that joins here
 */
record Seam(double x, double y, double besideX, double besideY, String other) {
    private static final double[] DIAMETERS = {8.4, 5, 1.8};
    private static final double[] ALONG = {0.5, 0.35, 0.65, 0.25, 0.75, 0.15, 0.85};
    private static final double AWAY = 8;
    private static final Type WORD = new Type(Typeface.TEXT_BOLD, 9);

    Box box() {
        return Box.round(x, y, DIAMETERS[0] / 2).and(Box.round(besideX, besideY, 3));
    }

    /** One for each neighbour that is printed, at a place that both sheets find alike. */
    static List<Seam> of(Job job, Leaf leaf, Tiling tiling, Tile tile) {
        List<Seam> seams = new ArrayList<>();
        Box f = leaf.frame();
        Box on = tile.frame();
        tiling.at(tile.column() - 1, tile.row())
                .ifPresent(t -> seams.add(upright(f, f.x(), along(job, on.x(), on, true), 1, t)));
        tiling.at(tile.column() + 1, tile.row())
                .ifPresent(t -> seams.add(upright(f, f.right(), along(job, on.right(), on, true), -1, t)));
        tiling.at(tile.column(), tile.row() - 1)
                .ifPresent(t -> seams.add(level(f, f.y(), along(job, on.y(), on, false), 1, t)));
        tiling.at(tile.column(), tile.row() + 1)
                .ifPresent(t -> seams.add(level(f, f.bottom(), along(job, on.bottom(), on, false), -1, t)));
        return seams;
    }

    private static Seam upright(Box frame, double x, double share, int inward, Tile other) {
        double y = frame.y() + share * frame.height();
        return new Seam(x, y, x + inward * AWAY, y, other.name());
    }

    private static Seam level(Box frame, double y, double share, int inward, Tile other) {
        double x = frame.x() + share * frame.width();
        return new Seam(x, y, x, y + inward * AWAY, other.name());
    }

    /** Share of the seam's length that is clear of holes. */
    private static double along(Job job, double seam, Box frame, boolean upright) {
        PlanView view = job.view();
        for (double share : ALONG) {
            double x = upright ? seam : frame.x() + share * frame.width();
            double y = upright ? frame.y() + share * frame.height() : seam;
            double clear = Tiling.RING / 2 + AWAY + 4;
            if (Stream.concat(job.holes().stream().map(Hole::spot), job.drying().stream())
                    .noneMatch(s -> Math.hypot(view.x(s.xMm()) - x, view.y(s.yMm()) - y) < clear)) {
                return share;
            }
        }
        return ALONG[0];
    }

    void paint(Paper paper) {
        for (double diameter : DIAMETERS) {
            paper.draw(Paper.circle(x, y, diameter), Pen.MARK);
        }
        paper.haloText(other, besideX, besideY + WORD.capMm() / 2, WORD, Anchor.CENTRE, 0.6);
    }
}
