package corewright.desktop.work;

import corewright.assessment.Assessment;
import corewright.desktop.plan.PlanCamera;
import corewright.desktop.plan.PlanPane;
import corewright.desktop.state.Workbench;
import corewright.drawing.screen.ScreenLook;
import corewright.repair.work.CuredFill;
import corewright.repair.work.FillCheck;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.Tap;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;
import org.locationtech.jts.geom.Coordinate;

/** Warmth as discs, taps after cure as the map's own one and two lines, hollow places outlined and named, over the plan. */
final class FillCheckMarks implements PlanPane.Overlay {
    private static final double R = 8;

    private final Workbench bench;

    FillCheckMarks(Workbench bench) {
        this.bench = bench;
    }

    @Override
    public void paint(GraphicsContext g, PlanCamera camera) {
        Survey survey = bench.survey().orElse(null);
        if (survey == null) {
            return;
        }
        ScreenLook look = bench.sight().appearance().look();
        Color ink = PlanPane.fx(look.tone().ink());
        Color ground = PlanPane.fx(look.tone().ground());
        Color crayon = PlanPane.fx(look.crayon());
        bench.region().ifPresent(r -> bench.found().ifPresent(a -> judged(g, camera, a, r.id(), ink, ground, crayon)));
        for (Tap tap : survey.readings().curedTaps()) {
            Sound sound = tap.sound();
            if (sound != null && tap.spot().face().equals(bench.face())) {
                tap(g, camera, tap.spot(), sound, ink, ground);
            }
        }
        survey.readings().temperatures().stream()
                .filter(t -> t.spot().face().equals(bench.face()))
                .forEach(t -> ring(g, camera, t.spot(), ink, ground));
    }

    private static void judged(
            GraphicsContext g, PlanCamera camera, Assessment a, String region, Color ink, Color ground, Color crayon) {
        for (CuredFill fill : FillCheckWords.of(a, region)) {
            fill.shots().forEach(s -> {
                Coordinate[] rim = s.area().getExteriorRing().getCoordinates();
                g.setStroke(crayon);
                g.setLineWidth(3);
                g.beginPath();
                for (int i = 0; i < rim.length; i++) {
                    if (i == 0) {
                        g.moveTo(camera.px(rim[i].x), camera.py(rim[i].y));
                    } else {
                        g.lineTo(camera.px(rim[i].x), camera.py(rim[i].y));
                    }
                }
                g.stroke();
                Coordinate at = s.area().getInteriorPoint().getCoordinate();
                g.setFont(Font.font("Asap", FontWeight.BOLD, 16));
                g.setTextAlign(TextAlignment.CENTER);
                g.setStroke(ground);
                g.setLineWidth(5);
                g.strokeText(s.id(), camera.px(at.x), camera.py(at.y) - 12);
                g.setFill(crayon);
                g.fillText(s.id(), camera.px(at.x), camera.py(at.y) - 12);
            });
        }
        FillCheckWords.warmth(a, region).stream()
                .filter(p -> p.verdict() == FillCheck.Verdict.ARRIVED)
                .forEach(p -> disc(g, camera, p.reading().spot(), ink));
    }

    private static void disc(GraphicsContext g, PlanCamera camera, Spot at, Color ink) {
        g.setFill(ink);
        g.fillOval(camera.px(at.xMm()) - R, camera.py(at.yMm()) - R, 2 * R, 2 * R);
    }

    /** Felt or measured here; what arrived is filled. */
    private static void ring(GraphicsContext g, PlanCamera camera, Spot at, Color ink, Color ground) {
        double x = camera.px(at.xMm()) - R;
        double y = camera.py(at.yMm()) - R;
        g.setStroke(ground);
        g.setLineWidth(5);
        g.strokeOval(x, y, 2 * R, 2 * R);
        g.setStroke(ink);
        g.setLineWidth(2);
        g.strokeOval(x, y, 2 * R, 2 * R);
    }

    /** Sound a dot, dull one line, hollow two, as on the map. */
    private static void tap(GraphicsContext g, PlanCamera camera, Spot at, Sound sound, Color ink, Color ground) {
        double x = camera.px(at.xMm());
        double y = camera.py(at.yMm());
        g.setFill(ground);
        g.fillOval(x - R, y - R, 2 * R, 2 * R);
        g.setFill(ink);
        if (sound == Sound.SOUND) {
            g.fillOval(x - 2.5, y - 2.5, 5, 5);
        } else {
            g.fillRect(x - 6, y - (sound == Sound.HOLLOW ? 4 : 1), 12, 2.2);
            if (sound == Sound.HOLLOW) {
                g.fillRect(x - 6, y + 2, 12, 2.2);
            }
        }
    }
}
