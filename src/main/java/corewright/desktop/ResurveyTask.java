package corewright.desktop;

import corewright.desktop.resurvey.Resurvey;
import corewright.desktop.resurvey.ResurveyView;
import corewright.desktop.state.Complaints;
import corewright.desktop.state.Workbench;
import corewright.drawing.kit.Figures;
import corewright.survey.Survey;
import corewright.survey.settings.Settings.Terms;
import java.nio.file.Path;
import java.util.function.UnaryOperator;

/** Shows the survey that is open beside another one of the same boat; worked out aside. */
final class ResurveyTask {
    private ResurveyTask() {}

    static void show(Workbench bench, MainView view, Path other) {
        Survey open = bench.survey().orElse(null);
        if (open == null) {
            return;
        }
        Terms.Sign decimal = open.settings().terms().decimal();
        UnaryOperator<String> terms =
                words -> Figures.signed(bench.sight().units().measure().say(words), decimal);
        bench.waiting()
                .on(
                        "Mapping both surveys",
                        progress -> Resurvey.of(open, other),
                        made -> {
                            bench.say("");
                            view.task(new ResurveyView(made, terms, () -> view.task(null)));
                        },
                        e -> bench.say("Not compared: " + Complaints.sentence(e)));
    }
}
