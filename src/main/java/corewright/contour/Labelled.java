package corewright.contour;

import org.locationtech.jts.geom.Polygon;

/** A polygon of a coverage and what it is. Labels are compared with {@code equals}. */
public record Labelled<T>(Polygon polygon, T label) {}
