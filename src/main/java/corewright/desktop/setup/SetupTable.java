package corewright.desktop.setup;

import corewright.desktop.slip.Choice;
import corewright.desktop.slip.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;

/**
 * Rows of one kind, a field a value. While its row stays a field is the same one, so that an edit that is written meanwhile takes
 * neither a key nor the caret from what is typed next.
 */
final class SetupTable extends GridPane {
    /** What can be done with one kind of row. */
    record Kind(
            String id,
            Supplier<List<SetupRow>> rows,
            Function<SetupField, String> head,
            Setter set,
            @Nullable Consumer<String> remove) {}

    /** Sets one value of the row of that name; says whether it will do. */
    interface Setter {
        boolean set(String name, SetupField field, String text);
    }

    /** What shows something of a row. */
    private interface Place {
        /** @param another the row is another one than before */
        void show(SetupRow row, boolean another);
    }

    private record Line(List<Node> nodes, List<Place> places) {}

    private final Kind kind;
    private final Runnable tried;
    private final List<Line> lines = new ArrayList<>();
    private List<SetupRow> shown = List.of();
    private boolean filling;

    /** @param tried told after each change that was tried */
    SetupTable(Kind kind, Runnable tried) {
        this.kind = kind;
        this.tried = tried;
        getStyleClass().add("setup-table");
        show();
    }

    /** The rows as they are now. */
    void show() {
        List<SetupRow> now = kind.rows.get();
        if (now.equals(shown)) {
            return;
        }
        List<SetupRow> before = shown;
        shown = now;
        filling = true;
        while (lines.size() > now.size()) {
            getChildren().removeAll(lines.remove(lines.size() - 1).nodes);
        }
        while (lines.size() < now.size()) {
            lines.add(line(lines.size()));
        }
        for (int r = 0; r < now.size(); r++) {
            boolean moved = now.size() != before.size()
                    && (r >= before.size()
                            || !before.get(r).name().equals(now.get(r).name()));
            fill(r, moved);
        }
        filling = false;
    }

    private void fill(int r, boolean another) {
        SetupRow row = shown.get(r);
        lines.get(r).places.forEach(p -> p.show(row, another));
    }

    private Line line(int r) {
        Line line = new Line(new ArrayList<>(), new ArrayList<>());
        for (SetupValue value : shown.get(r).values()) {
            int column = line.places.size();
            if (r == 0) {
                Label head = new Label(kind.head.apply(value.field()));
                head.getStyleClass().add("quiet");
                head.setMinWidth(Region.USE_PREF_SIZE);
                put(line, head, column, 0);
            }
            line.places.add(place(line, r, value));
        }
        Consumer<String> remove = kind.remove;
        if (remove != null) {
            Button away = new Button("Take it away");
            away.setId(kind.id + "-" + r + "-remove");
            away.setMinWidth(Region.USE_PREF_SIZE);
            away.setOnAction(e -> {
                remove.accept(shown.get(r).name());
                tried.run();
            });
            put(line, away, line.places.size(), r + 1);
            line.places.add((row, another) -> away.setAccessibleText("Take " + row.name() + " away"));
        }
        return line;
    }

    private void put(Line line, Node node, int column, int row) {
        line.nodes.add(node);
        add(node, column, row);
    }

    private Place place(Line line, int r, SetupValue value) {
        SetupField field = value.field();
        int column = line.places.size();
        if (value.options().isEmpty()) {
            TextField typed = new TextField();
            typed.setPrefColumnCount(wide(field) ? 11 : 6);
            Entry entry = new Entry(typed, text -> set(r, field, text));
            named(line, typed, r, field);
            return (row, another) -> {
                name(typed, row, field);
                String now = row.values().get(column).text();
                if (another) {
                    entry.showAnew(now);
                } else {
                    entry.show(now);
                }
            };
        }
        ComboBox<String> box = new ComboBox<>();
        box.setMaxWidth(Double.MAX_VALUE); // as wide as its column
        Choice choice = new Choice(box, chosen -> set(r, field, chosen));
        named(line, box, r, field);
        return (row, another) -> {
            name(box, row, field);
            SetupValue now = row.values().get(column);
            List<String> options = new ArrayList<>(now.options());
            if (!options.contains(now.text())) {
                options.add(now.text());
            }
            choice.show(options, now.text());
        };
    }

    private void named(Line line, Control control, int r, SetupField field) {
        control.setId(kind.id + "-" + r + "-" + field.name().toLowerCase(Locale.ROOT));
        put(line, control, line.places.size(), r + 1);
    }

    private void name(Control control, SetupRow row, SetupField field) {
        control.setAccessibleText(kind.head.apply(field) + " of " + row.name());
    }

    private boolean set(int r, SetupField field, String text) {
        if (filling) {
            return true; // a row that goes loses the focus
        }
        boolean good = kind.set.set(shown.get(r).name(), field, text);
        tried.run();
        return good;
    }

    private static boolean wide(SetupField field) {
        return switch (field) {
            case NAME, VESSEL, CLIENT, SURVEYOR, WEATHER -> true;
            default -> false;
        };
    }
}
