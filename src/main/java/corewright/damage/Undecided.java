package corewright.damage;

import org.locationtech.jts.geom.Polygon;

/** An area where the readings leave the question open; {@code why} is a sentence. */
public record Undecided(String face, Polygon area, double pWetMean, String why) {}
