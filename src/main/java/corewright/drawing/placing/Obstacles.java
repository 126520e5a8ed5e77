package corewright.drawing.placing;

import corewright.drawing.kit.Box;
import corewright.drawing.marks.Mark;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * What stands on the paper already, as boxes; leaders are level and upright, so they are boxes too. Found by place, as there may be
 * a box for each of many thousand readings.
 */
public final class Obstacles {
    /** So many more than are indexed are looked through one by one, and an eighth of these. Judgement. */
    private static final int LOOSE = 64;

    private final List<Box> boxes = new ArrayList<>();

    /** Of the first boxes; not added to once it is built. */
    private STRtree index = new STRtree();

    private int indexed;

    Obstacles copy() {
        Obstacles copy = new Obstacles();
        copy.boxes.addAll(boxes);
        copy.index = index;
        copy.indexed = indexed;
        return copy;
    }

    public void add(Box box) {
        boxes.add(box);
    }

    public void addAll(List<? extends Mark> marks) {
        marks.forEach(m -> add(m.box()));
    }

    public boolean free(Box box) {
        return hits(box) == 0;
    }

    /** How many things a box touches. */
    int hits(Box box) {
        if (boxes.size() - indexed > LOOSE + indexed / 8) {
            indexAll();
        }
        int[] hits = {0};
        index.query(extent(box), taken -> hits[0] += ((Box) taken).meets(box) ? 1 : 0);
        for (Box taken : boxes.subList(indexed, boxes.size())) {
            hits[0] += taken.meets(box) ? 1 : 0;
        }
        return hits[0];
    }

    private void indexAll() {
        index = new STRtree();
        boxes.forEach(box -> index.insert(extent(box), box));
        index.build();
        indexed = boxes.size();
    }

    private static Envelope extent(Box box) {
        return new Envelope(box.x(), box.right(), box.y(), box.bottom());
    }

    /** How many things an upright or level leg touches, taken {@code clear} wide on each side. */
    int hits(double x1, double y1, double x2, double y2, double clear) {
        return hits(Box.between(x1, y1, x2, y2).grown(clear));
    }
}
