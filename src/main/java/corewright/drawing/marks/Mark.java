package corewright.drawing.marks;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import java.util.List;

/** Something drawn at a place, with the paper it needs for itself. */
public interface Mark {
    Box box();

    /** What of that is ink, where much of it is not. */
    default List<Box> parts() {
        return List.of(box());
    }

    void paint(Paper paper);
}
