package corewright.report;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** The lines and circles that a page of a PDF draws, in millimetres from its upper left corner, read from the file alone. */
final class Drawn extends PDFGraphicsStreamEngine {
    private static final double MM = 25.4 / 72;

    /** A straight line that is a path by itself. */
    record Line(double x1, double y1, double x2, double y2) {
        double length() {
            return Math.hypot(x2 - x1, y2 - y1);
        }

        boolean level() {
            return Math.abs(y2 - y1) < 1e-3;
        }

        boolean upright() {
            return Math.abs(x2 - x1) < 1e-3;
        }

        double middleX() {
            return (x1 + x2) / 2;
        }

        double middleY() {
            return (y1 + y2) / 2;
        }
    }

    record Circle(double x, double y, double diameter) {}

    final List<Line> lines = new ArrayList<>();
    final List<Circle> circles = new ArrayList<>();
    final List<Rectangle2D> rectangles = new ArrayList<>();
    private final List<Point2D> points = new ArrayList<>();
    private final double height;
    private int curves;
    private boolean closed;

    private Drawn(PDPage page) {
        super(page);
        height = page.getMediaBox().getHeight();
    }

    static Drawn of(PDPage page) throws IOException {
        Drawn drawn = new Drawn(page);
        drawn.processPage(page);
        return drawn;
    }

    private void add(double x, double y) {
        points.add(new Point2D.Double(x * MM, (height - y) * MM));
    }

    @Override
    public void moveTo(float x, float y) {
        flush();
        add(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        add(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        curves++;
        add(x3, y3);
    }

    @Override
    public void closePath() {
        closed = true;
    }

    private void flush() {
        if (curves == 4 && points.size() == 5) {
            Rectangle2D box = box();
            circles.add(new Circle(box.getCenterX(), box.getCenterY(), box.getWidth()));
        } else if (curves == 0 && points.size() == 2) {
            Point2D a = points.get(0);
            Point2D b = points.get(1);
            lines.add(new Line(a.getX(), a.getY(), b.getX(), b.getY()));
        } else if (curves == 0 && closed && points.size() >= 4 && points.size() <= 5) {
            rectangles.add(box());
        }
        points.clear();
        curves = 0;
        closed = false;
    }

    private Rectangle2D box() {
        Rectangle2D box =
                new Rectangle2D.Double(points.get(0).getX(), points.get(0).getY(), 0, 0);
        points.forEach(box::add);
        return box;
    }

    @Override
    public void strokePath() {
        flush();
    }

    @Override
    public void fillPath(int rule) {
        points.clear();
        curves = 0;
        closed = false;
    }

    @Override
    public void fillAndStrokePath(int rule) {
        flush();
    }

    @Override
    public void endPath() {
        fillPath(0);
    }

    @Override
    public void clip(int rule) {}

    @Override
    public Point2D getCurrentPoint() {
        Point2D last = points.isEmpty() ? new Point2D.Double() : points.get(points.size() - 1);
        return new Point2D.Double(last.getX() / MM, height - last.getY() / MM);
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        flush();
        for (Point2D p : List.of(p0, p1, p2, p3)) {
            add(p.getX(), p.getY());
        }
        closed = true;
    }

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void shadingFill(COSName name) {}
}
