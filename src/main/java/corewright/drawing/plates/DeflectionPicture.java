package corewright.drawing.plates;

import corewright.contour.Band;
import corewright.contour.Contours;
import corewright.contour.Raster;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.PlanView;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.overlay.Overlay;
import corewright.sandwich.FootLoadMap;
import corewright.stiffness.PanelStiffness;
import corewright.stiffness.State;
import corewright.survey.Face;
import java.awt.Color;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.linemerge.LineMerger;

/**
 * How far a panel gives under a foot, as lines of equal deflection: figures stand in the lines, greys repeat what they say.
 * Pictures that are compared share scale and levels.
 */
public final class DeflectionPicture {
    private static final int[] GREYS = {0xFF, 0xF0, 0xDE, 0xC8, 0xAD, 0x8F, 0x70, 0x50};
    private static final double CELLS_ACROSS = 90;

    /** A line shorter than this has no room for its figure. */
    private static final double LABELLED_FROM = 14;

    private static final double LABELS_APART = 7;
    private static final Pen LINE = Pen.solid(0.25);
    private static final Pen HEAVY = Pen.solid(0.50);
    private static final Type FIGURE = Type.READING;
    private static final Type HEAD = Type.LABEL_BOLD;
    private static final double WIDEST_CELL = 13;
    private static final Type ANSWER = new Type(Typeface.TEXT_BOLD, 9);

    private final Paper paper;
    private final PanelStiffness panel;
    private final PlanView view;
    private final List<Double> levels;
    private final Measure measure;

    private DeflectionPicture(Paper paper, PanelStiffness panel, PlanView view, List<Double> levels, Measure measure) {
        this.paper = paper;
        this.measure = measure;
        this.panel = panel;
        this.view = view;
        this.levels = levels;
    }

    /**
     * Paints the states of a panel side by side, each in its box; all boxes have one size.
     *
     * @return the scale, survey millimetres to one of paper, a whole number
     */
    public static double paint(
            Paper paper, Face face, PanelStiffness panel, List<State> states, List<Box> boxes, Measure measure) {
        List<Double> levels = levels(panel, states, measure);
        Envelope extent = panel.panel().area().getEnvelopeInternal();
        double scale = scale(panel, boxes.get(0));
        for (int i = 0; i < states.size(); i++) {
            Box box = boxes.get(i);
            PlanView view = PlanView.centred(face, extent, scale, box.middleX(), box.middleY());
            State state = states.get(i);
            String told = "How far the panel " + panel.panel().name() + " gives under one foot, "
                    + state.name().toLowerCase(Locale.ROOT).replace('_', ' ') + ": "
                    + measure.deflectionFigure(panel.in(state).deflectionMm()) + " " + measure.depthUnit()
                    + " at the ring.";
            paper.figure(told, p -> new DeflectionPicture(p, panel, view, levels, measure).paint(state));
        }
        return scale;
    }

    /** Survey millimetres to one of paper, a whole number, of a picture in this box. */
    public static double scale(PanelStiffness panel, Box box) {
        Envelope extent = panel.panel().area().getEnvelopeInternal();
        return Math.ceil(Math.max(extent.getWidth() / box.width(), extent.getHeight() / box.height()));
    }

    private static List<Double> levels(PanelStiffness panel, List<State> states, Measure measure) {
        double smallest = Double.POSITIVE_INFINITY;
        double largest = 0;
        for (State state : states) {
            double most = panel.in(state).feet().softest().deflectionMm();
            smallest = Math.min(smallest, most);
            largest = Math.max(largest, most);
        }
        return DeflectionLevels.between(measure, smallest, largest);
    }

    /**
     * The scale of such pictures: from grey to grey over the same lines, with the same figures set into them, so that it can be read
     * without the greys too.
     */
    public static void paintScale(Paper paper, PanelStiffness panel, List<State> states, Box box, Measure measure) {
        List<Double> levels = levels(panel, states, measure);
        String head = "gives, " + measure.depthUnit();
        double left = box.x() + HEAD.width(head) + 3;
        paper.text(head, box.x(), box.middleY() + HEAD.capMm() / 2, HEAD, Anchor.LEFT);
        double cell = Math.min(WIDEST_CELL, (box.right() - left) / (levels.size() + 1));
        for (int i = 0; i <= levels.size(); i++) {
            int grey = GREYS[Math.min(GREYS.length - 1, i)];
            Box swatch = new Box(left + i * cell, box.y(), cell, box.height());
            paper.fill(swatch.shape(), new Color(grey, grey, grey));
        }
        for (int i = 0; i < levels.size(); i++) {
            double x = left + (i + 1) * cell;
            double level = levels.get(i);
            paper.line(DeflectionLevels.heavy(measure, level) ? HEAVY : LINE, x, box.y(), x, box.bottom());
            paper.haloText(
                    measure.deflectionFigure(level), x, box.middleY() + FIGURE.capMm() / 2, FIGURE, Anchor.CENTRE, 0.8);
        }
        paper.draw(new Box(left, box.y(), (levels.size() + 1) * cell, box.height()).shape(), Pen.MARK);
    }

    private void paint(State state) {
        Polygon area = panel.panel().area();
        List<Band> bands = Contours.bands(
                raster(panel.in(state).feet()),
                levels.stream().mapToDouble(l -> l).toArray());
        List<Geometry> parts = new ArrayList<>();
        for (Band band : bands) {
            Geometry part = Overlay.intersection(band.area(), area);
            parts.add(part);
            int grey = GREYS[Math.min(GREYS.length - 1, above(band.lower()))];
            paper.fill(PlanView.shape(view.onPaper(part)), new Color(grey, grey, grey));
        }
        List<Figure> figures = new ArrayList<>();
        Coordinate softest = view.onPaper(
                        area.getFactory().createPoint(panel.softest().coordinate()))
                .getCoordinate();
        for (double level : levels) {
            List<Geometry> softer = new ArrayList<>();
            for (int i = 0; i < bands.size(); i++) {
                if (bands.get(i).lower() >= level) {
                    softer.add(parts.get(i));
                }
            }
            if (!softer.isEmpty()) {
                lines(level, Overlay.union(softer), figures, softest);
            }
        }
        figures.forEach(f -> paper.haloText(f.words, f.at.x, f.at.y + FIGURE.capMm() / 2, FIGURE, Anchor.CENTRE, 0.8));
        paper.draw(PlanView.shape(view.onPaper(area)), Pen.EDGE);
        paper.ring(softest.x, softest.y, 2.2, Pen.MARK);
        paper.haloText(
                measure.deflectionFigure(panel.in(state).deflectionMm()),
                softest.x,
                softest.y - 2.2,
                ANSWER,
                Anchor.CENTRE,
                0.9);
    }

    private record Figure(String words, Coordinate at) {}

    private int above(double lower) {
        return lower == Double.NEGATIVE_INFINITY ? 0 : levels.indexOf(lower) + 1;
    }

    /** The edge of all that gives more than a level, without the panel's own edge. */
    private void lines(double level, Geometry softer, List<Figure> figures, Coordinate softest) {
        Geometry line =
                Overlay.intersection(softer.getBoundary(), panel.panel().area().buffer(-1));
        LineMerger merger = new LineMerger();
        merger.add(view.onPaper(line));
        Optional<LineString> longest = Optional.empty();
        for (Object each : merger.getMergedLineStrings()) {
            LineString drawn = (LineString) each;
            paper.draw(PlanView.shape(drawn), DeflectionLevels.heavy(measure, level) ? HEAVY : LINE);
            if (longest.isEmpty() || drawn.getLength() > longest.get().getLength()) {
                longest = Optional.of(drawn);
            }
        }
        longest.filter(l -> l.getLength() >= LABELLED_FROM)
                .flatMap(l -> place(l, softest, figures))
                .ifPresent(at -> figures.add(new Figure(measure.deflectionFigure(level), at)));
    }

    private static Optional<Coordinate> place(LineString line, Coordinate softest, List<Figure> taken) {
        return Arrays.stream(line.getCoordinates())
                .filter(c -> c.distance(softest) > LABELS_APART)
                .filter(c -> taken.stream().allMatch(f -> f.at.distance(c) > LABELS_APART))
                .max(Comparator.comparingDouble((Coordinate c) -> c.y).thenComparingDouble(c -> c.x));
    }

    /** Deflections on square cells over the panel's box, linear between the feet, level beyond the last. */
    private Raster raster(FootLoadMap feet) {
        FootGive give = new FootGive(feet);
        Envelope box = panel.panel().area().getEnvelopeInternal();
        double cell = Math.max(box.getWidth(), box.getHeight()) / CELLS_ACROSS;
        int columns = (int) Math.ceil(box.getWidth() / cell);
        int count = (int) Math.ceil(box.getHeight() / cell);
        double[] values = new double[columns * count];
        for (int k = 0; k < values.length; k++) {
            double x = box.getMinX() + (k % columns + 0.5) * cell;
            double y = box.getMinY() + (k / columns + 0.5) * cell;
            values[k] = give.at(x, y);
        }
        return new Raster(box.getMinX(), box.getMinY(), cell, count, columns, values);
    }
}
