package corewright.desktop.slip;

import java.util.function.Predicate;
import javafx.css.PseudoClass;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;

/**
 * What is typed for one value of the survey. It is taken by Enter and where the focus goes on; what will not do stays as typed,
 * marked. The survey's own value replaces only what was taken: what was typed since stays, with caret and selection, for a disk may
 * take its time over the value before.
 */
public final class Entry {
    private static final PseudoClass REFUSED = PseudoClass.getPseudoClass("refused");

    private final TextInputControl control;
    private final Predicate<String> set;

    /** The survey's own value, as shown last. */
    private String given = "";

    /** What was typed and taken last, or the survey's own value that came after. */
    private String taken = "";

    /** @param set takes what was typed; says whether it will do */
    public Entry(TextInputControl control, Predicate<String> set) {
        this.control = control;
        this.set = set;
        if (control instanceof TextField field) {
            field.setOnAction(e -> take());
        }
        control.focusedProperty().addListener((o, was, is) -> {
            if (!is) {
                take();
            }
        });
    }

    private void take() {
        String typed = control.getText().strip();
        String before = taken;
        taken = typed;
        boolean good = typed.equals(given) || set.test(typed);
        if (!good) {
            taken = before;
        }
        mark(good);
    }

    private void mark(boolean good) {
        control.pseudoClassStateChanged(REFUSED, !good);
    }

    /** The survey's value as it is now. */
    public void show(String value) {
        if (value.equals(given)) {
            return;
        }
        boolean halfTyped = !control.getText().strip().equals(taken);
        given = value;
        taken = value;
        if (!halfTyped) {
            put(value);
        }
    }

    /** The value of another thing: what was typed for the one before goes with it. */
    public void showAnew(String value) {
        given = value;
        taken = value;
        put(value);
    }

    private void put(String value) {
        if (!control.getText().equals(value)) {
            control.setText(value);
            if (control.isFocused()) {
                control.end(); // elsewhere a long text shows how it begins
            }
        }
        mark(true);
    }
}
