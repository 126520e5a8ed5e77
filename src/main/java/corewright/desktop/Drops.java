package corewright.desktop;

import java.nio.file.Path;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.input.Dragboard;
import javafx.scene.input.TransferMode;

/** A file or a folder let go over the window. */
final class Drops {
    private Drops() {}

    /** Hands the first of what is dropped on. */
    static void taken(Node over, Consumer<Path> open) {
        over.setOnDragOver(e -> {
            if (e.getDragboard().hasFiles()) {
                e.acceptTransferModes(TransferMode.COPY);
            }
            e.consume();
        });
        over.setOnDragDropped(e -> {
            Dragboard board = e.getDragboard();
            if (board.hasFiles()) {
                open.accept(board.getFiles().get(0).toPath());
            }
            e.setDropCompleted(board.hasFiles());
            e.consume();
        });
    }
}
