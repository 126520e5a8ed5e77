package corewright.survey;

import java.util.List;

/** All readings of a survey, each kind in the order of its files. */
public record Readings(
        List<Moisture> moisture,
        List<Tap> taps,
        List<Probe> probes,
        List<Feeler> feelers,
        List<Plug> plugs,
        List<SurfaceTemperature> temperatures) {
    public Readings {
        moisture = List.copyOf(moisture);
        taps = List.copyOf(taps);
        probes = List.copyOf(probes);
        feelers = List.copyOf(feelers);
        plugs = List.copyOf(plugs);
        temperatures = List.copyOf(temperatures);
    }

    /** The readings taken on one face. */
    public Readings on(String face) {
        return new Readings(
                only(moisture, face),
                only(taps, face),
                only(probes, face),
                only(feelers, face),
                only(plugs, face),
                only(temperatures, face));
    }

    private static <R extends Reading> List<R> only(List<R> readings, String face) {
        return readings.stream().filter(r -> r.spot().face().equals(face)).toList();
    }
}
