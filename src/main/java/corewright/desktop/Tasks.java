package corewright.desktop;

import corewright.desktop.state.Step;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.input.KeyEvent;
import org.jspecify.annotations.Nullable;

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

    /** What a step does with a key of its own; false where it has none. */
    boolean key(KeyEvent e);

    List<Path> recent();

    /** Keys that lead on from a survey that was refused; none while there is none. */
    Node[] ways();

    /** Keys of the step in its slip. */
    Node[] actions(Step step);

    /** Whether marks over the plan show holes themselves. */
    boolean onHoles();

    /** What stands in the middle in place of the plan; null where the plan does. */
    @Nullable
    Node middle(Step step);

    /** What stands under plan and slip over the window's width; null where nothing does. */
    @Nullable
    Node below(Step step);
}
