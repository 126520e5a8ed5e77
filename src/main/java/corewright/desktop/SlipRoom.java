package corewright.desktop;

import corewright.desktop.slip.SlipView;
import javafx.scene.control.ScrollPane;

/** The room of the slip at the right: it scrolls, and is as wide as what it holds asks for. */
final class SlipRoom extends ScrollPane {
    private static final double USUAL = 396;
    private static final double LEAST = 382;
    private static final double WIDE = 568;

    SlipRoom(SlipView slip) {
        super(slip);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        getStyleClass().add("slip-scroll");
        setMinWidth(LEAST);
        fit(false, false);
    }

    /**
     * @param wide for a table
     * @param small in a small window
     */
    void fit(boolean wide, boolean small) {
        setPrefWidth(wide ? WIDE : small ? LEAST : USUAL);
    }
}
