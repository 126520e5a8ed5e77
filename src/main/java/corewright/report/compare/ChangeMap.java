package corewright.report.compare;

import corewright.comparison.ChangedArea;
import corewright.comparison.FaceComparison;
import corewright.comparison.NewPlace;
import corewright.comparison.RegionChange;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.ChangePattern;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.PlanView;
import corewright.drawing.kit.Shapes;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.marks.Structure;
import corewright.survey.Face;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/** The map of change of a face: mended, left, new, not proven, not read again, each place with its id. */
final class ChangeMap {
    private static final Type ID = new Type(Typeface.TEXT_BOLD, 8);
    private static final Type WORDS = new Type(Typeface.TEXT, 8);
    private static final double SWATCH_WIDTH = 9;
    private static final double SWATCH_HEIGHT = 5;
    private static final double PAD = 0.5;

    /** Smaller pieces on paper, square millimetres, are dust of two outlines that nearly agree. */
    private static final double DUST = 1.5;

    private ChangeMap() {}

    private static ChangePattern pattern(ChangedArea.Kind kind) {
        return ChangePattern.valueOf(kind.name());
    }

    private static String words(ChangedArea.Kind kind) {
        return switch (kind) {
            case MENDED -> "mended, proven";
            case REMAINS -> "still damaged";
            case NEW -> "new, proven";
            case NOT_PROVEN -> "the maps differ, not proven";
            case NOT_READ -> "not read in both";
        };
    }

    static void paint(Paper paper, Face face, FaceComparison comparison, Box box, double scale) {
        Envelope extent = face.outline().getEnvelopeInternal();
        PlanView view = PlanView.centred(face, extent, scale, box.middleX(), box.middleY());
        for (ChangedArea area : ChangedArea.of(comparison)) {
            Polygon onPaper = view.onPaper(area.area());
            if (onPaper.getArea() >= DUST) {
                pattern(area.kind()).paint(paper, onPaper);
            }
        }
        Structure.paint(paper, view, face, Structure.Shows.ALL);
        ids(paper, comparison, view);
    }

    /** Every id inside its place, or beside it where another stands there. */
    private static void ids(Paper paper, FaceComparison comparison, PlanView view) {
        Map<String, Polygon> places = new LinkedHashMap<>();
        for (RegionChange region : comparison.regions()) {
            places.put(region.region().id(), region.region().likely());
        }
        for (NewPlace place : comparison.news()) {
            places.put(place.id(), place.area());
        }
        List<Box> taken = new ArrayList<>();
        places.forEach((id, area) -> {
            Box label = free(id, view.onPaper(area.getInteriorPoint()).getCoordinate(), taken);
            taken.add(label);
            paper.haloText(id, label.middleX(), label.middleY() + ID.capMm() / 2, ID, Anchor.CENTRE, 1.2);
        });
    }

    private static Box free(String id, Coordinate at, List<Box> taken) {
        Box middle = new Box(at.x - ID.width(id) / 2, at.y - ID.capMm() / 2, ID.width(id), ID.capMm()).grown(PAD);
        for (double[] step : new double[][] {{0, 0}, {0, -4}, {0, 4}, {5, 0}, {-5, 0}, {5, -4}, {-5, 4}, {0, -8}}) {
            Box trial = middle.movedTo(middle.x() + step[0], middle.y() + step[1]);
            if (taken.stream().noneMatch(trial::meets)) {
                return trial;
            }
        }
        return middle;
    }

    /** What the map uses, side by side from {@code left}; returns the height taken. */
    static double legend(Paper paper, FaceComparison comparison, double left, double top, double width) {
        double x = left;
        double y = top;
        List<ChangedArea.Kind> kinds = ChangedArea.of(comparison).stream()
                .map(ChangedArea::kind)
                .distinct()
                .sorted()
                .toList();
        for (ChangedArea.Kind kind : kinds) {
            double takes = SWATCH_WIDTH + 1.6 + WORDS.width(words(kind)) + 5;
            if (x + takes > left + width) {
                x = left;
                y += SWATCH_HEIGHT + 1.4;
            }
            Box swatch = new Box(x, y, SWATCH_WIDTH, SWATCH_HEIGHT);
            pattern(kind).paint(paper, Shapes.rectangle(swatch));
            double foot = y + (SWATCH_HEIGHT + WORDS.capMm()) / 2;
            paper.text(words(kind), x + SWATCH_WIDTH + 1.6, foot, WORDS, Anchor.LEFT);
            x += takes;
        }
        return kinds.isEmpty() ? 0 : y + SWATCH_HEIGHT - top;
    }
}
