package corewright.survey;

import java.util.List;

/**
 * All readings of a survey, each kind in the order of its files.
 *
 * @param curedTaps over filled places once the mix is hard; they say nothing of the deck before the work, so that only the
 *     fill check reads them
 */
public record Readings(
        List<Moisture> moisture,
        List<Tap> taps,
        List<Probe> probes,
        List<Feeler> feelers,
        List<Plug> plugs,
        List<SurfaceTemperature> temperatures,
        List<Tap> curedTaps) {
    public Readings {
        moisture = List.copyOf(moisture);
        taps = List.copyOf(taps);
        probes = List.copyOf(probes);
        feelers = List.copyOf(feelers);
        plugs = List.copyOf(plugs);
        temperatures = List.copyOf(temperatures);
        curedTaps = List.copyOf(curedTaps);
    }

    /** Nothing tapped after cure. */
    public Readings(
            List<Moisture> moisture,
            List<Tap> taps,
            List<Probe> probes,
            List<Feeler> feelers,
            List<Plug> plugs,
            List<SurfaceTemperature> temperatures) {
        this(moisture, taps, probes, feelers, plugs, temperatures, List.of());
    }

    /** Whether anyone looked under the skin: without that no empty space was measured, only heard. */
    public boolean coreSeen() {
        return !probes.isEmpty() || !feelers.isEmpty() || !plugs.isEmpty();
    }

    /** The readings taken on one face. */
    public Readings on(String face) {
        return new Readings(
                only(moisture, face),
                only(taps, face),
                only(probes, face),
                only(feelers, face),
                only(plugs, face),
                only(temperatures, face),
                only(curedTaps, face));
    }

    /** Where all are on it, the list itself: a large one is asked for again and again. */
    private static <R extends Reading> List<R> only(List<R> readings, String face) {
        for (R reading : readings) {
            if (!reading.spot().face().equals(face)) {
                return readings.stream()
                        .filter(r -> r.spot().face().equals(face))
                        .toList();
            }
        }
        return readings;
    }
}
