package corewright.repair.pattern;

import corewright.survey.Face;
import org.locationtech.jts.geom.Coordinate;

/** Which way is up on a face. */
public record Slope(boolean sloping, double uphillX, double uphillY) {
    /** Flatter than this counts as flat: a boat's trim is not known better. Practice. */
    private static final double FLAT_DEG = 0.5;

    public static Slope of(Face face) {
        double tilt = face.slopeDeg();
        double uphill = Math.toRadians(face.uphillDeg());
        return new Slope(tilt >= FLAT_DEG, Math.cos(uphill), Math.sin(uphill));
    }

    /** Distance uphill along the face, millimetres. */
    public double height(Coordinate at) {
        return at.x * uphillX + at.y * uphillY;
    }
}
