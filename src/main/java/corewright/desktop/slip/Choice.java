package corewright.desktop.slip;

import java.util.List;
import java.util.function.Predicate;
import javafx.css.PseudoClass;
import javafx.scene.control.ComboBox;

/** What is chosen for one value of the survey; as with an {@link Entry}, the survey's own value replaces it only where that is another. */
public final class Choice {
    private static final PseudoClass REFUSED = PseudoClass.getPseudoClass("refused");

    private final ComboBox<String> box;
    private String given = "";
    private boolean filling;

    /** @param set takes what was chosen; says whether it will do */
    public Choice(ComboBox<String> box, Predicate<String> set) {
        this.box = box;
        box.setOnAction(e -> {
            String value = box.getValue();
            if (!filling && value != null && !value.equals(given)) {
                mark(set.test(value));
            }
        });
    }

    private void mark(boolean good) {
        box.pseudoClassStateChanged(REFUSED, !good);
    }

    /** What there is to choose from, and the survey's value as it is now. */
    public void show(List<String> options, String value) {
        boolean others = !box.getItems().equals(options);
        if (!others && value.equals(given)) {
            return; // what was chosen stands while it is written
        }
        filling = true;
        if (others) {
            box.getItems().setAll(options);
        }
        box.setValue(value);
        given = value;
        mark(true);
        filling = false;
    }
}
