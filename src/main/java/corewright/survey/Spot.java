package corewright.survey;

import corewright.survey.settings.Check;
import org.locationtech.jts.geom.Coordinate;

/** A place on a face: millimetres aft and to starboard of the survey's datum. */
public record Spot(String face, double xMm, double yMm) {
    public Spot {
        Check.finite("xMm", xMm);
        Check.finite("yMm", yMm);
    }

    /** The same place as a JTS coordinate. */
    public Coordinate coordinate() {
        return new Coordinate(xMm, yMm);
    }
}
