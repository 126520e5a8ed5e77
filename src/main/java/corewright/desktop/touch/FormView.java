package corewright.desktop.touch;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiPredicate;
import javafx.css.PseudoClass;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;

/** The fields of a form; they stay the same controls while the same thing is held, so that nothing typed is lost. */
final class FormView extends GridPane {
    private static final PseudoClass REFUSED = PseudoClass.getPseudoClass("refused");

    private final BiPredicate<String, String> set;
    private final Map<String, Control> controls = new LinkedHashMap<>();
    private boolean filling;

    /** @param set takes a field and what was typed into it; says whether it will do */
    FormView(BiPredicate<String, String> set) {
        this.set = set;
        getStyleClass().add("form");
    }

    /** Shows these values; what is being typed stays. */
    void show(List<FormField> fields) {
        if (!List.copyOf(controls.keySet())
                .equals(fields.stream().map(FormField::id).toList())) {
            build(fields);
        }
        filling = true;
        fields.forEach(f -> fill(Objects.requireNonNull(controls.get(f.id())), f));
        filling = false;
    }

    private void build(List<FormField> fields) {
        filling = true; // a field that goes loses the focus
        getChildren().clear();
        controls.clear();
        int row = 0;
        for (FormField f : fields) {
            Label label = new Label(f.label());
            label.setWrapText(true);
            label.getStyleClass().add("form-label");
            Control control = f.options().isEmpty() ? typed(f.id()) : chosen(f.id());
            control.setId("form-" + f.id());
            control.setAccessibleText(f.label());
            label.setLabelFor(control);
            control.setMaxWidth(Double.MAX_VALUE);
            setHgrow(control, Priority.ALWAYS);
            addRow(row++, label, control);
            controls.put(f.id(), control);
        }
    }

    private TextField typed(String id) {
        TextField field = new TextField();
        field.setPrefColumnCount(8);
        field.setOnAction(e -> take(id, field));
        field.focusedProperty().addListener((o, was, is) -> {
            if (!is && !filling) {
                take(id, field);
            }
        });
        return field;
    }

    private void take(String id, TextField field) {
        String typed = field.getText().strip();
        boolean good = typed.equals(field.getUserData()) || set.test(id, typed);
        mark(field, good);
        if (good) {
            field.setUserData(typed); // what the survey makes of it replaces it
        }
    }

    private ComboBox<String> chosen(String id) {
        ComboBox<String> box = new ComboBox<>();
        box.setOnAction(e -> {
            String value = box.getValue();
            if (!filling && value != null && !value.equals(box.getUserData())) {
                mark(box, set.test(id, value));
            }
        });
        return box;
    }

    private static void mark(Control control, boolean good) {
        control.pseudoClassStateChanged(REFUSED, !good);
    }

    /** A text is exchanged only where the survey's own value is another one than before. */
    @SuppressWarnings("unchecked") // boxes of this form hold texts
    private static void fill(Control control, FormField f) {
        boolean as = f.text().equals(control.getUserData());
        if (control instanceof ComboBox<?> box) {
            ComboBox<String> words = (ComboBox<String>) box;
            if (!words.getItems().equals(f.options())) {
                words.getItems().setAll(f.options());
            }
            words.setValue(f.text());
        } else if (control instanceof TextField field && !as) {
            field.setText(f.text());
            mark(field, true);
        }
        control.setUserData(f.text());
    }
}
