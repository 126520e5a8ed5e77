package corewright.drawing.cards;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.drawing.kit.Across;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pattern;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.PlanView;
import corewright.drawing.kit.Shapes;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.marks.AirMark;
import corewright.drawing.marks.FittingMark;
import corewright.drawing.marks.Mark;
import corewright.drawing.marks.Structure;
import corewright.drawing.placing.ArrivalLines;
import corewright.drawing.placing.ArrivalLines.Line;
import corewright.drawing.placing.Obstacles;
import corewright.overlay.Overlay;
import corewright.repair.plan.InjectionPlan;
import corewright.survey.Feature;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * The plan of one region on its work card, at the largest standard scale at which it fits: its pattern as a band, holes in
 * working order, structure, keep-outs, and where the simulated front stands at whole minutes.
 */
public final class CardPlan {
    /** Of ISO 5455, and 1 : 25 as on our plates. */
    private static final int[] SCALES = {1, 2, 5, 10, 20, 25, 50, 100};

    /** Room for the measures of the plan. */
    private static final double LEFT_ROOM = 9;

    private static final double FOOT_ROOM = 5;

    /** Left free round the region, so that vents at its edge are whole. */
    private static final double MARGIN = 3;

    private static final double BAND = 5;
    private static final double POSSIBLE_CASING = 0.9;
    /** Smaller pockets are left out: all of them together are what stays empty. Practice. */
    private static final double AIR_SHARE = 0.0015;

    private static final Type NAME = new Type(Typeface.TEXT_SEMIBOLD, 8.5);
    private static final Type MINUTE = new Type(Typeface.CONDENSED_SEMIBOLD, 9);
    private static final Type MEASURE = new Type(Typeface.CONDENSED, 8);
    private static final double LABELS_APART = 5;

    /** A shorter line of arrival goes without its minute, unless it is the longest of that minute. */
    private static final double NAMED_FROM = 14;

    private final Measure measure;
    private final FaceDamage damage;
    private final List<Region> filled;
    private final Box box;
    private final Polygon window;
    private final PlanView view;
    private final Across across;
    private final CardHoles holes;
    private final List<Line> arrivals;
    private final List<AirMark> air;
    private final List<Word> words = new ArrayList<>();
    private final List<FittingMark> fittings = new ArrayList<>();
    private final Obstacles taken = new Obstacles();

    /** @param paper the plan may use, with its measures */
    public CardPlan(Assessment assessment, InjectionPlan plan, Box paper) {
        measure = Measure.of(assessment.survey());
        filled = assessment.damage().regions().stream()
                .filter(r -> plan.part(r.id()).isPresent())
                .toList();
        damage = assessment.damage().face(filled.get(0).face());
        box = new Box(paper.x() + LEFT_ROOM, paper.y(), paper.width() - LEFT_ROOM, paper.height() - FOOT_ROOM);
        window = Shapes.rectangle(box);
        Envelope extent = new Envelope();
        filled.forEach(r -> extent.expandToInclude(r.likely().getEnvelopeInternal()));
        plan.holes().forEach(h -> extent.expandToInclude(h.spot().coordinate()));
        view = PlanView.centred(damage.face(), extent, scale(extent), box.middleX(), box.middleY());
        across = Across.of(damage.face(), plan.holes());
        fittings();
        holes = CardHoles.of(plan.holes(), view, box, measure, taken);
        air = air(plan);
        taken.addAll(air);
        names();
        arrivals = plan.fill().arrivalS().map(r -> ArrivalLines.of(r, view)).orElse(List.of());
        for (Line line : arrivals) {
            double longest = arrivals.stream()
                    .filter(l -> l.minute() == line.minute())
                    .mapToDouble(l -> l.onPaper().getLength())
                    .max()
                    .orElse(0);
            if (line.onPaper().getLength() >= Math.min(longest, NAMED_FROM)) {
                minute(line);
            }
        }
    }

    private double scale(Envelope extent) {
        for (int scale : SCALES) {
            if (extent.getWidth() / scale <= box.width() - 2 * MARGIN
                    && extent.getHeight() / scale <= box.height() - 2 * MARGIN) {
                return scale;
            }
        }
        return Math.ceil(Math.max(
                extent.getWidth() / (box.width() - 2 * MARGIN), extent.getHeight() / (box.height() - 2 * MARGIN)));
    }

    /** Survey millimetres to one of paper. */
    public double scale() {
        return view.scale();
    }

    /** Lines of arrival are on it. */
    public boolean showsArrival() {
        return !arrivals.isEmpty();
    }

    /** A ring in which nobody drills is on it. */
    public boolean showsKeepOut() {
        return damage.face().all(Feature.Fitting.class).stream()
                .anyMatch(f -> !clipped(view.onPaper(f.geometry().buffer(f.keepoutMm())))
                        .isEmpty());
    }

    /** Places at which air may stay are on it. */
    public boolean showsAir() {
        return !air.isEmpty();
    }

    private List<AirMark> air(InjectionPlan plan) {
        return plan.fill().pockets().stream()
                .filter(p -> p.mm3() >= AIR_SHARE * plan.cavityMm3().p50())
                .map(p -> new AirMark(view.x(p.spot().xMm()), view.y(p.spot().yMm())))
                .filter(m -> box.holds(m.box()) && taken.free(m.box())) // beside a hole, that is where to look
                .toList();
    }

    private void fittings() {
        for (Feature.Fitting f : damage.face().all(Feature.Fitting.class)) {
            Coordinate c = f.geometry().getCentroid().getCoordinate();
            FittingMark mark = new FittingMark(view.x(c.x), view.y(c.y), f.metal(), f.loadBearing());
            if (box.holds(mark.box())) {
                fittings.add(mark);
                taken.add(mark.box());
            }
        }
    }

    /** What stands on the plan by name: other regions, fittings, openings, supports, dividers. */
    private void names() {
        for (Region other : damage.regions()) {
            if (!filled.contains(other) || filled.size() > 1) {
                name(other.id(), clipped(view.onPaper(other.likely())));
            }
        }
        for (Feature f : damage.face().features()) {
            boolean told = f instanceof Feature.Fitting
                    || f instanceof Feature.Opening
                    || f instanceof Feature.Support
                    || f instanceof Feature.Divider;
            if (told && !f.name().isBlank()) {
                name(f.name(), clipped(view.onPaper(f.geometry())));
            }
        }
    }

    private void name(String text, Geometry shown) {
        if (shown.isEmpty()) {
            return;
        }
        Coordinate at = shown.getInteriorPoint().getCoordinate();
        double width = NAME.width(text);
        double[][] moves = {{0, 0}, {0, 4.2}, {0, -4.2}, {width / 2 + 3.2, 0}, {-width / 2 - 3.2, 0}, {0, 8}, {0, -8}};
        for (double[] move : moves) {
            Word mark = new Word(text, at.x + move[0], at.y + move[1] + NAME.capMm() / 2, NAME);
            if (box.holds(mark.box()) && taken.free(mark.box().grown(0.6))) {
                words.add(mark);
                taken.add(mark.box());
                return;
            }
        }
    }

    /** A word on a paper ground, its middle at x, its baseline at y. */
    private record Word(String text, double x, double y, Type type) implements Mark {
        @Override
        public Box box() {
            return Box.of(type.box(text, x - type.width(text) / 2, y));
        }

        @Override
        public void paint(Paper paper) {
            paper.haloText(text, x, y, type, Paper.Anchor.CENTRE, 0.7);
        }
    }

    /** Paints it. */
    public void paint(Paper paper) {
        paper.figure(
                "Plan with holes in working order, vents, fittings and edges; the table beside it has them in figures.",
                this::draw);
    }

    private void draw(Paper paper) {
        regions(paper);
        paper.within(box.shape(), p -> Structure.coreEdge(p, view, damage));
        paper.within(box.shape(), p -> Structure.paint(p, view, damage.face(), Structure.Shows.ALL));
        arrivals.forEach(l -> line(paper, l.onPaper(), Pen.LEADER));
        paper.within(box.shape(), p -> Structure.keepOuts(p, view, damage.face()));
        fittings.forEach(f -> f.paint(paper));
        air.forEach(a -> a.paint(paper));
        holes.paint(paper);
        words.forEach(w -> w.paint(paper));
        measures(paper);
    }

    private void regions(Paper paper) {
        Geometry whole = Overlay.union(
                filled.stream().<Geometry>map(r -> view.onPaper(r.likely())).toList());
        for (Region region : filled) {
            Polygon area = view.onPaper(region.likely());
            Pattern pattern = Pattern.of(region.condition());
            pattern.paint(paper, Overlay.difference(area, area.buffer(-BAND)), pattern.anchor(area, view.datum()));
        }
        for (Region other : damage.regions()) {
            line(paper, view.onPaper(other.likely()).getBoundary(), filled.contains(other) ? Pen.LIKELY : Pen.LEADER);
        }
        Geometry extents = Overlay.union(
                filled.stream().map(r -> view.onPaper(r.possible())).toList());
        Geometry possible = Overlay.difference(clipped(extents.getBoundary()), whole.buffer(1));
        if (!possible.isEmpty()) {
            paper.casing(PlanView.shape(possible), POSSIBLE_CASING);
            paper.draw(PlanView.shape(possible), Pen.POSSIBLE);
        }
    }

    private void line(Paper paper, Geometry onPaper, Pen pen) {
        Geometry shown = clipped(onPaper);
        if (!shown.isEmpty()) {
            paper.draw(PlanView.shape(shown), pen);
        }
    }

    private Geometry clipped(Geometry onPaper) {
        return Overlay.intersection(onPaper, window);
    }

    /** A minute in each line, where it stands clear of holes and of the minutes before. */
    private void minute(Line line) {
        Coordinate[] along = line.onPaper().getCoordinates();
        for (int i = 0; i < along.length; i++) {
            // from the middle outwards
            Coordinate at =
                    along[(along.length / 2 + (i % 2 == 0 ? i / 2 : along.length - (i + 1) / 2)) % along.length];
            Word word = new Word(String.valueOf(line.minute()), at.x, at.y + MINUTE.capMm() / 2, MINUTE);
            if (box.holds(word.box()) && taken.free(word.box().grown(0.5))) {
                words.add(word);
                taken.add(word.box().grown(LABELS_APART));
                return;
            }
        }
    }

    /** Ticks at round millimetres or inches of the survey along the foot and the left. */
    private void measures(Paper paper) {
        double step = measureStep();
        double foot = box.bottom();
        paper.line(Pen.FAINT, box.x(), foot, box.right(), foot);
        paper.line(Pen.FAINT, box.x(), box.y(), box.x(), foot);
        double fromX = view.surveyX(box.x());
        for (double x = Math.ceil(fromX / step) * step; view.x(x) <= box.right() - 3; x += step) {
            paper.line(Pen.LEADER, view.x(x), foot, view.x(x), foot - 1.5);
            paper.text(Across.signed(x, measure, 0), view.x(x), foot + 3.6, MEASURE, Paper.Anchor.CENTRE);
        }
        double low = Math.min(view.surveyY(foot), view.surveyY(box.y()));
        double high = Math.max(view.surveyY(foot), view.surveyY(box.y()));
        for (double y = Math.ceil(low / step) * step; y <= high; y += step) {
            if (view.y(y) >= box.y() + 1.5 && view.y(y) <= foot - 2) {
                paper.line(Pen.LEADER, box.x(), view.y(y), box.x() + 1.5, view.y(y));
                paper.text(
                        across.figure(y, measure, 0),
                        box.x() - 1,
                        view.y(y) + MEASURE.capMm() / 2,
                        MEASURE,
                        Paper.Anchor.RIGHT);
            }
        }
    }

    private double measureStep() {
        boolean metric = measure == Measure.METRIC;
        double unit = metric ? 1 : Measure.MM_PER_INCH;
        double[] steps = metric ? new double[] {20, 50, 100, 200, 500, 1000} : new double[] {1, 2, 4, 6, 12, 24, 48};
        for (double step : steps) {
            if (step * unit / view.scale() >= 14) {
                return step * unit;
            }
        }
        return metric ? 2000 : 96 * unit;
    }
}
