package corewright.drawing.placing;

import corewright.damage.NextReading;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.PlanView;
import corewright.drawing.marks.FeelerMark;
import corewright.drawing.marks.FittingMark;
import corewright.drawing.marks.HoleMark;
import corewright.drawing.marks.Mark;
import corewright.drawing.marks.PlugMark;
import corewright.drawing.marks.ProbeMark;
import corewright.drawing.marks.TagMark;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.survey.Feature;
import corewright.survey.Feeler;
import corewright.survey.FeelerEnd;
import corewright.survey.Plug;
import corewright.survey.Probe;
import corewright.survey.Readings;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.quadtree.Quadtree;

/**
 * The marks of a map at their places, before anything is moved or left out.
 *
 * @param probes on a fill check holes that stay closed and warmth readings
 * @param holes injection holes and vents, by the plan's order
 */
public record Marks(
        List<Mark> fittings, List<Mark> probes, List<HoleMark> holes, List<Hole> holePlans, List<TagMark> tags) {
    public Marks {
        fittings = List.copyOf(fittings);
        probes = List.copyOf(probes);
        holes = List.copyOf(holes);
        holePlans = List.copyOf(holePlans);
        tags = List.copyOf(tags);
    }

    static Marks of(MapSpec spec, PlanView view, FilledSpaces filled) {
        List<Hole> plans = new ArrayList<>(spec.shows(Layer.HOLES) ? holes(spec) : List.of());
        plans.addAll(filled.openedAgain());
        plans.addAll(filled.newHoles());
        List<HoleMark> holes = plans.stream().map(h -> HoleMark.of(h, view)).toList();
        List<Mark> fittings = fittings(spec, view);
        List<Mark> probes = new ArrayList<>(spec.shows(Layer.PROBES) ? probes(spec, view, fittings) : List.of());
        probes.addAll(filled.closed(view));
        probes.addAll(filled.warmth(view));
        probes.removeIf(p -> !p.box().meets(spec.box())); // one may lie far off the deck
        return new Marks(fittings, probes, holes, plans, tags(spec, view, fittings, probes));
    }

    /** Of the decided plans. */
    static List<Hole> holes(MapSpec spec) {
        return spec.assessment().decision().injections().stream()
                .map(InjectionPlan::holes)
                .flatMap(List::stream)
                .filter(h -> h.spot().face().equals(spec.face()))
                .toList();
    }

    private static List<Mark> fittings(MapSpec spec, PlanView view) {
        List<Mark> marks = new ArrayList<>();
        for (Feature.Fitting f : spec.damage().face().all(Feature.Fitting.class)) {
            Coordinate c = f.geometry().getCentroid().getCoordinate();
            boolean framed = f.loadBearing() && spec.shows(Layer.BACKING);
            marks.add(new FittingMark(view.x(c.x), view.y(c.y), f.metal(), framed));
        }
        return marks;
    }

    /** Figures stand beside their signs where they cover no other sign, no fitting and no other figure, if there is such a place. */
    private static List<Mark> probes(MapSpec spec, PlanView view, List<Mark> fittings) {
        Readings readings = spec.assessment().survey().readings().on(spec.face());
        List<Mark> marks = new ArrayList<>();
        for (Feeler f : readings.feelers()) {
            Point2D a = view.at(f.spot());
            Point2D b = view.at(f.tip());
            marks.add(new FeelerMark(a.getX(), a.getY(), b.getX(), b.getY(), f.end() == FeelerEnd.FIRM));
        }
        List<List<? extends Mark>> signs = new ArrayList<>();
        List<Box> taken = new ArrayList<>();
        Stream.concat(fittings.stream(), marks.stream()).forEach(m -> taken.addAll(m.parts()));
        for (Plug p : readings.plugs()) {
            Point2D at = view.at(p.spot());
            String percent = Figures.atMost(p.moisturePercent(), 0) + " %";
            List<PlugMark> ways = PlugMark.ways(at.getX(), at.getY(), percent);
            taken.add(ways.get(0).sign());
            signs.add(ways);
        }
        for (Probe p : readings.probes()) {
            Point2D at = view.at(p.spot());
            String depth = spec.measure().depthFigure(p.voidDepthMm());
            List<ProbeMark> ways = ProbeMark.ways(at.getX(), at.getY(), depth);
            taken.add(ways.get(0).sign());
            signs.add(ways);
        }
        marks.addAll(apart(signs, taken));
        return marks;
    }

    /** One of each list, again and again while the others move, so that they cover least of each other. */
    private static List<Mark> apart(List<List<? extends Mark>> signs, List<Box> taken) {
        Quadtree all = new Quadtree();
        taken.forEach(box -> all.insert(envelope(box), box));
        List<Mark> chosen = new ArrayList<>();
        for (int turn = 0; turn < TURNS; turn++) {
            for (int i = 0; i < signs.size(); i++) {
                if (turn > 0) {
                    chosen.get(i).parts().forEach(box -> all.remove(envelope(box), box));
                }
                List<? extends Mark> ways = signs.get(i);
                Box room = ways.stream().map(Mark::box).reduce(Box::and).orElseThrow();
                List<Box> near = new ArrayList<>();
                for (Object box : all.query(envelope(room.grown(1)))) {
                    near.add((Box) box);
                }
                Mark mark = clearest(ways, way -> crowding(way.parts(), near));
                mark.parts().forEach(box -> all.insert(envelope(box), box));
                if (turn == 0) {
                    chosen.add(mark);
                } else {
                    chosen.set(i, mark);
                }
            }
        }
        return chosen;
    }

    private static Envelope envelope(Box box) {
        return new Envelope(box.x(), box.right(), box.y(), box.bottom());
    }

    private static final int TURNS = 4;

    /** The most telling next readings of a face; more would hide what they ask about. Chosen by eye. */
    private static final int MOST_TAGS = 8;

    /** A tag's body is moved up or down by this, at most so often, where it would cover something beside its point. */
    private static final double DROP = 4;

    private static final int DROPS = 6;

    /** Pointers of tags that ask about one place cross without harm: it counts so much of covering a word. */
    private static final double ACROSS_POINTER = 0.02;

    /** Tags lie to the right of their point unless they would cover another tag, a fitting or a pilot hole and its depth. */
    private static List<TagMark> tags(MapSpec spec, PlanView view, List<Mark> fittings, List<Mark> probes) {
        List<TagMark> tags = new ArrayList<>();
        if (!spec.shows(Layer.NEXT)) {
            return tags;
        }
        List<Box> taken = new ArrayList<>(Stream.concat(fittings.stream(), probes.stream())
                .flatMap(m -> m.parts().stream())
                .toList());
        List<Box> pointers = new ArrayList<>();
        for (NextReading next : spec.assessment().next()) {
            if (!next.spot().face().equals(spec.face()) || tags.size() == MOST_TAGS) {
                continue;
            }
            Point2D at = view.at(next.spot());
            String text = "?" + next.rank();
            List<TagMark> ways = new ArrayList<>();
            for (int i = 0; i < 2 * DROPS + 1; i++) { // level, then up and down by turns
                double drop = (i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) * DROP;
                ways.add(new TagMark(at.getX(), at.getY(), text, true, drop));
                ways.add(new TagMark(at.getX(), at.getY(), text, false, drop));
            }
            TagMark tag = clearest(
                    ways, way -> crowding(way.parts(), taken) + ACROSS_POINTER * crowding(way.parts(), pointers));
            tags.add(tag);
            taken.add(tag.body());
            pointers.add(tag.pointer());
        }
        return tags;
    }

    /** The first of those that cost least. */
    private static <M extends Mark> M clearest(List<? extends M> ways, ToDoubleFunction<M> cost) {
        M best = ways.get(0);
        double least = cost.applyAsDouble(best);
        for (M way : ways.subList(1, ways.size())) {
            double now = cost.applyAsDouble(way);
            if (now < least - 1e-9) {
                best = way;
                least = now;
            }
        }
        return best;
    }

    /** Paper shared with what is taken. */
    private static double crowding(List<Box> parts, List<Box> taken) {
        return parts.stream()
                .map(p -> p.grown(0.3))
                .mapToDouble(p -> taken.stream().mapToDouble(p::overlap).sum())
                .sum();
    }
}
