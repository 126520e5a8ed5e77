package corewright.desktop;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import corewright.damage.InsightWork;
import corewright.damage.Parameters;
import corewright.desktop.insight.InsightPanels;
import corewright.desktop.insight.InsightView;
import corewright.desktop.state.Complaints;
import corewright.desktop.state.Units;
import corewright.desktop.state.Workbench;
import corewright.drawing.screen.ScreenLook;

/** Shows what the map of the face shown rests on; worked out aside, for it takes as long as several fits. */
final class InsightTask {
    private InsightTask() {}

    static void show(Workbench bench, MainView view, Runnable back) {
        Assessment found = bench.found().orElse(null);
        if (found == null) {
            return;
        }
        FaceDamage face = found.damage().face(bench.face());
        Parameters fitted = bench.parameters();
        ScreenLook look = bench.sight().appearance().look();
        Units units = bench.sight().units();
        boolean old = bench.ages().oldVolumes();
        double sharpness = view.sharpness();
        bench.waiting()
                .on(
                        "Foretelling every reading from the others",
                        progress -> InsightPanels.of(InsightWork.of(face, fitted), face.voidMm3(), units, old).stream()
                                .map(p -> InsightView.painted(p, look, sharpness))
                                .toList(),
                        shown -> {
                            bench.say("");
                            view.task(new InsightView(face.face().name(), shown, back));
                        },
                        e -> bench.say("Not shown: " + Complaints.sentence(e)));
    }
}
