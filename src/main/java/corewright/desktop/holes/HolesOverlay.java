package corewright.desktop.holes;

import corewright.contour.Raster;
import corewright.desktop.plan.PlanCamera;
import corewright.desktop.plan.PlanPane;
import corewright.desktop.state.Workbench;
import corewright.drawing.kit.Figures;
import corewright.drawing.screen.ScreenLook;
import corewright.repair.pattern.HoleTrial;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.survey.Spot;
import java.util.function.DoubleSupplier;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;
import org.locationtech.jts.geom.Coordinate;

/** Holes, vents, the mix as it has come, and what is out of reach, over the plan. */
final class HolesOverlay implements PlanPane.Overlay {
    private static final double DISC = 13;

    private final Workbench bench;
    private final HolesModel model;
    private final DoubleSupplier fillS;

    HolesOverlay(Workbench bench, HolesModel model, DoubleSupplier fillS) {
        this.bench = bench;
        this.model = model;
        this.fillS = fillS;
    }

    /** When the last cell has mix, seconds. */
    double endS(Raster arrivalS) {
        double end = 1;
        for (double s : arrivalS.values()) {
            end = s > end ? s : end; // NaN is never greater
        }
        return end;
    }

    @Override
    public void paint(GraphicsContext g, PlanCamera camera) {
        InjectionPlan plan = model.plan().orElse(null);
        if (plan == null) {
            return;
        }
        ScreenLook look = bench.sight().appearance().look();
        Color ink = PlanPane.fx(look.tone().ink());
        Color ground = PlanPane.fx(look.tone().ground());
        Color crayon = PlanPane.fx(look.crayon());
        double s = fillS.getAsDouble();
        if (!Double.isInfinite(s)) {
            model.fill().arrivalS().ifPresent(r -> fill(g, camera, r, s, ink));
        }
        model.now()
                .filter(now -> model.moved() || now.covered() < 0.99)
                .ifPresent(now -> out(g, camera, now, crayon, ground));
        for (Hole hole : plan.holes()) {
            boolean held = model.held().filter(h -> h == hole).isPresent();
            reach(g, camera, hole.spot(), hole.reachMm(), ink);
            if (held && model.moved()) {
                ring(g, camera, hole.spot(), ink);
            } else {
                disc(
                        g,
                        camera,
                        hole.spot(),
                        number(hole),
                        hole.fills() ? held ? crayon : ink : ground,
                        hole.fills() ? ground : ink);
                if (model.locked(hole)) {
                    lock(g, camera, hole.spot(), ink);
                }
            }
        }
        model.heldAt().filter(at -> model.moved()).ifPresent(at -> {
            String name = model.held().map(HolesOverlay::number).orElse("+");
            disc(g, camera, at, name, crayon, ground);
        });
    }

    private static String number(Hole hole) {
        return Figures.holeNumber(hole.id());
    }

    private static void fill(GraphicsContext g, PlanCamera camera, Raster r, double untilS, Color ink) {
        double[] values = r.values();
        double px = r.cell() / camera.mmPerPx();
        g.setFill(ink.deriveColor(0, 1, 1, 0.35));
        for (int i = 0; i < values.length; i++) {
            if (values[i] <= untilS) {
                double x = camera.px(r.centreX(i % r.columns()));
                double y = camera.py(r.centreY(i / r.columns()));
                g.fillRect(x - px / 2, y - px / 2, px + 0.5, px + 0.5);
            }
        }
    }

    private static void out(GraphicsContext g, PlanCamera camera, HoleTrial.Result now, Color crayon, Color ground) {
        double px = now.cellMm() / camera.mmPerPx();
        double half = now.cellMm() / 2;
        g.setFill(crayon.deriveColor(0, 1, 1, 0.85));
        for (Coordinate c : now.out()) {
            g.fillRect(camera.px(c.x + half) - px / 2, camera.py(c.y + half) - px / 2, px + 0.5, px + 0.5);
        }
        Coordinate at = now.outAt();
        if (at != null && now.covered() < 0.99) {
            g.setFont(Font.font("Asap", FontWeight.BOLD, 16));
            g.setTextAlign(TextAlignment.LEFT);
            g.setStroke(ground);
            g.setLineWidth(5);
            g.strokeText("out of reach", camera.px(at.x) + 14, camera.py(at.y) + 24);
            g.setFill(crayon);
            g.fillText("out of reach", camera.px(at.x) + 14, camera.py(at.y) + 24);
        }
    }

    private static void reach(GraphicsContext g, PlanCamera camera, Spot at, double reachMm, Color ink) {
        if (reachMm > 0) {
            double r = reachMm / camera.mmPerPx();
            g.setStroke(ink);
            g.setLineWidth(1);
            g.setLineDashes(4, 4);
            g.strokeOval(camera.px(at.xMm()) - r, camera.py(at.yMm()) - r, 2 * r, 2 * r);
            g.setLineDashes();
        }
    }

    private static void ring(GraphicsContext g, PlanCamera camera, Spot at, Color ink) {
        g.setStroke(ink);
        g.setLineWidth(2);
        g.setLineDashes(3, 4);
        g.strokeOval(camera.px(at.xMm()) - DISC, camera.py(at.yMm()) - DISC, 2 * DISC, 2 * DISC);
        g.setLineDashes();
    }

    private static void disc(GraphicsContext g, PlanCamera camera, Spot at, String number, Color fill, Color words) {
        double x = camera.px(at.xMm());
        double y = camera.py(at.yMm());
        g.setFill(fill);
        g.fillOval(x - DISC, y - DISC, 2 * DISC, 2 * DISC);
        g.setStroke(words);
        g.setLineWidth(2);
        g.strokeOval(x - DISC, y - DISC, 2 * DISC, 2 * DISC);
        g.setFill(words);
        g.setFont(Font.font("Asap Condensed", FontWeight.BOLD, 14));
        g.setTextAlign(TextAlignment.CENTER);
        g.fillText(number, x, y + 5);
    }

    /** Placed by hand: a bar under the disc. */
    private static void lock(GraphicsContext g, PlanCamera camera, Spot at, Color ink) {
        g.setFill(ink);
        g.fillRect(camera.px(at.xMm()) - DISC, camera.py(at.yMm()) + DISC + 3, 2 * DISC, 3);
    }
}
