package corewright.decision.drying;

import corewright.damage.Region;
import corewright.repair.pattern.DrillPlaces;
import corewright.survey.Face;
import corewright.survey.Moisture;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * Where a region is opened to dry and where it is read meanwhile.
 *
 * @param holes through one skin and the core, in rows, every other row half a step on: each dries the circle that {@link RoundHole} has
 * @param reads where it was read already with one meter from one side, at most three, the wettest first; read there again, it is told
 *     what has left
 */
public record DryingPattern(List<Spot> holes, List<Spot> reads) {
    private static final double ROW = Math.sqrt(3) / 2;
    private static final int MOST_READS = 3;

    public DryingPattern {
        holes = List.copyOf(holes);
        reads = List.copyOf(reads);
    }

    /** Holes keep off fittings, supports and what lies below; one row runs through the place of the region's name. */
    public static DryingPattern of(Survey survey, Region region) {
        return new DryingPattern(holes(survey, region), reads(survey, region));
    }

    /** From one row to the next, mm. */
    public static double rowMm(double spacingMm) {
        return ROW * spacingMm;
    }

    private static List<Spot> holes(Survey survey, Region region) {
        double step = survey.settings().drying().holeSpacingMm();
        double clearance = survey.settings().drilling().edgeClearanceMm();
        Face face = survey.face(region.face());
        Coordinate middle = region.label().getCoordinate();
        Envelope box = region.likely().getEnvelopeInternal();
        List<Spot> holes = new ArrayList<>();
        int first = (int) Math.ceil((box.getMinY() - middle.y) / rowMm(step));
        int last = (int) Math.floor((box.getMaxY() - middle.y) / rowMm(step));
        for (int row = first; row <= last; row++) {
            double shift = row % 2 == 0 ? 0 : step / 2;
            int from = (int) Math.ceil((box.getMinX() - middle.x - shift) / step);
            int to = (int) Math.floor((box.getMaxX() - middle.x - shift) / step);
            for (int i = from; i <= to; i++) {
                Coordinate at = new Coordinate(middle.x + shift + i * step, middle.y + row * rowMm(step));
                if (region.likely().covers(region.likely().getFactory().createPoint(at))
                        && DrillPlaces.clear(face, at, clearance)) {
                    holes.add(new Spot(region.face(), at.x, at.y));
                }
            }
        }
        return holes;
    }

    private static List<Spot> reads(Survey survey, Region region) {
        Map<List<Object>, List<Moisture>> alike = survey.readings().on(region.face()).moisture().stream()
                .filter(m -> !m.offScale())
                .filter(m -> region.likely()
                        .covers(region.likely()
                                .getFactory()
                                .createPoint(m.spot().coordinate())))
                .collect(Collectors.groupingBy(
                        m -> List.of(m.meter(), m.side()), LinkedHashMap::new, Collectors.toList()));
        return alike.values().stream().max(Comparator.comparingInt(List::size)).orElse(List.of()).stream()
                .sorted(Comparator.comparingDouble(Moisture::value).reversed())
                .map(Moisture::spot)
                .distinct()
                .limit(MOST_READS)
                .toList();
    }
}
