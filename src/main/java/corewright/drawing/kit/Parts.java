package corewright.drawing.kit;

import java.awt.Graphics2D;
import java.util.function.Consumer;

/** Told what is being painted, for whoever reads a document by ear or by its outline. */
public interface Parts {
    /** What words or marks on a sheet are. */
    enum Part {
        /** Name of a page. */
        TITLE,
        HEADING,
        PARAGRAPH,
        TABLE,
        ROW,
        HEAD_CELL,
        CELL,
        /** A drawing, told in words. */
        FIGURE,
        /** Repeated on every page: foot and rules, not read aloud. */
        ASIDE
    }

    /** A sheet that keeps nothing but the picture. */
    Parts NONE = (part, says, graphics, painting) -> painting.accept(graphics);

    /**
     * Paints what is one part; parts may lie in each other.
     *
     * @param says a figure in words, else empty
     */
    void part(Part part, String says, Graphics2D graphics, Consumer<Graphics2D> painting);
}
