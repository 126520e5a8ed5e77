package corewright.drawing.marks;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;

/**
 * A comb; line 0.35. Metric: teeth every 100 mm to 500, then one at 1000; at scales other than 1 : 20 and 1 : 25 the teeth
 * stand for the round length that keeps the comb within 52 mm of paper. In feet and inches: quarters of the longest of
 * {@link #FEET} that does.
 *
 * @param x of zero
 * @param y of the comb's back
 * @param scale survey millimetres to one of paper
 */
public record ScaleBar(double x, double y, double scale, Measure measure) implements Mark {
    private static final double TOOTH = 2.2;
    private static final double SMALL_TOOTH = 1.2;
    private static final double LONGEST = 52;

    /** Millimetres to a tooth, ten teeth to a comb. */
    private static final int[] STEPS = {5000, 2000, 1000, 500, 200, 100, 50, 20, 10};

    /** Inches to a comb, of four quarters in whole inches or feet. */
    static final int[] FEET = {960, 480, 240, 96, 48, 24, 12, 4};

    /** What the teeth stand for. */
    private record Comb(double toothMm, int teeth, int half, int inchesToTooth) {
        double lengthMm() {
            return toothMm * teeth;
        }

        /** At the first tooth, at the middle and at the end. */
        String name(int tooth) {
            if (inchesToTooth == 0) {
                return String.valueOf(Math.round(tooth * toothMm));
            }
            int inches = tooth * inchesToTooth;
            return inches % 12 == 0 ? inches / 12 + " ft" : inches < 12 ? inches + " in" : feetAndInches(inches);
        }

        private static String feetAndInches(int inches) {
            return inches / 12 + " ft " + inches % 12 + " in";
        }

        String end() {
            return name(teeth) + (inchesToTooth == 0 ? " mm" : "");
        }
    }

    private Comb comb() {
        return measure == Measure.METRIC ? metric() : feet();
    }

    private Comb metric() {
        int step = STEPS[STEPS.length - 1];
        for (int i = STEPS.length - 1; i >= 0 && 10 * STEPS[i] / scale <= LONGEST; i--) {
            step = STEPS[i];
        }
        return new Comb(step, 10, 5, 0);
    }

    private Comb feet() {
        int inches = FEET[FEET.length - 1];
        for (int i = FEET.length - 1; i >= 0 && FEET[i] * Measure.MM_PER_INCH / scale <= LONGEST; i--) {
            inches = FEET[i];
        }
        return new Comb(inches * Measure.MM_PER_INCH / 4, 4, 2, inches / 4);
    }

    /** Length on paper, millimetres. */
    public double length() {
        return comb().lengthMm() / scale;
    }

    @Override
    public Box box() {
        double left = Type.FEATURE.width("0") / 2;
        double right = Type.FEATURE.width(comb().end()) / 2;
        return new Box(x - left, y - TOOTH, length() + left + right, TOOTH + 3.4);
    }

    @Override
    public void paint(Paper paper) {
        Comb comb = comb();
        double tooth = comb.toothMm() / scale;
        paper.line(Pen.MARK, x, y, x + length(), y);
        for (int i = 0; i <= comb.teeth(); i++) {
            boolean tall = i % comb.half() == 0;
            if (tall || i < comb.half()) {
                paper.line(
                        tall ? Pen.MARK : Pen.LEADER,
                        x + i * tooth,
                        y,
                        x + i * tooth,
                        y - (tall ? TOOTH : SMALL_TOOTH));
            }
        }
        double foot = y + 3.2;
        paper.text("0", x, foot, Type.FEATURE, Paper.Anchor.CENTRE);
        if (tooth > Type.FEATURE.width("0 " + comb.name(1)) * 0.75) {
            paper.text(comb.name(1), x + tooth, foot, Type.FEATURE, Paper.Anchor.CENTRE);
        }
        paper.text(comb.name(comb.half()), x + comb.half() * tooth, foot, Type.FEATURE, Paper.Anchor.CENTRE);
        paper.text(comb.end(), x + length(), foot, Type.FEATURE, Paper.Anchor.CENTRE);
    }
}
