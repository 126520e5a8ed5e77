package corewright.drawing;

/** Something drawn at a place, with the paper it needs for itself. */
interface Mark {
    Box box();

    void paint(Paper paper);
}
