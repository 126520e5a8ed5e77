package corewright.sandwich.spec;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/** A load on the outer skin; forces are positive inward. */
public sealed interface Load {
    /** A force spread evenly over the part of an area that lies on the panel. */
    record Force(Geometry area, double forceN) implements Load {}

    /** A pressure on the whole panel. One kilopascal is 0.001 MPa. */
    record Pressure(double pressureKPa) implements Load {}

    /** A force spread evenly along the part of a line that lies on the panel. */
    record Line(LineString line, double forceN) implements Load {}

    /**
     * A moment on a fitting's base, as pressure that varies linearly over the area and has no resultant force. {@code
     * mxNmm} presses harder at larger x (it is the sum of force times x), {@code myNmm} at larger y.
     */
    record Moment(Geometry area, double mxNmm, double myNmm) implements Load {}

    /** A foot: the force on a square of {@code sideMm}, sides along x and y, about a place. */
    static Force foot(Coordinate centre, double sideMm, double forceN) {
        Envelope square = new Envelope(centre);
        square.expandBy(sideMm / 2);
        return new Force(new GeometryFactory().toGeometry(square), forceN);
    }
}
