package corewright.drawing.placing;

import corewright.drawing.kit.Box;
import corewright.drawing.marks.Mark;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.quadtree.Quadtree;

/**
 * What stands on the paper already, as boxes; leaders are level and upright, so they are boxes too. Found by place, as there may be
 * a box for each of many thousand readings.
 */
public final class Obstacles {
    private final List<Box> boxes = new ArrayList<>();
    private final Quadtree byPlace = new Quadtree();

    Obstacles copy() {
        Obstacles copy = new Obstacles();
        boxes.forEach(copy::add);
        return copy;
    }

    public void add(Box box) {
        boxes.add(box);
        byPlace.insert(extent(box), box);
    }

    public void addAll(List<? extends Mark> marks) {
        marks.forEach(m -> add(m.box()));
    }

    public boolean free(Box box) {
        return near(box).stream().noneMatch(taken -> taken.meets(box));
    }

    /** How many things a box touches. */
    int hits(Box box) {
        return (int) near(box).stream().filter(taken -> taken.meets(box)).count();
    }

    /** All that may touch a box, and some that do not. */
    @SuppressWarnings("unchecked") // of what add puts in
    private List<Box> near(Box box) {
        return byPlace.query(extent(box));
    }

    private static Envelope extent(Box box) {
        return new Envelope(box.x(), box.right(), box.y(), box.bottom());
    }

    /** How many things an upright or level leg touches, taken {@code clear} wide on each side. */
    int hits(double x1, double y1, double x2, double y2, double clear) {
        return hits(Box.between(x1, y1, x2, y2).grown(clear));
    }
}
