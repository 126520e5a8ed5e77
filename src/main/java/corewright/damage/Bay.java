package corewright.damage;

import org.locationtech.jts.geom.Polygon;

/** Continuous core on a face, bounded by outline, openings and dividers; named {@code <face>-B1} by x, then y. */
public record Bay(String name, String face, Polygon area) {}
