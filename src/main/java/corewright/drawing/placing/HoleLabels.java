package corewright.drawing.placing;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.marks.HoleLabel;
import corewright.drawing.marks.HoleMark;
import corewright.repair.plan.Hole;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Puts each hole's number beside it, and its depth stop where there is still room. */
public final class HoleLabels {
    private static final double GAP = 0.6;
    private static final double CLEARLY_NEARER = 0.8;

    private HoleLabels() {}

    public static List<HoleLabel> place(Marks marks, boolean stops, Measure measure, Obstacles taken) {
        Obstacles all = taken.copy();
        List<HoleLabel> labels = new ArrayList<>();
        for (int i = 0; i < marks.holes().size(); i++) {
            HoleLabel number =
                    best(marks, i, Figures.holeNumber(marks.holePlans().get(i).id()), false, all);
            if (number != null) {
                labels.add(number);
                all.add(number.box());
            }
        }
        for (int i = 0; stops && i < marks.holes().size(); i++) {
            Hole plan = marks.holePlans().get(i);
            if (plan.kind() == Hole.Kind.INJECTION) {
                String depth = measure.stopFigure(plan.depthStopMm());
                HoleLabel stop = best(marks, i, depth, true, all);
                if (stop != null) {
                    labels.add(stop);
                    all.add(stop.box());
                }
            }
        }
        return labels;
    }

    /** The first that touches least; a depth stop must touch nothing and stand nearest to its own hole. */
    private static @Nullable HoleLabel best(Marks marks, int hole, String text, boolean stop, Obstacles taken) {
        HoleLabel least = null;
        int hits = Integer.MAX_VALUE;
        for (HoleLabel candidate : around(marks.holes().get(hole), text, stop)) {
            int touched = taken.hits(candidate.box().grown(0.3)) + (strays(candidate, hole, marks) ? 1 : 0);
            if (touched < hits) {
                hits = touched;
                least = candidate;
            }
        }
        return !stop || hits == 0 ? least : null;
    }

    private static boolean strays(HoleLabel label, int own, Marks marks) {
        Box box = label.box();
        HoleMark mine = marks.holes().get(own);
        double near = Math.hypot(box.middleX() - mine.x(), box.middleY() - mine.y());
        return marks.holes().stream()
                .anyMatch(h ->
                        h != mine && Math.hypot(box.middleX() - h.x(), box.middleY() - h.y()) < near + CLEARLY_NEARER);
    }

    private static List<HoleLabel> around(HoleMark hole, String text, boolean stop) {
        double w = HoleLabel.width(text, stop);
        double h = HoleLabel.height(stop);
        double side = HoleMark.DIAMETER / 2 + GAP;
        double over = HoleMark.DIAMETER / 2 + GAP + h / 2;
        double beyondNumber = side + HoleLabel.width("00", false) + GAP;
        return List.of(
                new HoleLabel(hole.x() + side, hole.y(), text, stop),
                new HoleLabel(hole.x() + beyondNumber, hole.y(), text, stop),
                new HoleLabel(hole.x() - w / 2, hole.y() + over, text, stop),
                new HoleLabel(hole.x() - w / 2, hole.y() - over, text, stop),
                new HoleLabel(hole.x() - side - w, hole.y(), text, stop),
                new HoleLabel(hole.x() + side * 0.7, hole.y() + over * 0.8, text, stop),
                new HoleLabel(hole.x() + side * 0.7, hole.y() - over * 0.8, text, stop));
    }
}
