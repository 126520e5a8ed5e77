package corewright.drawing.cards;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.PlanView;
import corewright.drawing.marks.HoleLabel;
import corewright.drawing.marks.HoleMark;
import corewright.drawing.marks.Mark;
import corewright.drawing.marks.NozzleMark;
import corewright.drawing.placing.HoleLabels;
import corewright.drawing.placing.Marks;
import corewright.drawing.placing.Obstacles;
import corewright.repair.plan.Hole;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * The holes of one region on its card: numbered discs as large as their distances allow, arrows along the working order,
 * and the collar stop beside each injection hole where there is room; the card's table has them all. Holes nearer to each
 * other than the smallest disc are drawn as on a map, with their numbers beside them.
 */
record CardHoles(List<Mark> marks, List<Arrow> arrows) {
    private static final double[] DIAMETERS = {7.8, 6.4, 5.2};
    private static final double APART = 0.2;
    private static final double ARROW_GAP = 0.8;
    private static final double SHORTEST_ARROW = 2.2;
    private static final double HEAD = 2.4;
    private static final double HEAD_HALF = 0.85;
    private static final double STEP = 1;

    /** Length of a nozzle's mouth over the diameter of a hole. */
    private static final double NOZZLE_SHARE = 0.8;

    CardHoles {
        marks = List.copyOf(marks);
        arrows = List.copyOf(arrows);
    }

    /**
     * @param box paper they must keep to
     * @param taken what they must keep clear of; gets their own
     */
    static CardHoles of(List<Hole> holes, PlanView view, Box box, Measure measure, Obstacles taken) {
        double diameter = diameter(holes, view);
        List<Hole> injections =
                holes.stream().filter(h -> h.kind() == Hole.Kind.INJECTION).toList();
        List<Mark> marks = new ArrayList<>();
        List<Arrow> arrows = arrows(injections, view, diameter);
        if (diameter > HoleMark.DIAMETER) {
            for (Hole hole : holes) {
                if (hole.drilled()) {
                    marks.add(new CardDisc(
                            view.x(hole.spot().xMm()),
                            view.y(hole.spot().yMm()),
                            Figures.holeNumber(hole.id()),
                            hole.kind() == Hole.Kind.VENT,
                            diameter));
                }
            }
            taken.addAll(marks);
            marks.addAll(0, nozzles(holes, view, diameter, taken)); // under the discs
            claim(arrows, taken);
            Predicate<Box> free = b -> box.holds(b) && taken.free(b);
            marks.addAll(stops(injections, view, diameter, measure, free, taken));
        } else {
            List<HoleMark> small = holes.stream().map(h -> HoleMark.of(h, view)).toList();
            marks.addAll(small);
            taken.addAll(marks);
            List<HoleLabel> labels =
                    HoleLabels.place(new Marks(List.of(), List.of(), small, holes, List.of()), true, measure, taken);
            taken.addAll(labels);
            marks.addAll(labels);
        }
        return new CardHoles(marks, arrows);
    }

    private static List<Mark> nozzles(List<Hole> holes, PlanView view, double diameter, Obstacles taken) {
        List<Mark> marks = new ArrayList<>();
        for (Hole hole : holes) {
            NozzleMark nozzle = NozzleMark.of(hole, view, NOZZLE_SHARE * diameter);
            if (nozzle != null) {
                taken.add(nozzle.box());
                List<CardNozzle> around = CardNozzle.around(nozzle, Figures.holeNumber(hole.id()), diameter);
                CardNozzle mark = around.stream()
                        .filter(m -> taken.free(m.box().grown(0.3)))
                        .findFirst()
                        .orElse(around.get(0));
                marks.add(mark);
                taken.add(mark.box());
            }
        }
        return marks;
    }

    private static double diameter(List<Hole> holes, PlanView view) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < holes.size(); i++) {
            for (int j = 0; j < i; j++) {
                nearest = Math.min(
                        nearest,
                        view.at(holes.get(i).spot())
                                .distance(view.at(holes.get(j).spot())));
            }
        }
        for (double diameter : DIAMETERS) {
            if (nearest >= diameter + APART) {
                return diameter;
            }
        }
        return HoleMark.DIAMETER;
    }

    private static List<Arrow> arrows(List<Hole> holes, PlanView view, double diameter) {
        List<Arrow> arrows = new ArrayList<>();
        double gap = diameter / 2 + ARROW_GAP;
        for (int i = 1; i < holes.size(); i++) {
            double x1 = view.x(holes.get(i - 1).spot().xMm());
            double y1 = view.y(holes.get(i - 1).spot().yMm());
            double x2 = view.x(holes.get(i).spot().xMm());
            double y2 = view.y(holes.get(i).spot().yMm());
            Arrow whole = new Arrow(x1, y1, x2, y2);
            if (whole.length() - 2 * gap >= SHORTEST_ARROW) {
                arrows.add(whole.shorter(gap));
            }
        }
        return arrows;
    }

    private static void claim(List<Arrow> arrows, Obstacles taken) {
        for (Arrow arrow : arrows) {
            for (double at = 0; at <= arrow.length(); at += STEP) {
                taken.add(Box.round(arrow.x(at), arrow.y(at), 0.6));
            }
        }
    }

    private static List<Mark> stops(
            List<Hole> injections,
            PlanView view,
            double diameter,
            Measure measure,
            Predicate<Box> free,
            Obstacles taken) {
        List<Mark> stops = new ArrayList<>();
        for (Hole hole : injections) {
            CardStop.beside(
                            view.x(hole.spot().xMm()),
                            view.y(hole.spot().yMm()),
                            diameter,
                            measure.stopFigure(hole.depthStopMm()))
                    .stream()
                    .filter(s -> free.test(s.box().grown(0.3)))
                    .findFirst()
                    .ifPresent(s -> {
                        stops.add(s);
                        taken.add(s.box());
                    });
        }
        return stops;
    }

    void paint(Paper paper) {
        arrows.forEach(a -> a.paint(paper));
        marks.forEach(m -> m.paint(paper));
    }

    /** From one hole to the next. */
    record Arrow(double x1, double y1, double x2, double y2) {
        double length() {
            return Math.hypot(x2 - x1, y2 - y1);
        }

        double x(double along) {
            return x1 + along * (x2 - x1) / length();
        }

        double y(double along) {
            return y1 + along * (y2 - y1) / length();
        }

        Arrow shorter(double atEachEnd) {
            double far = length() - atEachEnd;
            return new Arrow(x(atEachEnd), y(atEachEnd), x(far), y(far));
        }

        void paint(Paper paper) {
            double neck = length() - HEAD;
            double acrossX = HEAD_HALF * (y2 - y1) / length();
            double acrossY = HEAD_HALF * (x2 - x1) / length();
            paper.casing(Paper.path(x1, y1, x2, y2), 1.6);
            paper.line(Pen.MARK, x1, y1, x(neck), y(neck));
            paper.fill(
                    Paper.closed(x2, y2, x(neck) - acrossX, y(neck) + acrossY, x(neck) + acrossX, y(neck) - acrossY));
        }
    }
}
