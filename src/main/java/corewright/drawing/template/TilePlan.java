package corewright.drawing.template;

import corewright.damage.Region;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.PlanView;
import corewright.drawing.kit.Shapes;
import corewright.drawing.kit.Tone;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.marks.DatumMark;
import corewright.drawing.marks.FittingMark;
import corewright.drawing.marks.RampMark;
import corewright.drawing.marks.Structure;
import corewright.drawing.marks.StructureMarks;
import corewright.drawing.placing.Obstacles;
import corewright.overlay.Overlay;
import corewright.repair.plan.Hole;
import corewright.survey.Face;
import corewright.survey.Feature;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.densify.Densifier;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** What lies inside the frame of a sheet, and on the strip beyond it: the deck's own grid, its structure, edges, holes, cuts. */
public final class TilePlan {
    private static final Pen LIKELY = Pen.solid(0.70);
    private static final Pen CROSS = Pen.solid(0.60);
    /** The words of a cross that stands on a hole's ring clear the ring. */
    private static final double FURTHEST_WORDS = 40;

    private static final double CROSS_ARM = 12;

    private static final double POSSIBLE_CASING = 0.9;
    private static final double EDGE_ROOM = 5;
    private static final double SEARCH_STEP = 4;
    private static final double ALONG_CUT = 8;
    private static final Type GRID = new Type(Typeface.CONDENSED_SEMIBOLD, 8);
    private static final Type PLACE = new Type(Typeface.TEXT_SEMIBOLD, 9);
    private static final Type BOW = new Type(Typeface.TEXT_BOLD, 13);
    private static final Type NAME = new Type(Typeface.TEXT, 8.5);

    private final Job job;
    private final Face face;
    private final Measure measure;
    private final DeckNames names;
    private final PlanView view;
    private final Box frame;
    private final Box printed;
    private final Polygon window;
    private final List<HolePrint> holes;
    private final List<DryingPrint> drying;
    private final Obstacles taken = new Obstacles();

    /** @param keepClear what stands on the sheet besides, as the rings at its seams */
    public TilePlan(Job job, Leaf leaf, Tiling.Tile tile, List<Box> keepClear) {
        this.job = job;
        face = job.damage().face();
        measure = Measure.of(job.assessment().survey());
        names = new DeckNames(face, measure);
        frame = leaf.frame();
        printed = leaf.printed();
        window = Shapes.rectangle(printed);
        view = job.view()
                .moved(frame.x() - tile.frame().x(), frame.y() - tile.frame().y());
        holes = job.holes().stream()
                .map(this::print)
                .filter(h -> h.ring().meets(printed))
                .toList();
        double bit = job.assessment().survey().settings().drilling().holeDiameterMm();
        drying = job.drying().stream()
                .map(s -> new DryingPrint(view.x(s.xMm()), view.y(s.yMm()), bit))
                .filter(d -> d.box().meets(printed))
                .toList();
        keepClear.forEach(taken::add);
        drying.forEach(d -> taken.add(d.box()));
        holes.forEach(h -> taken.add(h.ring()));
        job.cut().ifPresent(c -> claim(c.getBoundary()));
    }

    private HolePrint print(Hole hole) {
        return HolePrint.of(hole, view.x(hole.spot().xMm()), view.y(hole.spot().yMm()), measure);
    }

    /** No words over a line that is worked to. */
    private void claim(Geometry line) {
        for (Coordinate at : along(line)) {
            taken.add(Box.round(at.x, at.y, 1.2));
        }
    }

    /** Places along the part of a line that is on the sheet. */
    private List<Coordinate> along(Geometry line) {
        Geometry shown = Overlay.intersection(view.onPaper(line), window);
        return shown.isEmpty() ? List.of() : List.of(Densifier.densify(shown, 2).getCoordinates());
    }

    /** Paints it. */
    public void paint(Paper paper) {
        paper.figure("Full-size plan of what is drilled and cut on this sheet, on the grid of the deck.", this::draw);
    }

    private void draw(Paper paper) {
        paper.within(printed.shape(), p -> {
            grid(p);
            edges(p);
            Structure.paint(p, view, face, Structure.Shows.ALL);
            Structure.keepOuts(p, view, face);
            fittings(p);
            job.cut().ifPresent(c -> StructureMarks.cut(p, view.onPaper(c)));
            holes.forEach(h -> h.paint(p));
            drying.forEach(d -> d.paint(p));
            if (frame.holds(Box.round(view.datumX(), view.datumY(), 1))) {
                new DatumMark(view.datumX(), view.datumY(), view.yDown()).paint(p);
                new DatumMark(view.datumX(), view.datumY(), view.yDown())
                        .parts()
                        .forEach(taken::add);
            }
        });
        holes.forEach(h -> label(paper, h));
        job.regions().forEach(r -> claim(r.likely().getBoundary()));
        cross(paper);
        directions(paper);
        cutWords(paper);
        featureNames(paper);
        gridNames(paper);
    }

    /** The words stand on the sheet that has the hole's middle. */
    private void label(Paper paper, HolePrint hole) {
        boolean here =
                hole.x() >= frame.x() && hole.x() < frame.right() && hole.y() >= frame.y() && hole.y() < frame.bottom();
        if (!here) {
            return;
        }
        Box label = hole.label(frame, taken);
        if (label == null) {
            hole.wordsWithin(paper);
        } else {
            hole.words(paper, label);
            taken.add(label);
        }
    }

    /** Lines every 50 mm, every other one named; inches alike. */
    private void grid(Paper paper) {
        double half = names.stepMm() / 2;
        for (int i = first(lowX(), half); i * half <= highX(); i++) {
            double x = view.x(i * half);
            paper.line(i % 2 == 0 ? Pen.FAINT : Pen.KEEP_OUT, x, printed.y(), x, printed.bottom());
        }
        for (int i = first(lowY(), half); i * half <= highY(); i++) {
            double y = view.y(i * half);
            paper.line(i % 2 == 0 ? Pen.FAINT : Pen.KEEP_OUT, printed.x(), y, printed.right(), y);
        }
    }

    private static int first(double from, double step) {
        return (int) Math.ceil(from / step);
    }

    private double lowX() {
        return view.surveyX(printed.x());
    }

    private double highX() {
        return view.surveyX(printed.right());
    }

    private double lowY() {
        return Math.min(view.surveyY(printed.y()), view.surveyY(printed.bottom()));
    }

    private double highY() {
        return Math.max(view.surveyY(printed.y()), view.surveyY(printed.bottom()));
    }

    /** Along the top and the left, where nothing else stands. */
    private void gridNames(Paper paper) {
        double step = names.stepMm();
        for (int i = first(lowX(), step); i * step <= highX(); i++) {
            double x = view.x(i * step);
            word(paper, names.along(i * step), x + 1, frame.y() + 1.6 + GRID.capMm(), GRID);
        }
        for (int i = first(lowY(), step); i * step <= highY(); i++) {
            double y = view.y(i * step);
            word(paper, names.across(i * step), frame.x() + 1.5, y - 1, GRID);
        }
    }

    /** A word where it is free; returns whether it is. */
    private boolean word(Paper paper, String words, double left, double baseline, Type type) {
        Box box = Box.of(type.box(words, left, baseline));
        if (!frame.holds(box) || !taken.free(box.grown(0.6))) {
            return false;
        }
        paper.haloText(words, left, baseline, type, Anchor.LEFT, 0.6);
        taken.add(box);
        return true;
    }

    private void edges(Paper paper) {
        for (Region other : job.damage().regions()) {
            boolean own = job.regions().contains(other);
            line(paper, view.onPaper(other.likely()).getBoundary(), own ? LIKELY : Pen.LEADER);
        }
        Geometry likely = Overlay.union(job.regions().stream()
                .<Geometry>map(r -> view.onPaper(r.likely()))
                .toList());
        Geometry possible = Overlay.union(
                job.regions().stream().map(r -> view.onPaper(r.possible())).toList());
        Geometry shown = Overlay.difference(Overlay.intersection(possible.getBoundary(), window), likely.buffer(1));
        if (!shown.isEmpty()) {
            paper.casing(PlanView.shape(shown), POSSIBLE_CASING);
            paper.draw(PlanView.shape(shown), Pen.POSSIBLE);
        }
    }

    private void line(Paper paper, Geometry onPaper, Pen pen) {
        Geometry shown = Overlay.intersection(onPaper, window);
        if (!shown.isEmpty()) {
            paper.draw(PlanView.shape(shown), pen);
        }
    }

    private void fittings(Paper paper) {
        for (Feature.Fitting fitting : face.all(Feature.Fitting.class)) {
            Geometry shape = view.onPaper(fitting.geometry());
            if (shape.getDimension() > 0) {
                line(paper, shape.getDimension() > 1 ? shape.getBoundary() : shape, Pen.MARK);
            }
            Coordinate c = shape.getCentroid().getCoordinate();
            FittingMark mark = new FittingMark(c.x, c.y, fitting.metal(), fitting.loadBearing());
            if (printed.holds(mark.box())) {
                mark.paint(paper);
                taken.add(mark.box());
            }
        }
    }

    /** A heavy cross on the deck's grid with its place from the datum: two chalk lines on the deck find it. */
    private void cross(Paper paper) {
        Box best = null;
        double x = 0;
        double y = 0;
        String words = "";
        double nearest = Double.POSITIVE_INFINITY;
        double step = names.stepMm();
        for (int i = first(lowX(), step); i * step <= highX(); i++) {
            for (int j = first(lowY(), step); j * step <= highY(); j++) {
                double atX = view.x(i * step);
                double atY = view.y(j * step);
                if (!frame.holds(Box.round(atX, atY, EDGE_ROOM))) {
                    continue;
                }
                String place = names.place(i * step, j * step);
                Box box = crossWords(place, atX, atY);
                double far = Math.hypot(atX - frame.middleX(), atY - frame.middleY()) + (box == null ? 1e4 : 0);
                if (far < nearest) {
                    nearest = far;
                    best = box;
                    x = atX;
                    y = atY;
                    words = place;
                }
            }
        }
        paper.line(CROSS, x - CROSS_ARM, y, x + CROSS_ARM, y);
        paper.line(CROSS, x, y - CROSS_ARM, x, y + CROSS_ARM);
        taken.add(Box.round(x, y, CROSS_ARM));
        for (double away = 1.5; best == null && away <= FURTHEST_WORDS; away += 1.5) {
            best = wordsBeside(words, x, y, away);
        }
        Box at = best == null ? Box.of(PLACE.box(words, x + 1.5, y - 1.5)) : best;
        paper.haloText(words, at.x(), at.bottom() - PLACE.descentMm(), PLACE, Anchor.LEFT, 0.8);
        taken.add(at);
    }

    private @Nullable Box crossWords(String words, double x, double y) {
        if (!taken.free(Box.round(x, y, CROSS_ARM))) {
            return null;
        }
        return wordsBeside(words, x, y, 1.5);
    }

    /** Where the words of a cross are free of all else, {@code away} from its middle. */
    private @Nullable Box wordsBeside(String words, double x, double y, double away) {
        double w = PLACE.width(words);
        double above = y - 0.3 - away;
        double below = y + 0.3 + away + PLACE.capMm();
        List<Box> places = List.of(
                Box.of(PLACE.box(words, x + away, above)),
                Box.of(PLACE.box(words, x + away, below)),
                Box.of(PLACE.box(words, x - away - w, above)),
                Box.of(PLACE.box(words, x - away - w, below)));
        return places.stream()
                .filter(p -> frame.holds(p.grown(1)) && taken.free(p.grown(0.5)))
                .findFirst()
                .orElse(null);
    }

    /** Bow arrow and ramp, in the first place from the top that is free. */
    private void directions(Paper paper) {
        RampMark ramp = RampMark.of(face, 0, 0);
        double width = Math.max(34, ramp.box().width());
        double height = 9 + ramp.box().height();
        Box at = free(width, height, taken::free);
        if (at == null) {
            return;
        }
        double x = at.x();
        double y = at.y() + 3.5;
        paper.fill(at.grown(0.5).shape(), Tone.WHITE);
        paper.fill(Paper.closed(
                x, y, x + 8, y - 3.5, x + 8, y - 1.2, x + 19, y - 1.2, x + 19, y + 1.2, x + 8, y + 1.2, x + 8,
                y + 3.5));
        paper.text("bow", x + 21, y + BOW.capMm() / 2, BOW, Anchor.LEFT);
        Box box = ramp.box();
        new RampMark(x, at.bottom() - box.bottom(), ramp.slopeDeg(), ramp.uphillDeg(), ramp.yDown()).paint(paper);
        taken.add(at);
    }

    private @Nullable Box free(double width, double height, Predicate<Box> free) {
        for (double y = frame.y() + EDGE_ROOM + 2; y + height < frame.bottom() - EDGE_ROOM; y += SEARCH_STEP) {
            for (double x = frame.x() + EDGE_ROOM; x + width < frame.right() - EDGE_ROOM; x += SEARCH_STEP) {
                Box box = new Box(x, y, width, height);
                if (free.test(box.grown(1.5))) {
                    return box;
                }
            }
        }
        return null;
    }

    private void cutWords(Paper paper) {
        if (job.cut().isEmpty()) {
            return;
        }
        String words = measure.say("cut: outer skin only, " + Figures.fixed(job.skinMm(), 1) + " mm deep");
        List<Coordinate> along = along(job.cut().get().getBoundary());
        double since = 0;
        Coordinate before = null;
        for (Coordinate at : along) {
            since += before == null ? ALONG_CUT : before.distance(at);
            before = at;
            if (since >= ALONG_CUT
                    && (word(paper, words, at.x + 2.5, at.y - 2.5, PLACE)
                            || word(paper, words, at.x - 2.5 - PLACE.width(words), at.y - 2.5, PLACE)
                            || word(paper, words, at.x + 2.5, at.y + 2.5 + PLACE.capMm(), PLACE))) {
                return;
            }
        }
    }

    /** Regions and what stands on the deck, by name where there is room. */
    private void featureNames(Paper paper) {
        for (Region region : job.damage().regions()) {
            name(paper, region.id(), view.onPaper(region.likely()).getBoundary());
        }
        for (Feature f : face.features()) {
            boolean told = f instanceof Feature.Fitting
                    || f instanceof Feature.Opening
                    || f instanceof Feature.Support
                    || f instanceof Feature.Divider;
            if (told && !f.name().isBlank()) {
                name(paper, f.name(), view.onPaper(f.geometry()));
            }
        }
    }

    private void name(Paper paper, String name, Geometry onPaper) {
        Geometry shown = Overlay.intersection(onPaper, Shapes.rectangle(frame.grown(-EDGE_ROOM)));
        if (shown.isEmpty()) {
            return;
        }
        Coordinate at = shown.getInteriorPoint().getCoordinate();
        double[][] moves = {{2.5, -1.5}, {2.5, 4}, {-2.5 - NAME.width(name), -1.5}, {4, -5}, {4, 8}};
        for (double[] move : moves) {
            if (word(paper, name, at.x + move[0], at.y + move[1], NAME)) {
                return;
            }
        }
    }
}
