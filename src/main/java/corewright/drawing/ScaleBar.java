package corewright.drawing;

/**
 * A comb: teeth every 100 mm to 500, then one at 1000; line 0.35. Where the scale is so small that 100 mm are under 2.5 mm
 * of paper, everything is taken ten times as long.
 *
 * @param x of zero
 * @param y of the comb's back
 * @param scale survey millimetres to one of paper
 */
public record ScaleBar(double x, double y, double scale) implements Mark {
    private static final double TOOTH = 2.2;
    private static final double SMALL_TOOTH = 1.2;
    private static final double CLOSEST = 2.5;

    private int step() {
        return 100 / scale < CLOSEST ? 1000 : 100;
    }

    /** Length on paper, millimetres. */
    public double length() {
        return 10 * step() / scale;
    }

    @Override
    public Box box() {
        double left = Type.FEATURE.width("0") / 2;
        double right = Type.FEATURE.width(end()) / 2;
        return new Box(x - left, y - TOOTH, length() + left + right, TOOTH + 3.4);
    }

    private String end() {
        return 10 * step() + " mm";
    }

    @Override
    public void paint(Paper paper) {
        double tenth = step() / scale;
        paper.line(Pen.MARK, x, y, x + length(), y);
        for (int i = 0; i <= 10; i++) {
            boolean tall = i == 0 || i == 5 || i == 10;
            if (tall || i < 5) {
                paper.line(
                        tall ? Pen.MARK : Pen.LEADER,
                        x + i * tenth,
                        y,
                        x + i * tenth,
                        y - (tall ? TOOTH : SMALL_TOOTH));
            }
        }
        double foot = y + 3.2;
        paper.text("0", x, foot, Type.FEATURE, Paper.Anchor.CENTRE);
        if (tenth > Type.FEATURE.width("0 " + step()) * 0.75) {
            paper.text(String.valueOf(step()), x + tenth, foot, Type.FEATURE, Paper.Anchor.CENTRE);
        }
        paper.text(String.valueOf(5 * step()), x + 5 * tenth, foot, Type.FEATURE, Paper.Anchor.CENTRE);
        paper.text(end(), x + length(), foot, Type.FEATURE, Paper.Anchor.CENTRE);
    }
}
