package corewright.report.sheets;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.PlanView;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.marks.DatumMark;
import corewright.drawing.marks.FittingMark;
import corewright.drawing.marks.ScaleBar;
import corewright.drawing.marks.Structure;
import corewright.survey.Face;
import corewright.survey.Feature;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** The plan of a field sheet: the sheet's places as numbered rings on a broken path, the others as dots. */
final class SheetPlan {
    private static final double RING = 4.4;

    /** Where rings would touch they shrink to this, where even these would, only every fifth has its number. */
    private static final double SMALL_RING = 3;

    private static final double[] SCALES = {5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200, 500};
    private static final double COMB = 9;
    private static final double EDGE = 4;

    private final SheetPlaces all;
    private final List<SheetPlaces.Place> own;
    private final Face face;
    private final Box box;
    private final Measure measure;
    private final PlanView view;

    SheetPlan(SheetPlaces all, List<SheetPlaces.Place> own, Box box, Measure measure) {
        this.all = all;
        this.own = own;
        this.box = box;
        this.measure = measure;
        face = all.face();
        Envelope extent = face.outline().getEnvelopeInternal();
        Box deck = new Box(box.x() + EDGE, box.y() + EDGE, box.width() - 2 * EDGE, box.height() - EDGE - COMB);
        view = PlanView.centred(face, extent, scale(extent, deck), deck.middleX(), deck.middleY());
    }

    private static double scale(Envelope extent, Box deck) {
        for (double scale : SCALES) {
            if (extent.getWidth() / scale <= deck.width() && extent.getHeight() / scale <= deck.height()) {
                return scale;
            }
        }
        return Math.ceil(Math.max(extent.getWidth() / deck.width(), extent.getHeight() / deck.height()));
    }

    double scale() {
        return view.scale();
    }

    void paint(Paper paper) {
        paper.figure("Plan of the places to be read, numbered in the order of the rows beside it.", this::draw);
    }

    private void draw(Paper paper) {
        Structure.paint(paper, view, face, Structure.Shows.ALL);
        for (Feature.Fitting fitting : face.all(Feature.Fitting.class)) {
            Coordinate at = view.onPaper(fitting.geometry()).getCentroid().getCoordinate();
            new FittingMark(at.x, at.y, fitting.metal(), fitting.loadBearing()).paint(paper);
        }
        DatumMark datum = new DatumMark(view.datumX(), view.datumY(), view.yDown());
        if (box.holds(datum.box())) {
            datum.paint(paper);
        }
        path(paper);
        for (SheetPlaces.Place place : all.places()) {
            Point2D at = view.at(place.spot());
            if (!own.contains(place)) {
                paper.disc(at.getX(), at.getY(), 0.6);
            }
        }
        for (int i = 0; i < own.size(); i++) {
            double room = room(i);
            boolean told = room >= SMALL_RING + 0.2 || own.get(i).number() % 5 == 0 || i == 0;
            double ring = room >= RING + 0.4 ? RING : told ? SMALL_RING : 1;
            mark(paper, own.get(i), ring, view.at(own.get(i).spot()));
        }
        new ScaleBar(box.x() + 2, box.bottom() - 5, view.scale(), measure).paint(paper);
    }

    private static void mark(Paper paper, SheetPlaces.Place place, double ring, Point2D at) {
        paper.ring(at.getX(), at.getY(), ring, Pen.LEADER);
        if (ring > 2) {
            double points = (ring > 4 ? 6.5 : 5) * (place.number() > 99 ? 0.85 : 1);
            Type type = new Type(Typeface.CONDENSED_SEMIBOLD, points);
            paper.text(String.valueOf(place.number()), at.getX(), at.getY() + type.capMm() / 2, type, Anchor.CENTRE);
        }
    }

    /** From place to place in the order of the numbers; the first of all is named. */
    private void path(Paper paper) {
        if (own.isEmpty()) {
            return;
        }
        Path2D path = new Path2D.Double();
        for (SheetPlaces.Place place : own) {
            Point2D at = view.at(place.spot());
            if (place == own.get(0)) {
                path.moveTo(at.getX(), at.getY());
            } else {
                path.lineTo(at.getX(), at.getY());
            }
        }
        paper.draw(path, Pen.UNDECIDED);
        Point2D first = view.at(own.get(0).spot());
        Type type = new Type(Typeface.TEXT_BOLD, 7.5);
        paper.haloText(
                "start", first.getX() - RING / 2 - 0.6, first.getY() + type.capMm() / 2, type, Anchor.RIGHT, 0.8);
    }

    /** From a place to the nearest of the two it stands between, on paper. */
    private double room(int i) {
        Point2D at = view.at(own.get(i).spot());
        double least = Double.MAX_VALUE;
        for (int k : new int[] {i - 1, i + 1}) {
            if (k >= 0 && k < own.size()) {
                least = Math.min(least, at.distance(view.at(own.get(k).spot())));
            }
        }
        return least;
    }
}
