package corewright.drawing.placing;

import corewright.drawing.kit.Box;
import corewright.drawing.marks.Mark;
import java.util.ArrayList;
import java.util.List;

/** What stands on the paper already, as boxes; leaders are level and upright, so they are boxes too. */
public final class Obstacles {
    private final List<Box> boxes = new ArrayList<>();

    Obstacles copy() {
        Obstacles copy = new Obstacles();
        copy.boxes.addAll(boxes);
        return copy;
    }

    public void add(Box box) {
        boxes.add(box);
    }

    public void addAll(List<? extends Mark> marks) {
        marks.forEach(m -> add(m.box()));
    }

    public boolean free(Box box) {
        for (Box taken : boxes) {
            if (taken.meets(box)) {
                return false;
            }
        }
        return true;
    }

    /** How many things a box touches. */
    int hits(Box box) {
        int hits = 0;
        for (Box taken : boxes) {
            hits += taken.meets(box) ? 1 : 0;
        }
        return hits;
    }

    /** How many things an upright or level leg touches, taken {@code clear} wide on each side. */
    int hits(double x1, double y1, double x2, double y2, double clear) {
        return hits(Box.between(x1, y1, x2, y2).grown(clear));
    }
}
