package corewright.drawing.kit;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** Shared ground for geometry on paper. */
public final class Shapes {
    public static final GeometryFactory FACTORY = new GeometryFactory();

    private Shapes() {}

    public static Polygon rectangle(Box box) {
        return (Polygon) FACTORY.toGeometry(new Envelope(box.x(), box.right(), box.y(), box.bottom()));
    }

    public static Point point(double x, double y) {
        return FACTORY.createPoint(new Coordinate(x, y));
    }
}
