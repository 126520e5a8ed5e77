package corewright.drawing.marks;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;

/** Something drawn at a place, with the paper it needs for itself. */
public interface Mark {
    Box box();

    void paint(Paper paper);
}
