package corewright.drawing;

import org.locationtech.jts.geom.GeometryFactory;

/** Shared ground for geometry on paper. */
final class Shapes {
    static final GeometryFactory FACTORY = new GeometryFactory();

    private Shapes() {}
}
