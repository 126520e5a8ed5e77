package corewright.store;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.io.WKTWriter;

/** Geometries as text, every number with all its digits. */
final class EveryDigit {
    /** The writer ends numbers after as many decimals as this says; the usual 16 are one too few below 1. */
    private static final PrecisionModel EVERY_DIGIT = new PrecisionModel() {
        private static final long serialVersionUID = 1L;

        @Override
        public int getMaximumSignificantDigits() {
            return 325;
        }
    };

    private EveryDigit() {}

    static String wkt(Geometry geometry) {
        WKTWriter writer = new WKTWriter();
        writer.setPrecisionModel(EVERY_DIGIT);
        return writer.write(geometry);
    }
}
