package corewright.drawing;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;

/** What stands on the paper already: boxes and leader lines that nothing else may touch. */
final class Obstacles {
    private record Leg(double x1, double y1, double x2, double y2) {
        boolean meets(Box b) {
            return b.shape().intersectsLine(x1, y1, x2, y2);
        }

        boolean meets(Leg o) {
            return Line2D.linesIntersect(x1, y1, x2, y2, o.x1, o.y1, o.x2, o.y2);
        }
    }

    private final List<Box> boxes = new ArrayList<>();
    private final List<Leg> legs = new ArrayList<>();

    Obstacles copy() {
        Obstacles copy = new Obstacles();
        copy.boxes.addAll(boxes);
        copy.legs.addAll(legs);
        return copy;
    }

    void add(Box box) {
        boxes.add(box);
    }

    void addAll(List<? extends Mark> marks) {
        marks.forEach(m -> add(m.box()));
    }

    void addLeg(double x1, double y1, double x2, double y2) {
        legs.add(new Leg(x1, y1, x2, y2));
    }

    boolean free(Box box) {
        return boxes.stream().noneMatch(box::meets) && legs.stream().noneMatch(l -> l.meets(box));
    }

    /** How many boxes and lines a box touches. */
    int hits(Box box) {
        return (int) (boxes.stream().filter(box::meets).count()
                + legs.stream().filter(l -> l.meets(box)).count());
    }

    /** How many boxes an upright or level leg touches, taken {@code clear} wide on each side. */
    int hits(double x1, double y1, double x2, double y2, double clear) {
        return hits(Box.between(x1, y1, x2, y2).grown(clear));
    }

    boolean crosses(double x1, double y1, double x2, double y2) {
        Leg leg = new Leg(x1, y1, x2, y2);
        return legs.stream().anyMatch(leg::meets);
    }
}
