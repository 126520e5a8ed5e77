package corewright.desktop.slip;

import java.util.Optional;
import javafx.scene.Node;

/** Things on the plan that a touch takes up and that the slip then speaks of. */
public interface Held {
    /** Takes up what lies at a place, or lets go of what was held; says whether there is anything. */
    boolean touch(double xMm, double yMm);

    void letGo();

    /** What the slip says; empty where nothing is held. */
    Optional<Slip> slip();

    /** Keys and fields of what is held. */
    Node[] nodes();
}
