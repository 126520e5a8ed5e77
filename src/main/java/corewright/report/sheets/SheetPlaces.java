package corewright.report.sheets;

import corewright.drawing.kit.Figures;
import corewright.drawing.kit.GridPoints;
import corewright.survey.Face;
import corewright.survey.Moisture;
import corewright.survey.Readings;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.Tap;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The places of a face in the order in which they are walked and typed in.
 *
 * @param again the places of an earlier survey, with what was read there
 */
record SheetPlaces(Face face, List<Place> places, boolean again) {
    /** @param last what was read there, as it was written: 23 d; empty where nothing was */
    record Place(int number, Spot spot, String last) {}

    /** Places nearer in x stand in one row. */
    private static final double ROW_MM = 60;

    /** A tap as near to a meter's place was heard there. */
    private static final double TAP_MM = 60;

    SheetPlaces {
        places = List.copyOf(places);
    }

    /** Where the meter stood last time, else where the hammer fell; without readings a grid as the walk in the window has it. */
    static SheetPlaces of(Survey survey, Face face, double spacingMm) {
        Readings r = survey.readings().on(face.name());
        List<Spot> before = (r.moisture().isEmpty()
                        ? r.taps().stream().map(Tap::spot)
                        : r.moisture().stream().map(Moisture::spot))
                .distinct()
                .toList();
        boolean again = !before.isEmpty();
        List<Spot> walked = again ? GridPoints.walked(before, ROW_MM) : GridPoints.over(face, spacingMm);
        Map<Spot, String> values = values(r);
        List<Place> places = new ArrayList<>();
        for (Spot spot : walked) {
            String value = values.getOrDefault(spot, "");
            String tap = tap(r, spot);
            places.add(new Place(places.size() + 1, spot, (value + " " + tap).strip()));
        }
        return new SheetPlaces(face, places, again);
    }

    /** The last value written at a place. */
    private static Map<Spot, String> values(Readings readings) {
        Map<Spot, String> values = new LinkedHashMap<>();
        for (Moisture m : readings.moisture()) {
            values.put(m.spot(), (m.offScale() ? ">" : "") + Figures.atMost(m.value(), 1));
        }
        return values;
    }

    private static String tap(Readings readings, Spot spot) {
        return readings.taps().stream()
                .filter(t -> t.sound() != null)
                .filter(t -> t.spot().coordinate().distance(spot.coordinate()) <= TAP_MM)
                .min(Comparator.comparingDouble(t -> t.spot().coordinate().distance(spot.coordinate())))
                .map(t -> t.sound() == Sound.SOUND ? "S" : t.sound() == Sound.DULL ? "D" : "H")
                .orElse("");
    }
}
