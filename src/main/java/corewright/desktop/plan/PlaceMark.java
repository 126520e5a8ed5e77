package corewright.desktop.plan;

import corewright.desktop.state.Sight;
import corewright.drawing.screen.ScreenLook;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;

/** A ring about the place somebody is sent to; it stays until the next deed. */
public final class PlaceMark implements PlanPane.Overlay {
    private static final double RADIUS_PX = 19;
    private static final double LINE_PX = 3;

    /** What is to be marked. */
    public record Seen(Optional<Sight.Mark> mark, String face, ScreenLook look) {}

    private final Supplier<Seen> seen;

    public PlaceMark(Supplier<Seen> seen) {
        this.seen = seen;
    }

    @Override
    public void paint(GraphicsContext g, PlanCamera camera) {
        Seen now = seen.get();
        now.mark().filter(m -> m.spot().face().equals(now.face())).ifPresent(m -> ring(g, camera, m, now.look()));
    }

    private static void ring(GraphicsContext g, PlanCamera camera, Sight.Mark mark, ScreenLook look) {
        double x = camera.px(mark.spot().xMm());
        double y = camera.py(mark.spot().yMm());
        Color ground = PlanPane.fx(look.tone().ground());
        Color crayon = PlanPane.fx(look.crayon());
        circle(g, x, y, ground, 3 * LINE_PX);
        circle(g, x, y, crayon, LINE_PX);
        if (mark.label().isEmpty()) {
            return;
        }
        g.setFont(Font.font("Asap", FontWeight.BOLD, 15));
        g.setTextAlign(TextAlignment.LEFT);
        g.setTextBaseline(VPos.CENTER);
        g.setStroke(ground);
        g.setLineWidth(4);
        double left = x + RADIUS_PX + 7;
        g.strokeText(mark.label(), left, y);
        g.setFill(crayon);
        g.fillText(mark.label(), left, y);
        g.setTextBaseline(VPos.BASELINE);
    }

    private static void circle(GraphicsContext g, double x, double y, Color colour, double width) {
        g.setStroke(colour);
        g.setLineWidth(width);
        g.strokeOval(x - RADIUS_PX, y - RADIUS_PX, 2 * RADIUS_PX, 2 * RADIUS_PX);
    }
}
