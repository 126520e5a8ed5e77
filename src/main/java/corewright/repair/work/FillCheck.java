package corewright.repair.work;

import corewright.contour.Raster;
import corewright.repair.mix.Curing;
import corewright.repair.plan.Fill;
import corewright.survey.SurfaceTemperature;
import corewright.survey.settings.Resin;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Warmth of the skin during cure against the simulated fill.
 *
 * <p>The mix warms the skin while it cures. At 25 °C the skin over 3 mm of foam or more stands 3 °C above sound places from
 * about 10 to 35 minutes after its mix (one-dimensional conduction through skin, foam and balsa; see docs/repair.md); the
 * window goes with the time to gel and follows the doubling rule, see {@link Curing#warmFromS}. Warm proves that mix is there, not that it is full; under a low gap cold proves nothing.
 */
public final class FillCheck {
    private static final double ARRIVED_C = 3;
    private static final double DOUBTFUL_C = 1.5;

    /** Under lower gaps the warmth is too little to tell. */
    private static final double TELLING_GAP_MM = 2;

    private FillCheck() {}

    /** What a reading says. */
    public enum Verdict {
        ARRIVED,
        NOT_ARRIVED,
        DOUBTFUL,
        OUT_OF_TIME
    }

    /**
     * One reading, judged.
     *
     * @param expected the simulation says that the mix is there
     * @param surprise arrived where it was not expected, or not where it was
     */
    public record Place(SurfaceTemperature reading, Verdict verdict, boolean expected, boolean surprise) {
        /** The same of the reading as it was written. */
        Place of(SurfaceTemperature written) {
            return new Place(written, verdict, expected, surprise);
        }
    }

    /**
     * Judges the readings of one region's face.
     *
     * @param soundC mean of readings over sound places at about the same time
     * @param gapMm empty height, on any raster of the face
     */
    public static List<Place> of(
            List<SurfaceTemperature> readings, Fill fill, Raster gapMm, double soundC, Resin resin, double deckC) {
        List<Place> places = new ArrayList<>();
        Optional<Raster> arrival = fill.arrivalS();
        for (SurfaceTemperature reading : readings) {
            Optional<Double> at = arrival.flatMap(r -> valueAt(r, reading));
            double gap = valueAt(gapMm, reading).orElse(0.0);
            Verdict verdict = verdict(reading, at, gap, soundC, Curing.of(resin, deckC));
            boolean surprise =
                    verdict == Verdict.ARRIVED && at.isEmpty() || verdict == Verdict.NOT_ARRIVED && at.isPresent();
            places.add(new Place(reading, verdict, at.isPresent(), surprise));
        }
        return places;
    }

    private static Verdict verdict(
            SurfaceTemperature reading, Optional<Double> arrivalS, double gapMm, double soundC, Curing curing) {
        double ageS = reading.afterS() - arrivalS.orElse(0.0);
        boolean warm = reading.valueC() != null
                ? reading.valueC() - soundC >= ARRIVED_C
                : Objects.requireNonNullElse(reading.warm(), false);
        if (warm) {
            return Verdict.ARRIVED;
        }
        if (ageS < curing.warmFromS() || arrivalS.isPresent() && ageS > curing.warmUntilS()) {
            return Verdict.OUT_OF_TIME;
        }
        boolean tepid = reading.valueC() != null && reading.valueC() - soundC >= DOUBTFUL_C;
        return tepid || gapMm < TELLING_GAP_MM ? Verdict.DOUBTFUL : Verdict.NOT_ARRIVED;
    }

    private static Optional<Double> valueAt(Raster raster, SurfaceTemperature reading) {
        int column = (int) Math.floor((reading.spot().xMm() - raster.x0()) / raster.cell());
        int row = (int) Math.floor((reading.spot().yMm() - raster.y0()) / raster.cell());
        boolean on = row >= 0 && column >= 0 && row < raster.rows() && column < raster.columns();
        return on && !Double.isNaN(raster.at(row, column)) ? Optional.of(raster.at(row, column)) : Optional.empty();
    }
}
