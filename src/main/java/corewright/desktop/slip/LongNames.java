package corewright.desktop.slip;

import javafx.scene.control.Labeled;
import javafx.scene.control.OverrunStyle;
import javafx.scene.control.Tooltip;

/** Names of boats, faces and files that may be longer than their room: shortened in the middle, the whole in a tip. */
public final class LongNames {
    private LongNames() {}

    /** The same control, which may be narrower than its words from now on. */
    public static <L extends Labeled> L shorten(L named) {
        named.setTextOverrun(OverrunStyle.CENTER_ELLIPSIS);
        Tooltip tip = new Tooltip();
        tip.textProperty().bind(named.textProperty());
        named.setTooltip(tip);
        return named;
    }
}
