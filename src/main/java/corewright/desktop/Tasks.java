package corewright.desktop;

import corewright.desktop.state.Step;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;

/** The deeds a window offers beyond looking; in the program they open dialogs, in tests they do not. */
public interface Tasks {
    void open();

    void openFolder();

    void open(Path path);

    void startNew();

    void importCsv();

    void walk();

    void showInsight();

    void setUp();

    void sample();

    List<Path> recent();

    Node[] actions(Step step);
}
