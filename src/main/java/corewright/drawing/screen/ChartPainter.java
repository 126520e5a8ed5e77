package corewright.drawing.screen;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Tone;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Paints a {@link Chart} in ink alone: shape and line tell things apart. */
public final class ChartPainter {
    private static final Type FIGURE = new Type(Typeface.CONDENSED, 9);
    private static final Type TITLE = new Type(Typeface.TEXT, 8);
    private static final double LEFT = 15;
    private static final double RIGHT = 6;
    private static final double TOP = 9;
    private static final double BOTTOM = 13;
    private static final double TICK = 1.3;

    /** Falls 1 : 2, wide apart: a column is not a condition of the deck. */
    private static final double HATCH = 1.6;

    private final Chart chart;
    private final Paper paper;
    private final Box box;
    private final Rectangle2D field;

    private ChartPainter(Paper paper, Chart chart, Box box) {
        this.chart = chart;
        this.paper = paper;
        this.box = box;
        field = new Rectangle2D.Double(
                box.x() + LEFT, box.y() + TOP, box.width() - LEFT - RIGHT, box.height() - TOP - BOTTOM);
    }

    /** Paints on a sheet. */
    public static void onPaper(Paper paper, Chart chart, Box box) {
        new ChartPainter(paper, chart, box).paint();
    }

    /** Paints on a graphics whose unit is one pixel of a window at 100 %. */
    public static void onScreen(Graphics2D pixels, Chart chart, double widthPx, double heightPx, Tone tone) {
        Graphics2D g = (Graphics2D) pixels.create();
        double k = ScreenMap.PX_PER_MM;
        g.setColor(tone.ground());
        g.fill(new Rectangle2D.Double(0, 0, widthPx, heightPx));
        g.scale(k, k);
        onPaper(new Paper(g, tone), chart, new Box(0, 0, widthPx / k, heightPx / k));
        g.dispose();
    }

    private void paint() {
        axes();
        for (Chart.Element element : chart.elements()) {
            if (element instanceof Chart.Line line) {
                line(line.points(), line.broken() ? Pen.POSSIBLE : Pen.EDGE);
            } else if (element instanceof Chart.End end) {
                line(end.points(), Pen.PATTERN);
            } else if (element instanceof Chart.Marks marks) {
                marks.points().forEach(p -> mark(p, marks.sign()));
            } else if (element instanceof Chart.Bars bars) {
                bars(bars);
            } else if (element instanceof Chart.Span span) {
                span(span);
            }
        }
    }

    private double x(double figure) {
        return field.getX() + field.getWidth() * figure / chart.across().end();
    }

    private double y(double figure) {
        return field.getMaxY() - field.getHeight() * figure / chart.up().end();
    }

    private void axes() {
        double foot = field.getMaxY();
        paper.line(Pen.MARK, field.getX(), foot, field.getMaxX(), foot);
        paper.line(Pen.MARK, field.getX(), field.getY(), field.getX(), foot);
        Chart.Axis across = chart.across();
        for (int i = 0; i <= across.parts(); i++) {
            double figure = across.end() * i / across.parts();
            paper.line(Pen.MARK, x(figure), foot, x(figure), foot + TICK);
            paper.text(Figures.atMost(figure, 3), x(figure), foot + 5, FIGURE, Paper.Anchor.CENTRE);
        }
        paper.text(across.title(), field.getMaxX(), foot + 10, TITLE, Paper.Anchor.RIGHT, Tone.QUIET);
        Chart.Axis up = chart.up();
        for (int i = 0; i <= up.parts(); i++) {
            double figure = up.end() * i / up.parts();
            paper.line(Pen.MARK, field.getX() - TICK, y(figure), field.getX(), y(figure));
            paper.text(Figures.atMost(figure, 3), field.getX() - 2, y(figure) + 1.2, FIGURE, Paper.Anchor.RIGHT);
        }
        paper.text(up.title(), box.x(), box.y() + 4, TITLE, Paper.Anchor.LEFT, Tone.QUIET);
    }

    private void line(List<Chart.At> points, Pen pen) {
        if (points.isEmpty()) {
            return;
        }
        Path2D path = new Path2D.Double();
        path.moveTo(x(points.get(0).x()), y(points.get(0).y()));
        points.forEach(p -> path.lineTo(x(p.x()), y(p.y())));
        paper.draw(path, pen);
    }

    private void mark(Chart.At at, Chart.Sign sign) {
        switch (sign) {
            case DISC -> paper.disc(x(at.x()), y(at.y()), 2.2);
            case RING -> paper.ring(x(at.x()), y(at.y()), 2.2, Pen.MARK);
            case DOT -> paper.disc(x(at.x()), y(at.y()), 1.1);
        }
    }

    private void bars(Chart.Bars bars) {
        for (int i = 0; i < bars.heights().size(); i++) {
            double left = x(i * bars.width());
            double top = y(bars.heights().get(i));
            if (top < field.getMaxY() - 0.01) {
                Rectangle2D bar =
                        new Rectangle2D.Double(left, top, x(bars.width()) - field.getX(), field.getMaxY() - top);
                paper.within(bar, p -> hatch(p, bar));
                paper.draw(bar, Pen.MARK);
            }
        }
    }

    private static void hatch(Paper paper, Rectangle2D bar) {
        double drop = bar.getWidth() / 2;
        for (double c = bar.getY() - drop; c < bar.getMaxY(); c += HATCH) {
            paper.line(Pen.PATTERN, bar.getX(), c, bar.getMaxX(), c + drop);
        }
    }

    private void span(Chart.Span span) {
        double at = y(span.y());
        paper.fill(new Rectangle2D.Double(x(span.low()), at - 0.9, x(span.high()) - x(span.low()), 1.8));
        paper.fill(new Rectangle2D.Double(x(span.middle()) - 0.45, at - 3.2, 0.9, 6.4));
    }
}
