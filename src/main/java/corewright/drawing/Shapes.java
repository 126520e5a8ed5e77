package corewright.drawing;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;

/** Shared ground for geometry on paper. */
final class Shapes {
    static final GeometryFactory FACTORY = new GeometryFactory();

    private Shapes() {}

    static Point point(double x, double y) {
        return FACTORY.createPoint(new Coordinate(x, y));
    }
}
