package corewright.desktop;

import corewright.desktop.slip.LongNames;
import corewright.desktop.state.Workbench;
import corewright.survey.Survey;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;

/** A key a face under the plan, where there is more than one. */
final class FaceKeys extends HBox {
    /** "wheelhouse side" and some letters. */
    private static final double WIDEST = 190;

    private final Workbench bench;

    FaceKeys(Workbench bench) {
        this.bench = bench;
        getStyleClass().add("faces");
        setMinWidth(USE_PREF_SIZE);
    }

    void show(Survey survey) {
        getChildren().clear();
        if (survey.faces().size() < 2) {
            return;
        }
        survey.faces().forEach(f -> {
            Button key = LongNames.shorten(new Button(f.name()));
            key.setMaxWidth(WIDEST);
            key.getStyleClass().addAll("face-key", f.name().equals(bench.face()) ? "current" : "other");
            key.setOnAction(e -> bench.show(f.name()));
            getChildren().add(key);
        });
    }
}
