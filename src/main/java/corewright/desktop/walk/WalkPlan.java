package corewright.desktop.walk;

import corewright.desktop.plan.Pixels;
import corewright.drawing.screen.BowUpMap;
import corewright.drawing.screen.ScreenLook;
import corewright.survey.Face;
import corewright.survey.Sound;
import corewright.survey.Spot;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.util.List;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.Image;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;
import org.jspecify.annotations.Nullable;

/** The face with its bow up, as the surveyor stands, and the points of a walk. */
final class WalkPlan extends Region {
    private static final double RING = 28;
    private static final double RECENT = 3;

    interface Touch {
        void at(double xMm, double yMm);
    }

    private final Canvas canvas = new Canvas();
    private @Nullable GridWalk walk;
    private ScreenLook look = ScreenLook.DAY;
    private @Nullable BowUpMap map;
    private @Nullable Image picture;
    private @Nullable Face painted;
    private @Nullable ScreenLook paintedIn;

    WalkPlan(Touch touch) {
        getChildren().add(canvas);
        setMinSize(200, 200);
        setAccessibleText("Plan with the points of the walk, bow up");
        setOnMouseClicked(e -> {
            BowUpMap shown = map;
            if (shown != null) {
                touch.at(shown.xMm(e.getY()), shown.yMm(e.getX()));
            }
        });
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
        map = null;
        draw();
    }

    private static Color fx(java.awt.Color c) {
        return Color.rgb(c.getRed(), c.getGreen(), c.getBlue());
    }

    private void draw() {
        GridWalk w = walk;
        if (w == null || canvas.getWidth() < 200) {
            return;
        }
        GraphicsContext g = canvas.getGraphicsContext2D();
        BowUpMap shown = map;
        if (shown == null || !w.face().equals(painted) || look != paintedIn) {
            shown = new BowUpMap(w.face(), canvas.getWidth(), canvas.getHeight());
            picture = picture(shown);
            painted = w.face();
            paintedIn = look;
            map = shown;
        }
        g.drawImage(picture, 0, 0, canvas.getWidth(), canvas.getHeight());
        points(g, w, shown);
    }

    /** Where the structure is painted once: the points move on, it does not. */
    private Image picture(BowUpMap shown) {
        double sharpness = getScene() == null ? 1 : getScene().getWindow().getOutputScaleX();
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(canvas.getWidth() * sharpness),
                (int) Math.ceil(canvas.getHeight() * sharpness),
                BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D g = image.createGraphics();
        g.scale(sharpness, sharpness);
        shown.paint(g, look);
        g.dispose();
        return Pixels.of(image).image();
    }

    private void points(GraphicsContext g, GridWalk w, BowUpMap shown) {
        Color ink = fx(look.tone().ink());
        Color ground = fx(look.tone().ground());
        List<Spot> points = w.points();
        Color crayon = fx(look.crayon());
        way(g, w, shown, crayon);
        double open = Math.max(3, Math.min(5, w.spacingMm() / shown.mmPerPx() * 0.14));
        for (int i = 0; i < points.size(); i++) {
            Spot p = points.get(i);
            Point2D at = shown.at(p.xMm(), p.yMm());
            double x = at.getX();
            double y = at.getY();
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
            } else if (at.distance(shown.at(w.spot().xMm(), w.spot().yMm())) >= RING) {
                number(g, w.noted(i), x, y, ink, 16); // under the ring of the point in hand nothing else is drawn
            }
        }
    }

    /** The last step unbroken, the next ones dotted. */
    private void way(GraphicsContext g, GridWalk w, BowUpMap shown, Color crayon) {
        List<Spot> points = w.points();
        g.setStroke(crayon);
        g.setLineWidth(3.5);
        if (w.at() > 0) {
            step(g, shown, points.get(w.at() - 1), points.get(w.at()));
        }
        g.setLineDashes(0.1, 9);
        g.setLineCap(javafx.scene.shape.StrokeLineCap.ROUND);
        for (int i = w.at(); i < Math.min(points.size() - 1, w.at() + RECENT); i++) {
            step(g, shown, points.get(i), points.get(i + 1));
        }
        g.setLineDashes();
        g.setLineCap(javafx.scene.shape.StrokeLineCap.BUTT);
    }

    private static void step(GraphicsContext g, BowUpMap shown, Spot a, Spot b) {
        Point2D from = shown.at(a.xMm(), a.yMm());
        Point2D to = shown.at(b.xMm(), b.yMm());
        g.strokeLine(from.getX(), from.getY(), to.getX(), to.getY());
    }

    private void number(GraphicsContext g, Noted noted, double x, double y, Color ink, double size) {
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
