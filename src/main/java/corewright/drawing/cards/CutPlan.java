package corewright.drawing.cards;

import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pattern;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.PlanView;
import corewright.drawing.kit.Shapes;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.marks.FittingMark;
import corewright.drawing.marks.Structure;
import corewright.overlay.Overlay;
import corewright.repair.CutOut;
import corewright.survey.Feature;
import java.awt.Color;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * The plan of one cut: the line to saw along, the scarf round it as far as there is skin, the damage as a band, structure and
 * fittings, the cut's size, its edges from the datum, and where to read before closing.
 */
public final class CutPlan {
    private static final int[] SCALES = {1, 2, 5, 10, 20, 25, 50, 100};
    private static final double LEFT_ROOM = 10;
    private static final double FOOT_ROOM = 6;
    private static final double MARGIN = 2.5;
    private static final double BAND = 4;
    private static final Color SCARF = new Color(0xDCDCDC);
    private static final Type NAME = new Type(Typeface.TEXT_SEMIBOLD, 8.5);
    private static final Type BIG = new Type(Typeface.TEXT_BOLD, 14);
    private static final Type SIZE = new Type(Typeface.TEXT_BOLD, 11);
    private static final Type EDGE = new Type(Typeface.CONDENSED, 9);

    private final FaceDamage damage;
    private final CutOut cut;
    private final Measure measure;
    private final Box box;
    private final Polygon window;
    private final PlanView view;
    private final List<Box> taken = new ArrayList<>();

    /** @param paper the plan may use, with its measures */
    public CutPlan(DamageMap map, CutOut cut, Measure measure, Box paper) {
        this.cut = cut;
        this.measure = measure;
        damage = map.face(cut.region().face());
        box = new Box(paper.x() + LEFT_ROOM, paper.y(), paper.width() - LEFT_ROOM, paper.height() - FOOT_ROOM);
        window = Shapes.rectangle(box);
        Envelope extent = new Envelope(cut.plan().cut().getEnvelopeInternal());
        extent.expandToInclude(cut.scarf().getEnvelopeInternal());
        view = PlanView.centred(damage.face(), extent, scale(extent), box.middleX(), box.middleY());
    }

    private double scale(Envelope extent) {
        double wide = box.width() - 2 * MARGIN;
        double high = box.height() - 2 * MARGIN;
        for (int scale : SCALES) {
            if (extent.getWidth() / scale <= wide && extent.getHeight() / scale <= high) {
                return scale;
            }
        }
        return Math.ceil(Math.max(extent.getWidth() / wide, extent.getHeight() / high));
    }

    /** Survey millimetres to one of paper. */
    public double scale() {
        return view.scale();
    }

    /** Paints it. */
    public void paint(Paper paper) {
        paper.figure(
                "Plan of the cut: its line with sizes and corners, the scarf round it, the region inside it, what stands near.",
                this::draw);
    }

    private void draw(Paper paper) {
        Geometry line = view.onPaper(cut.plan().cut());
        Geometry scarf = clipped(view.onPaper(cut.scarf()));
        if (!scarf.isEmpty()) {
            paper.fill(PlanView.shape(scarf), SCARF);
            paper.draw(PlanView.shape(scarf), Pen.FAINT);
        }
        regions(paper);
        paper.within(box.shape(), p -> Structure.paint(p, view, damage.face(), Structure.Shows.ALL));
        paper.casing(PlanView.shape(line), 1.3);
        paper.draw(PlanView.shape(line), Pen.CUT);
        fittings(paper);
        letters(paper, line);
        sizes(paper, line.getEnvelopeInternal());
        names(paper, line);
    }

    private void regions(Paper paper) {
        for (Region region : damage.regions()) {
            Polygon area = view.onPaper(region.likely());
            if (region.equals(cut.region())) {
                Pattern pattern = Pattern.of(region.condition());
                pattern.paint(paper, Overlay.difference(area, area.buffer(-BAND)), pattern.anchor(area, view.datum()));
            }
            Geometry shown = clipped(area.getBoundary());
            if (!shown.isEmpty()) {
                paper.draw(PlanView.shape(shown), region.equals(cut.region()) ? Pen.LIKELY : Pen.LEADER);
            }
        }
    }

    private Geometry clipped(Geometry onPaper) {
        return Overlay.intersection(onPaper, window);
    }

    private void fittings(Paper paper) {
        for (Feature.Fitting f : damage.face().all(Feature.Fitting.class)) {
            FittingMark mark = mark(f);
            if (box.holds(mark.box())) {
                mark.paint(paper);
                taken.add(mark.box());
            }
        }
    }

    private FittingMark mark(Feature.Fitting f) {
        Coordinate c = f.geometry().getCentroid().getCoordinate();
        return new FittingMark(view.x(c.x), view.y(c.y), f.metal(), f.loadBearing());
    }

    /** a at the bow end, b at the other, c at the low side of the paper: where to read before closing. */
    private void letters(Paper paper, Geometry line) {
        Coordinate[] along = line.getCoordinates();
        Coordinate left = along[0];
        Coordinate right = along[0];
        for (Coordinate c : along) {
            left = c.x < left.x ? c : left;
            right = c.x > right.x ? c : right;
        }
        Coordinate low = low(along, List.of(left, right));
        taken.add(PlaceLetter.paint(paper, 'a', left.x, left.y));
        taken.add(PlaceLetter.paint(paper, 'b', right.x, right.y));
        taken.add(PlaceLetter.paint(paper, 'c', low.x, low.y));
    }

    /** The lowest that is clear of the other letters, if any is. */
    private static Coordinate low(Coordinate[] along, List<Coordinate> others) {
        return Arrays.stream(along)
                .filter(c -> others.stream().allMatch(o -> o.distance(c) > 2 * PlaceLetter.SIDE))
                .max(Comparator.comparingDouble(c -> c.y))
                .orElse(along[0]);
    }

    /** Length and width inside the line; the edges from the datum at the sides of the plan. */
    private void sizes(Paper paper, Envelope line) {
        Envelope cutAt = cut.plan().cut().getEnvelopeInternal();
        double foot = box.bottom() + 3.6;
        edge(paper, minus(measure.lengthFigure(cutAt.getMinX())), view.x(cutAt.getMinX()), foot, true);
        edge(paper, minus(measure.lengthFigure(cutAt.getMaxX())), view.x(cutAt.getMaxX()), foot, true);
        double side = box.x() - 1.2;
        edge(paper, minus(measure.lengthFigure(cutAt.getMinY())), side, view.y(cutAt.getMinY()), false);
        edge(paper, minus(measure.lengthFigure(cutAt.getMaxY())), side, view.y(cutAt.getMaxY()), false);
        double y = line.getMaxY() - 0.28 * line.getHeight();
        double x = line.getMinX() + 0.28 * line.getWidth();
        paper.line(Pen.LEADER, line.getMinX(), y, line.getMaxX(), y);
        paper.line(Pen.LEADER, x, line.getMinY(), x, line.getMaxY());
        size(paper, measure.lengthFigure(cutAt.getWidth()), line.centre().x, y + SIZE.capMm() / 2);
        size(paper, measure.lengthFigure(cutAt.getHeight()), x, line.centre().y + SIZE.capMm() / 2);
    }

    private static String minus(String figure) {
        return figure.replace('-', '−');
    }

    private void size(Paper paper, String figure, double x, double y) {
        paper.haloText(figure, x, y, SIZE, Paper.Anchor.CENTRE, 0.9);
        taken.add(Box.of(SIZE.box(figure, x - SIZE.width(figure) / 2, y)));
    }

    private void edge(Paper paper, String figure, double x, double y, boolean foot) {
        if (foot) {
            paper.line(Pen.LEADER, x, box.bottom() - 1.5, x, box.bottom() + 0.5);
            paper.text(figure, x, y, EDGE, Paper.Anchor.CENTRE);
        } else {
            paper.line(Pen.LEADER, box.x() - 0.5, y, box.x() + 1.5, y);
            paper.text(figure, x, y + EDGE.capMm() / 2, EDGE, Paper.Anchor.RIGHT);
        }
    }

    /** The region's name inside, and what stands in the plan by name, where it is free. */
    private void names(Paper paper, Geometry line) {
        Coordinate at = view.onPaper(cut.region().label()).getCoordinate();
        name(paper, cut.region().id(), at, BIG);
        for (Feature f : damage.face().features()) {
            boolean told = f instanceof Feature.Fitting fitting
                            && box.holds(mark(fitting).box())
                    || f instanceof Feature.Opening
                    || f instanceof Feature.Support
                    || f instanceof Feature.Divider;
            Geometry shown = told
                    ? clipped(view.onPaper(f.geometry()))
                    : line.getFactory().createPoint();
            if (told && !f.name().isBlank() && !shown.isEmpty()) {
                name(paper, f.name(), shown.getInteriorPoint().getCoordinate(), NAME);
            }
        }
        for (Region other : damage.regions()) {
            Geometry shown = clipped(view.onPaper(other.likely()));
            if (!other.equals(cut.region()) && !shown.isEmpty()) {
                name(paper, other.id(), shown.getInteriorPoint().getCoordinate(), NAME);
            }
        }
    }

    private void name(Paper paper, String text, Coordinate at, Type type) {
        double up = type.capMm() / 2;
        double half = type.width(text) / 2;
        double[][] moves = {{0, 0}, {0, -6}, {0, 6}, {half + 5, 0}, {-half - 5, 0}, {0, -11}, {0, 11}};
        for (double[] move : moves) {
            double x = at.x + move[0];
            double y = at.y + move[1] + up;
            Box words = Box.of(type.box(text, x - half, y));
            if (box.holds(words) && taken.stream().noneMatch(t -> t.meets(words.grown(0.6)))) {
                paper.haloText(text, x, y, type, Paper.Anchor.CENTRE, 0.7);
                taken.add(words);
                return;
            }
        }
    }
}
