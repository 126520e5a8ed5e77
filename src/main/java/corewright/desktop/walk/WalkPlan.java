package corewright.desktop.walk;

import corewright.drawing.screen.ScreenLook;
import corewright.survey.Feature;
import corewright.survey.Sound;
import corewright.survey.Spot;
import java.util.List;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** The face with its bow up, as the surveyor stands, and the points of a walk. */
final class WalkPlan extends Region {
    private static final double MARGIN = 62;
    private static final double RING = 28;
    private static final double STEP_MM = 500;
    private static final double RECENT = 3;

    interface Touch {
        void at(double xMm, double yMm);
    }

    private final Canvas canvas = new Canvas();
    private @Nullable GridWalk walk;
    private ScreenLook look = ScreenLook.DAY;
    private double scale = 1;
    private double left;
    private double top;

    WalkPlan(Touch touch) {
        getChildren().add(canvas);
        setMinSize(200, 200);
        setAccessibleText("Plan with the points of the walk, bow up");
        setOnMouseClicked(e -> touch.at((e.getY() - top) / scale, (e.getX() - left) / scale));
    }

    void show(GridWalk shown, ScreenLook inLook) {
        walk = shown;
        look = inLook;
        draw();
    }

    @Override
    protected void layoutChildren() {
        canvas.setWidth(getWidth());
        canvas.setHeight(getHeight());
        draw();
    }

    private static Color fx(java.awt.Color c) {
        return Color.rgb(c.getRed(), c.getGreen(), c.getBlue());
    }

    private double px(double yMm) {
        return left + yMm * scale;
    }

    private double py(double xMm) {
        return top + xMm * scale;
    }

    private void draw() {
        GraphicsContext g = canvas.getGraphicsContext2D();
        Color ink = fx(look.tone().ink());
        Color ground = fx(look.tone().ground());
        g.setFill(ground);
        g.fillRect(0, 0, canvas.getWidth(), canvas.getHeight());
        GridWalk w = walk;
        if (w == null || canvas.getWidth() < 200) {
            return;
        }
        Envelope box = w.face().outline().getEnvelopeInternal();
        scale = Math.min(
                (canvas.getWidth() - 2 * MARGIN) / box.getHeight(), (canvas.getHeight() - 2 * MARGIN) / box.getWidth());
        left = canvas.getWidth() / 2 - box.centre().y * scale;
        top = MARGIN - box.getMinX() * scale;
        grid(g, box, ink);
        structure(g, w, ink, ground);
        points(g, w, ink, ground);
    }

    private void grid(GraphicsContext g, Envelope box, Color ink) {
        g.setStroke(ink.deriveColor(0, 1, 1, 0.45));
        g.setLineWidth(1);
        g.setLineDashes(1, 5);
        g.setFill(ink);
        g.setFont(Font.font("Asap Condensed", FontWeight.BOLD, 15));
        g.setTextAlign(TextAlignment.CENTER);
        for (double y = Math.floor(box.getMinY() / STEP_MM) * STEP_MM; y < box.getMaxY(); y += STEP_MM) {
            g.strokeLine(px(y), MARGIN - 10, px(y), py(box.getMaxX()));
            long n = Math.round((y >= 0 ? y : -y - STEP_MM) / STEP_MM) + 1;
            double middle = (Math.max(y, box.getMinY()) + Math.min(y + STEP_MM, box.getMaxY())) / 2;
            g.fillText((y >= 0 ? "stbd " : "port ") + n, px(middle), 36);
        }
        g.setFont(Font.font("Asap", FontWeight.BOLD, 17));
        String letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";
        for (int i = 0; i * STEP_MM < box.getMaxX() && i < letters.length(); i++) {
            double to = Math.min((i + 1) * STEP_MM, box.getMaxX());
            g.fillText(letters.substring(i, i + 1), 24, py((i * STEP_MM + to) / 2) + 6);
            g.strokeLine(42, py(i * STEP_MM), canvas.getWidth() - 24, py(i * STEP_MM));
        }
        g.setLineDashes();
        g.fillPolygon(
                new double[] {px(0) - 8, px(0) + 8, px(0)}, new double[] {MARGIN - 4, MARGIN - 4, MARGIN - 18}, 3);
    }

    private void structure(GraphicsContext g, GridWalk w, Color ink, Color ground) {
        g.setStroke(ink);
        for (Feature.Support s : w.face().all(Feature.Support.class)) {
            g.setLineWidth(2);
            g.setLineDashes(18, 4, 3, 4);
            g.save();
            path(g, w.face().outline());
            g.clip();
            path(g, s.geometry());
            g.stroke();
            g.restore();
        }
        g.setLineDashes();
        for (Feature.Divider d : w.face().all(Feature.Divider.class)) {
            g.setLineWidth(6);
            path(g, d.geometry());
            g.stroke();
            g.setStroke(ground);
            g.setLineWidth(3.5);
            path(g, d.geometry());
            g.stroke();
            g.setStroke(ink);
        }
        for (Feature.Opening o : w.face().all(Feature.Opening.class)) {
            path(g, o.geometry());
            g.setFill(ground);
            g.fill();
            g.setLineWidth(2);
            g.stroke();
            Envelope e = o.geometry().getEnvelopeInternal();
            g.setLineWidth(0.8);
            g.strokeLine(px(e.getMinY()), py(e.getMinX()), px(e.getMaxY()), py(e.getMaxX()));
            g.strokeLine(px(e.getMinY()), py(e.getMaxX()), px(e.getMaxY()), py(e.getMinX()));
        }
        g.setLineWidth(2.6);
        path(g, w.face().outline());
        g.stroke();
        for (Feature.Fitting f : w.face().all(Feature.Fitting.class)) {
            fitting(g, f, ink, ground);
        }
    }

    private void fitting(GraphicsContext g, Feature.Fitting f, Color ink, Color ground) {
        Coordinate c = f.geometry().getCentroid().getCoordinate();
        double x = px(c.y);
        double y = py(c.x);
        g.setFill(ground);
        g.fillRect(x - 8, y - 8, 16, 16);
        g.setLineWidth(1.6);
        g.strokeRect(x - 8, y - 8, 16, 16);
        if (f.metal()) {
            g.setFill(ink);
            g.fillPolygon(new double[] {x - 5, x + 5, x - 5}, new double[] {y - 5, y + 5, y + 5}, 3);
        }
    }

    private void path(GraphicsContext g, Geometry geometry) {
        g.beginPath();
        Coordinate[] cs = geometry.getCoordinates();
        for (int i = 0; i < cs.length; i++) {
            if (i == 0) {
                g.moveTo(px(cs[i].y), py(cs[i].x));
            } else {
                g.lineTo(px(cs[i].y), py(cs[i].x));
            }
        }
    }

    private void points(GraphicsContext g, GridWalk w, Color ink, Color ground) {
        List<Spot> points = w.points();
        Color crayon = fx(look.crayon());
        way(g, w, points, crayon);
        double open = Math.max(3, Math.min(5, w.spacingMm() * scale * 0.14));
        for (int i = 0; i < points.size(); i++) {
            Spot p = points.get(i);
            double x = px(p.yMm());
            double y = py(p.xMm());
            if (i == w.at()) {
                g.setFill(ground);
                g.fillOval(x - RING, y - RING, 2 * RING, 2 * RING);
                g.setStroke(crayon);
                g.setLineWidth(6);
                g.strokeOval(x - RING, y - RING, 2 * RING, 2 * RING);
                number(g, w.entry(), x, y, ink, 21);
            } else if (w.noted(i).open()) {
                g.setFill(ground);
                g.fillOval(x - open, y - open, 2 * open, 2 * open);
                g.setStroke(ink);
                g.setLineWidth(1.8);
                g.strokeOval(x - open, y - open, 2 * open, 2 * open);
            } else if (!near(w, p)) {
                number(g, w.noted(i), x, y, ink, 16);
            }
        }
    }

    /** Under the ring of the point in hand nothing else is drawn. */
    private boolean near(GridWalk w, Spot p) {
        return Math.hypot(
                        px(p.yMm()) - px(w.spot().yMm()),
                        py(p.xMm()) - py(w.spot().xMm()))
                < RING;
    }

    /** The last step unbroken, the next ones dotted. */
    private void way(GraphicsContext g, GridWalk w, List<Spot> points, Color crayon) {
        g.setStroke(crayon);
        g.setLineWidth(3.5);
        if (w.at() > 0) {
            step(g, points.get(w.at() - 1), points.get(w.at()));
        }
        g.setLineDashes(0.1, 9);
        g.setLineCap(javafx.scene.shape.StrokeLineCap.ROUND);
        for (int i = w.at(); i < Math.min(points.size() - 1, w.at() + RECENT); i++) {
            step(g, points.get(i), points.get(i + 1));
        }
        g.setLineDashes();
        g.setLineCap(javafx.scene.shape.StrokeLineCap.BUTT);
    }

    private void step(GraphicsContext g, Spot a, Spot b) {
        g.strokeLine(px(a.yMm()), py(a.xMm()), px(b.yMm()), py(b.xMm()));
    }

    private void number(GraphicsContext g, GridWalk.Noted noted, double x, double y, Color ink, double size) {
        g.setFill(ink);
        g.setStroke(ink);
        g.setFont(Font.font("Asap Condensed", FontWeight.BOLD, size));
        g.setTextAlign(TextAlignment.CENTER);
        String words = noted.skipped().isEmpty() ? noted.shown() : "–";
        g.fillText(words, x, y + size * 0.35);
        int lines = noted.tap() == Sound.DULL ? 1 : noted.tap() == Sound.HOLLOW ? 2 : 0;
        g.setLineWidth(1.5);
        for (int i = 0; i < lines; i++) {
            double at = y + size * 0.35 + 4 + 3.4 * i;
            g.strokeLine(x - size * 0.5, at, x + size * 0.5, at);
        }
        if (words.isEmpty() && noted.tap() != null) {
            g.fillOval(x - 2, y - 2, 4, 4);
        }
    }
}
