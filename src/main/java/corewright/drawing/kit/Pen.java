package corewright.drawing.kit;

import java.awt.BasicStroke;
import java.util.Arrays;
import java.util.List;

/**
 * A line: its weight and dash, in paper millimetres. Weights: 0.70 cut; 0.50 edge, likely, support; 0.35 mark, scale; 0.30
 * possible; 0.25 pattern, leader; 0.18 only what may vanish in a copy.
 *
 * @param dash lengths of line and gap in turn; empty for an unbroken line
 */
public record Pen(double weightMm, List<Double> dash) {
    public static final Pen CUT = broken(0.70, 7, 1.2, 1, 1.2);
    public static final Pen EDGE = solid(0.50);
    public static final Pen LIKELY = EDGE;
    public static final Pen SUPPORT = broken(0.50, 6, 1, 1, 1);
    public static final Pen BULKHEAD = solid(0.90);
    public static final Pen MARK = solid(0.35);
    public static final Pen POSSIBLE = broken(0.30, 2.4, 1.4);
    public static final Pen FITTING = solid(0.30);
    public static final Pen PATTERN = solid(0.25);
    public static final Pen LEADER = solid(0.25);
    public static final Pen UNDECIDED = broken(0.25, 1.2, 1.2);
    public static final Pen REACH = broken(0.25, 0.9, 0.9);
    public static final Pen KEEP_OUT = broken(0.18, 0.18, 0.9);
    public static final Pen FAINT = solid(0.18);
    public static final Pen GRID = broken(0.10, 0.25, 1.25);

    public Pen {
        dash = List.copyOf(dash);
    }

    public static Pen solid(double weightMm) {
        return new Pen(weightMm, List.of());
    }

    static Pen broken(double weightMm, double... dash) {
        return new Pen(weightMm, Arrays.stream(dash).boxed().toList());
    }

    /** The same dashes, a heavier or lighter line. */
    Pen times(double factor) {
        return new Pen(weightMm * factor, dash);
    }

    /** Butt ends, so that measures hold; round joins, so that nothing sticks out of a corner. */
    BasicStroke stroke() {
        if (dash.isEmpty()) {
            return new BasicStroke((float) weightMm, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
        }
        float[] lengths = new float[dash.size()];
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] = dash.get(i).floatValue();
        }
        return new BasicStroke((float) weightMm, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, lengths, 0);
    }
}
