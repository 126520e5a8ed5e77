package corewright.drawing.placing;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.PlanView;
import corewright.drawing.kit.Shapes;
import corewright.drawing.kit.Type;
import corewright.drawing.marks.FittingMark;
import corewright.drawing.marks.NameMark;
import corewright.drawing.marks.StructureMarks;
import corewright.survey.Face;
import corewright.survey.Feature;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** Names every opening, divider, support and fitting beside itself, where it covers least. */
final class NamePlacer {
    private static final double GAP = 0.8;
    private static final double MARK_COST = 20;
    private static final double READING_COST = 2.5;
    private static final double LINE_COST = 5;
    private static final double LINE_SAMPLE = 0.8;
    private static final double LATER_COST = 0.3;
    private static final double LEFT_OUT_ABOVE = 2.4;
    private static final Type TYPE = NameMark.TYPE;
    private static final double CAP = TYPE.capMm();

    private final MapSpec spec;
    private final PlanView view;
    private final Obstacles marks;
    private final Obstacles readings;
    private final List<Obstacles> lines = new ArrayList<>();
    private final List<NameMark> names = new ArrayList<>();

    private NamePlacer(MapSpec spec, PlanView view, Obstacles marks, Obstacles readings) {
        this.spec = spec;
        this.view = view;
        this.marks = marks.copy();
        this.readings = readings;
    }

    /**
     * @param marks fittings, probes, holes and tags
     * @param readings all numbers, shown or not
     */
    static List<NameMark> place(MapSpec spec, PlanView view, Obstacles marks, Obstacles readings) {
        return new NamePlacer(spec, view, marks, readings).place();
    }

    private List<NameMark> place() {
        Face face = spec.damage().face();
        Polygon outline = view.onPaper(face.outline());
        claim(outline.getBoundary());
        face.all(Feature.Support.class).forEach(s -> claim(view.onPaper(s.geometry())));
        face.all(Feature.Divider.class).forEach(d -> claim(view.onPaper(d.geometry())));
        face.all(Feature.Opening.class)
                .forEach(o -> claim(view.onPaper(o.geometry()).getBoundary()));
        face.all(Feature.Opening.class).forEach(o -> put(true, inOrBeside(o.name(), view.onPaper(o.geometry()))));
        face.all(Feature.Divider.class).forEach(d -> put(true, along(d.name(), view.onPaper(d.geometry()), false)));
        for (Feature.Support s : face.all(Feature.Support.class)) {
            String name = s.name().isEmpty() || s.name().contains("under") ? s.name() : s.name() + ", under";
            LineString line = view.onPaper(s.geometry());
            put(true, along(name, line, StructureMarks.onEdge(line, outline)));
        }
        RegionWords words = new RegionWords(spec);
        for (Feature.Fitting f : face.all(Feature.Fitting.class)) {
            if (words.says(f)) {
                continue;
            }
            put(f.loadBearing(), around(f.name(), fittingBox(f)));
        }
        return names;
    }

    /** Words should not stand on a line of the deck: the line as a string of small boxes. */
    private void claim(Geometry line) {
        Obstacles boxes = new Obstacles();
        LengthIndexedLine along = new LengthIndexedLine(line);
        for (double at = 0; at < line.getLength(); at += LINE_SAMPLE) {
            Coordinate c = along.extractPoint(at);
            boxes.add(Box.round(c.x, c.y, LINE_SAMPLE / 2));
        }
        lines.add(boxes);
    }

    private Box fittingBox(Feature.Fitting f) {
        Coordinate c = f.geometry().getCentroid().getCoordinate();
        boolean framed = f.loadBearing() && spec.shows(Layer.BACKING);
        double keepOut = framed ? f.keepoutMm() / view.scale() : 0;
        Box mark = new FittingMark(view.x(c.x), view.y(c.y), f.metal(), framed).box();
        return keepOut > 0 && keepOut < 4 ? Box.round(mark.middleX(), mark.middleY(), keepOut) : mark;
    }

    /** The least costly of the candidates; one that would cover a mark is left out unless it must be named. */
    private void put(boolean must, List<NameMark> candidates) {
        NameMark best = null;
        double least = Double.MAX_VALUE;
        for (int i = 0; i < candidates.size(); i++) {
            NameMark candidate = candidates.get(i);
            if (candidate.text().isEmpty() || !spec.box().holds(candidate.box())) {
                continue;
            }
            Box box = candidate.box().grown(0.3);
            double cost = MARK_COST * marks.hits(box)
                    + READING_COST * readings.hits(box)
                    + LINE_COST * lines.stream().filter(l -> !l.free(box)).count()
                    + LATER_COST * i;
            if (cost < least) {
                least = cost;
                best = candidate;
            }
        }
        if (best != null && (must || least < LEFT_OUT_ABOVE)) {
            names.add(best);
            marks.add(best.box());
        }
    }

    private static List<NameMark> inOrBeside(String name, Polygon area) {
        Envelope e = area.getEnvelopeInternal();
        Box box = new Box(e.getMinX(), e.getMinY(), e.getWidth(), e.getHeight());
        List<NameMark> places = new ArrayList<>();
        double width = TYPE.width(name);
        if (width + 2.4 < box.width() && CAP + 2.4 < box.height()) {
            places.add(new NameMark(name, box.middleX() - width / 2, box.middleY() + CAP / 2, false));
        } else if (width + 2.4 < box.height() && CAP + 2.4 < box.width()) {
            places.add(new NameMark(name, box.middleX() - CAP / 2, box.middleY(), true));
        }
        places.addAll(around(name, box));
        return places;
    }

    private static List<NameMark> around(String name, Box box) {
        double width = TYPE.width(name);
        double middle = box.middleY() + CAP / 2;
        double left = box.x() - GAP - width;
        double above = box.y() - GAP - TYPE.descentMm();
        double below = box.bottom() + GAP + CAP;
        return List.of(
                new NameMark(name, box.right() + GAP, middle, false),
                new NameMark(name, box.middleX() - width / 2, below, false),
                new NameMark(name, box.middleX() - width / 2, above, false),
                new NameMark(name, left, middle, false),
                new NameMark(name, box.right(), below, false),
                new NameMark(name, box.x() - width, below, false),
                new NameMark(name, box.right(), above, false),
                new NameMark(name, box.x() - width, above, false));
    }

    /** Beyond its ends, above or below a level line, beside a steep one. */
    private List<NameMark> along(String name, LineString line, boolean onEdge) {
        Coordinate a = line.getCoordinateN(0);
        Coordinate b = line.getCoordinateN(line.getNumPoints() - 1);
        boolean steep = Math.abs(b.y - a.y) > Math.abs(b.x - a.x);
        double width = TYPE.width(name);
        List<NameMark> places = new ArrayList<>();
        if (steep && !onEdge) {
            Coordinate top = a.y < b.y ? a : b;
            Coordinate foot = a.y < b.y ? b : a;
            places.add(new NameMark(name, top.x + 0.4 - width, top.y - 1.6, false));
            places.add(new NameMark(name, foot.x + 0.4 - width, foot.y + 1.4 + CAP, false));
            places.add(new NameMark(name, top.x - 0.4, top.y - 1.6, false));
            places.add(new NameMark(name, foot.x - 0.4, foot.y + 1.4 + CAP, false));
        }
        LengthIndexedLine index = new LengthIndexedLine(line);
        for (double share : new double[] {0.5, 0.3, 0.7, 0.15, 0.85}) {
            Coordinate at = index.extractPoint(share * line.getLength());
            if (steep) {
                places.add(new NameMark(name, at.x + 1.5, at.y, true));
                places.add(new NameMark(name, at.x - 1.2 - CAP, at.y, true));
            } else {
                double left =
                        Math.min(Math.max(at.x - width / 2, Math.min(a.x, b.x) + 1), Math.max(a.x, b.x) - 2 - width);
                places.add(new NameMark(name, left, at.y - 1.2, false));
                places.add(new NameMark(name, left, at.y + 1 + CAP, false));
            }
        }
        return onEdge ? outward(places) : places;
    }

    /** Along the deck's edge the names outside come first. */
    private List<NameMark> outward(List<NameMark> places) {
        Polygon deck = view.onPaper(spec.damage().face().outline());
        List<NameMark> outside = places.stream()
                .filter(n ->
                        !deck.contains(Shapes.point(n.box().middleX(), n.box().middleY())))
                .toList();
        return outside.isEmpty() ? places : outside;
    }
}
