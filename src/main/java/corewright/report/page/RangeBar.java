package corewright.report.page;

import corewright.damage.Quantiles;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import java.util.List;

/** A range drawn on a plain axis from nought: a bar from P10 to P90, a tall tick at the middle, its figure above. */
public final class RangeBar {
    /** Room it takes. */
    public static final double HEIGHT_MM = 11;

    private static final Pen AXIS = Pen.FAINT;
    private static final Pen BAR = new Pen(1.2, List.of());
    private static final Pen MIDDLE = new Pen(0.9, List.of());
    private static final Type FIGURE = new Type(Typeface.TEXT_BOLD, 8.5);
    private static final Type END = new Type(Typeface.TEXT_SEMIBOLD, 8);
    private static final Type TICK = new Type(Typeface.TEXT, 7.5);
    private static final double MARGIN = 4;

    private RangeBar() {}

    /** @param unit written behind the middle's figure, with its space */
    public static void paint(Paper paper, Quantiles range, String unit, double left, double top, double widthMm) {
        int decimals = Wording.decimals(range);
        double axis = top + 5.4;
        double step = step(range.p90() * 1.15 / 4);
        double most = Math.ceil(range.p90() * 1.1 / step) * step;
        double perUnit = (widthMm - 2 * MARGIN) / most;
        double zero = left + MARGIN;
        paper.line(AXIS, zero, axis, zero + most * perUnit, axis);
        for (int i = 0; i * step <= most * 1.0001; i++) {
            double x = zero + i * step * perUnit;
            paper.line(AXIS, x, axis, x, axis + 1);
            paper.text(tick(i * step, step), x, axis + 4, TICK, Anchor.CENTRE);
        }
        double from = zero + range.p10() * perUnit;
        double middle = zero + range.p50() * perUnit;
        double to = zero + range.p90() * perUnit;
        paper.line(BAR, from, axis, to, axis);
        paper.line(MIDDLE, middle, axis - 2.2, middle, axis + 1.2);
        String figure = Figures.fixed(range.p50(), decimals) + unit;
        double half = FIGURE.width(figure) / 2;
        double centre = Math.max(left + half, Math.min(left + widthMm - half, middle));
        paper.text(figure, centre, axis - 2.9, FIGURE, Anchor.CENTRE);
        paper.haloText(Figures.fixed(range.p90(), decimals), to + 1, axis + END.capMm() / 2, END, Anchor.LEFT, 0.6);
        String low = Figures.fixed(range.p10(), decimals);
        if (from - 1 - END.width(low) > zero) {
            paper.haloText(low, from - 1, axis + END.capMm() / 2, END, Anchor.RIGHT, 0.6);
        }
    }

    /** The nearest 1, 2 or 5 times a power of ten that is at least this. */
    private static double step(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double factor : new double[] {1, 2, 5}) {
            if (factor * power >= least * 0.9999) {
                return factor * power;
            }
        }
        return 10 * power;
    }

    private static String tick(double value, double step) {
        return value == 0 ? "0" : Figures.fixed(value, Math.max(0, (int) -Math.floor(Math.log10(step) + 1e-9)));
    }
}
