package corewright.desktop.imports;

import corewright.desktop.imports.ImportModel.PreviewLine;
import java.util.function.BiConsumer;
import javafx.application.Platform;
import javafx.scene.control.TextField;
import javafx.scene.control.cell.TextFieldTableCell;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.util.converter.DefaultStringConverter;

/** A cell that keeps what was typed wherever the hand goes next; Escape alone leaves it as it was. */
final class MendCell extends TextFieldTableCell<PreviewLine, String> {
    private final BiConsumer<PreviewLine, String> mend;
    private boolean escaped;

    MendCell(BiConsumer<PreviewLine, String> mend) {
        super(new DefaultStringConverter());
        this.mend = mend;
        addEventFilter(KeyEvent.KEY_PRESSED, e -> escaped = e.getCode() == KeyCode.ESCAPE);
        graphicProperty().addListener((o, was, is) -> {
            if (is instanceof TextField field) {
                field.focusedProperty().addListener((f, had, has) -> left(field, has));
            }
        });
    }

    private void left(TextField field, boolean focused) {
        if (!focused && isEditing()) {
            commitEdit(field.getText());
        }
    }

    @Override
    public void cancelEdit() {
        PreviewLine line = getTableRow().getItem();
        String typed = getGraphic() instanceof TextField field ? field.getText() : getItem();
        boolean keep = !escaped && line != null && !typed.equals(getItem());
        escaped = false;
        super.cancelEdit();
        if (keep) {
            Platform.runLater(() -> mend.accept(line, typed)); // the table is in the middle of a click
        }
    }
}
