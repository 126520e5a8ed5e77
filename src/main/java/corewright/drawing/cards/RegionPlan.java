package corewright.drawing.cards;

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
import corewright.survey.Feature;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** One region: its extent, what stands near, where to drill, measured from the datum, and where to read. */
public final class RegionPlan {
    private static final int[] SCALES = {1, 2, 5, 10, 20, 25, 50, 100};
    private static final double LEFT_ROOM = 12;
    private static final double FOOT_ROOM = 6;
    private static final double MARGIN = 8;
    private static final double BAND = 5;
    private static final double RING = 7;
    private static final double CROSS = 6;
    private static final double HOLE = 1.3;
    private static final Type NAME = new Type(Typeface.TEXT_SEMIBOLD, 8.5);
    private static final Type BIG = new Type(Typeface.TEXT_BOLD, 14);
    private static final Type FIGURE = new Type(Typeface.TEXT_BOLD, 11);

    private final FaceDamage damage;
    private final Region region;
    private final @Nullable Spot drill;
    private final List<Spot> more;
    private final List<Spot> reads;
    private final Measure measure;
    private final Box box;
    private final Polygon window;
    private final PlanView view;
    private final List<Box> taken = new ArrayList<>();

    /**
     * @param drill where to drill, or to begin
     * @param more holes that follow from it
     * @param reads lettered a, b, c
     * @param paper the plan may use, with its measures
     */
    public RegionPlan(
            FaceDamage damage,
            Region region,
            @Nullable Spot drill,
            List<Spot> more,
            List<Spot> reads,
            Measure measure,
            Box paper) {
        this.damage = damage;
        this.region = region;
        this.drill = drill;
        this.more = more;
        this.reads = reads;
        this.measure = measure;
        box = new Box(paper.x() + LEFT_ROOM, paper.y(), paper.width() - LEFT_ROOM, paper.height() - FOOT_ROOM);
        window = Shapes.rectangle(box);
        Envelope extent = new Envelope(region.likely().getEnvelopeInternal());
        if (drill != null) {
            extent.expandToInclude(drill.coordinate());
        }
        double scale = 0;
        for (int each : SCALES) {
            boolean fits = extent.getWidth() / each <= box.width() - 2 * MARGIN
                    && extent.getHeight() / each <= box.height() - 2 * MARGIN;
            scale = scale == 0 && fits ? each : scale;
        }
        view = PlanView.centred(
                damage.face(),
                extent,
                scale == 0 ? Math.ceil(Math.max(extent.getWidth(), extent.getHeight()) / 60) : scale,
                box.middleX(),
                box.middleY());
    }

    /** Survey millimetres to one of paper. */
    public double scale() {
        return view.scale();
    }

    /** Paints it. */
    public void paint(Paper paper) {
        paper.figure("Plan of the region with the place to drill, measured from the datum.", this::draw);
    }

    private void draw(Paper paper) {
        Polygon area = view.onPaper(region.likely());
        Pattern pattern = Pattern.of(region.condition());
        pattern.paint(paper, Overlay.difference(area, area.buffer(-BAND)), pattern.anchor(area, view.datum()));
        paper.draw(PlanView.shape(area), Pen.LIKELY);
        paper.within(box.shape(), p -> Structure.paint(p, view, damage.face(), Structure.Shows.ALL));
        for (Feature.Fitting f : damage.face().all(Feature.Fitting.class)) {
            FittingMark mark = mark(f);
            if (box.holds(mark.box())) {
                mark.paint(paper);
                taken.add(mark.box());
            }
        }
        for (Spot hole : more) {
            paper.disc(view.x(hole.xMm()), view.y(hole.yMm()), HOLE);
        }
        if (drill != null) {
            drill(paper, drill);
        }
        for (int i = 0; i < reads.size(); i++) {
            Spot at = reads.get(i);
            taken.add(PlaceLetter.paint(paper, (char) ('a' + i), view.x(at.xMm()), view.y(at.yMm())));
        }
        name(paper, region.id(), view.onPaper(region.label()).getCoordinate(), BIG);
        for (Feature f : damage.face().features()) {
            boolean told = f instanceof Feature.Fitting fitting
                            && box.holds(mark(fitting).box())
                    || f instanceof Feature.Opening
                    || f instanceof Feature.Support;
            Geometry shown = Overlay.intersection(view.onPaper(f.geometry()), window);
            if (told && !f.name().isBlank() && !shown.isEmpty()) {
                name(paper, f.name(), shown.getInteriorPoint().getCoordinate(), NAME);
            }
        }
    }

    private FittingMark mark(Feature.Fitting f) {
        Coordinate c = f.geometry().getCentroid().getCoordinate();
        return new FittingMark(view.x(c.x), view.y(c.y), f.metal(), f.loadBearing());
    }

    /** A ring with a cross, and lines to its measures at the sides of the plan. */
    private void drill(Paper paper, Spot at) {
        double x = view.x(at.xMm());
        double y = view.y(at.yMm());
        paper.line(Pen.REACH, x, y, x, box.bottom());
        paper.line(Pen.REACH, box.x(), y, x, y);
        paper.ring(x, y, RING, Pen.EDGE);
        paper.line(Pen.EDGE, x - CROSS, y, x + CROSS, y);
        paper.line(Pen.EDGE, x, y - CROSS, x, y + CROSS);
        taken.add(Box.round(x, y, CROSS));
        String aft = measure.lengthFigure(at.xMm()).replace('-', '−');
        String side = measure.lengthFigure(at.yMm()).replace('-', '−');
        paper.text(aft, x, box.bottom() + 4.4, FIGURE, Paper.Anchor.CENTRE);
        paper.text(side, box.x() - 1.2, y + FIGURE.capMm() / 2, FIGURE, Paper.Anchor.RIGHT);
    }

    private void name(Paper paper, String text, Coordinate at, Type type) {
        double half = type.width(text) / 2;
        double[][] moves = {{0, 0}, {0, -9}, {0, 9}, {half + 9, 0}, {-half - 9, 0}, {0, -15}, {0, 15}};
        for (double[] move : moves) {
            double x = at.x + move[0];
            double y = at.y + move[1] + type.capMm() / 2;
            Box words = Box.of(type.box(text, x - half, y));
            if (box.holds(words) && taken.stream().noneMatch(t -> t.meets(words.grown(0.6)))) {
                paper.haloText(text, x, y, type, Paper.Anchor.CENTRE, 0.7);
                taken.add(words);
                return;
            }
        }
    }
}
