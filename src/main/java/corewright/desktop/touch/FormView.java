package corewright.desktop.touch;

import corewright.desktop.slip.Choice;
import corewright.desktop.slip.Entry;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;

/** The fields of a form; they stay the same controls while the same thing is held, so that nothing typed is lost. */
final class FormView extends GridPane {
    private final BiPredicate<String, String> set;
    private final Map<String, Control> controls = new LinkedHashMap<>();
    private final Map<String, Entry> entries = new HashMap<>();
    private final Map<String, Choice> choices = new HashMap<>();
    private boolean building;

    /** @param set takes a field and what was typed into it; says whether it will do */
    FormView(BiPredicate<String, String> set) {
        this.set = set;
        getStyleClass().add("form");
    }

    /** Another thing is held: what was typed for the one before goes with it. */
    void anew() {
        build(List.of());
    }

    /** Shows these values; what is being typed stays. */
    void show(List<FormField> fields) {
        if (!List.copyOf(controls.keySet())
                .equals(fields.stream().map(FormField::id).toList())) {
            build(fields);
        }
        fields.forEach(this::fill);
    }

    private void build(List<FormField> fields) {
        building = true; // a field that goes loses the focus
        getChildren().clear();
        controls.clear();
        entries.clear();
        choices.clear();
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
        building = false;
    }

    private TextField typed(String id) {
        TextField field = new TextField();
        field.setPrefColumnCount(8);
        entries.put(id, new Entry(field, text -> building || set.test(id, text)));
        return field;
    }

    private ComboBox<String> chosen(String id) {
        ComboBox<String> box = new ComboBox<>();
        choices.put(id, new Choice(box, value -> set.test(id, value)));
        return box;
    }

    private void fill(FormField f) {
        Entry entry = entries.get(f.id());
        Choice choice = choices.get(f.id());
        if (entry != null) {
            entry.show(f.text());
        } else if (choice != null) {
            choice.show(f.options(), f.text());
        }
    }
}
