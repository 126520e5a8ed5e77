package corewright.desktop.slip;

import javafx.scene.control.Button;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.RowConstraints;
import javafx.scene.text.TextAlignment;

/** Keys for a thumb: they fill their room and never take the focus from the figures that are typed. */
public final class BigKeys {
    private BigKeys() {}

    public static Button key(String id, String words, Runnable deed) {
        Button key = SlipView.key(id, words, deed);
        key.getStyleClass().remove("key");
        key.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
        key.setWrapText(true);
        key.setFocusTraversable(false);
        key.setTextAlignment(TextAlignment.CENTER);
        return key;
    }

    /** Four equal rows. */
    public static void fourRows(GridPane pad) {
        pad.setHgap(8);
        pad.setVgap(8);
        for (int i = 0; i < 4; i++) {
            RowConstraints row = new RowConstraints();
            row.setPercentHeight(25);
            pad.getRowConstraints().add(row);
        }
    }

    /** A column of so much of the width. */
    public static ColumnConstraints share(double percent) {
        ColumnConstraints column = new ColumnConstraints();
        column.setPercentWidth(percent);
        return column;
    }

    /** 0 to 9 for the character of a figure, else -1. */
    public static int figure(char c) {
        return c >= '0' && c <= '9' ? c - '0' : -1;
    }
}
