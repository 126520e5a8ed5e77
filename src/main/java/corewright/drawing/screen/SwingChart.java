package corewright.drawing.screen;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Tone;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * What one input at a time does to a figure: a row an input, in it a hatched bar from the middle to the figure at the input's low end, and
 * a solid one to the figure at its high end. In ink alone.
 *
 * @param title quantity and unit
 * @param middle where nothing is moved
 * @param rows from the top
 */
public record SwingChart(String title, double middle, List<Row> rows) {
    public static final double ROW = 8.4;
    private static final double HEAD = 8;
    private static final double FOOT = 6;
    private static final double NAMES = 36;
    private static final double RIGHT = 5;
    private static final double BAR = 2;
    private static final double HATCH = 0.9;
    private static final int PARTS = 4;
    private static final Type TITLE = new Type(Typeface.TEXT_SEMIBOLD, 8.5);
    private static final Type NAME = new Type(Typeface.TEXT, 9);
    private static final Type RANGE = new Type(Typeface.TEXT, 7.5);
    private static final Type TICK = new Type(Typeface.CONDENSED, 9);

    /**
     * One input.
     *
     * @param name as people call it
     * @param range from its low to its high end, with its unit
     */
    public record Row(String name, String range, double atLow, double atHigh) {}

    public SwingChart {
        rows = List.copyOf(rows);
    }

    public double heightMm() {
        return HEAD + rows.size() * ROW + FOOT;
    }

    /** Round figures below and above all that is shown. */
    private record Scale(double from, double step, int parts, Box field) {
        static Scale of(SwingChart chart, Box field) {
            double[] all = DoubleStream.concat(
                            DoubleStream.of(chart.middle),
                            chart.rows.stream().flatMapToDouble(r -> DoubleStream.of(r.atLow, r.atHigh)))
                    .toArray();
            double low = DoubleStream.of(all).min().orElse(0);
            double high = DoubleStream.of(all).max().orElse(1);
            double step = step((high - low) / PARTS);
            double from = Math.floor(low / step) * step;
            return new Scale(from, step, Math.max(1, (int) Math.ceil((high - from) / step - 1e-9)), field);
        }

        private static double step(double least) {
            double power = Math.pow(10, Math.floor(Math.log10(Math.max(least, 1e-9))));
            return DoubleStream.of(1, 2, 2.5, 5, 10)
                    .map(s -> s * power)
                    .filter(s -> s >= least * (1 - 1e-9))
                    .findFirst()
                    .orElse(10 * power);
        }

        double x(double figure) {
            return field.x() + field.width() * (figure - from) / (step * parts);
        }
    }

    /** Paints it with its upper left corner at that of the box, as wide as the box. */
    public void paint(Paper paper, Box box) {
        double top = box.y() + HEAD;
        double foot = top + rows.size() * ROW;
        Scale scale = Scale.of(this, new Box(box.x() + NAMES, top, box.width() - NAMES - RIGHT, foot - top));
        paper.text(title, box.x(), box.y() + 4, TITLE, Anchor.LEFT);
        for (int i = 0; i <= scale.parts; i++) {
            double figure = scale.from + i * scale.step;
            paper.line(Pen.FAINT, scale.x(figure), foot, scale.x(figure), foot + 1);
            paper.text(Figures.atMost(figure, 1), scale.x(figure), foot + 4.4, TICK, Anchor.CENTRE);
        }
        paper.line(Pen.MARK, scale.x(scale.from), foot, scale.x(scale.from + scale.parts * scale.step), foot);
        for (int i = 0; i < rows.size(); i++) {
            row(paper, rows.get(i), scale, box.x(), top + i * ROW);
        }
        paper.line(Pen.MARK, scale.x(middle), top - 2.5, scale.x(middle), foot);
    }

    private void row(Paper paper, Row row, Scale scale, double left, double top) {
        paper.text(row.name, left, top + 3.4, NAME.within(row.name, NAMES - 2, 1), Anchor.LEFT);
        paper.text(row.range, left, top + 6.8, RANGE, Anchor.LEFT, Tone.QUIET);
        Rectangle2D low = bar(scale, row.atLow, top + ROW / 2 - BAR - 0.2);
        Rectangle2D high = bar(scale, row.atHigh, top + ROW / 2 + 0.2);
        paper.within(low, p -> {
            for (double x = low.getX() - BAR; x < low.getMaxX(); x += HATCH) {
                p.line(Pen.PATTERN, x, low.getMaxY(), x + BAR, low.getY());
            }
        });
        paper.draw(low, Pen.PATTERN);
        paper.fill(high);
    }

    private Rectangle2D bar(Scale scale, double figure, double top) {
        double from = Math.min(scale.x(middle), scale.x(figure));
        return new Rectangle2D.Double(from, top, Math.max(scale.x(middle), scale.x(figure)) - from, BAR);
    }
}
