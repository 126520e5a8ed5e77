package corewright.drawing.placing;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.PlanView;
import corewright.drawing.marks.Mark;
import corewright.drawing.marks.RampMark;
import corewright.drawing.marks.ScaleBar;
import java.util.List;

/** The comb and the ramp of a map, side by side. */
public final class SheetMarks {
    private static final double GAP = 10;

    /** From the left edge, which on a screen is the window's. */
    private static final double LEFT = 2;

    private SheetMarks() {}

    /** In the first free corner: below left, below right, above left, above right; else nothing. */
    static List<Mark> inCorner(MapSpec spec, PlanView view, Ground ground) {
        List<Mark> trial = at(spec, view, 0, 0);
        Box size = trial.get(0).box().and(trial.get(1).box());
        Box area = ground.box();
        double left = area.x() - size.x() + LEFT;
        double right = area.right() - size.right() - 1;
        double top = area.y() - size.y() + 1;
        double foot = area.bottom() - size.bottom() - 0.5;
        for (double[] corner : new double[][] {{left, foot}, {right, foot}, {left, top}, {right, top}}) {
            List<Mark> marks = at(spec, view, corner[0], corner[1]);
            Box box = marks.get(0).box().and(marks.get(1).box());
            if (ground.free(box)) {
                return marks;
            }
        }
        return List.of();
    }

    /** Ramp at (x, y), its words on the baseline of the comb's figures. */
    public static List<Mark> at(MapSpec spec, PlanView view, double x, double y) {
        var face = spec.damage().face();
        RampMark ramp = RampMark.of(face, x, y);
        ScaleBar bar = new ScaleBar(ramp.box().right() + GAP, y - 3.2, view.scale(), spec.measure());
        return List.of(ramp, bar);
    }
}
