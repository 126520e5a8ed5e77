package corewright.desktop.sketch;

import corewright.survey.Feature;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** A feature with another shape and everything else as it was. */
public final class FeatureShape {
    private FeatureShape() {}

    public static Feature with(Feature f, Geometry g) {
        if (f instanceof Feature.Opening o) {
            return new Feature.Opening(o.origin(), o.name(), (Polygon) g, o.edge(), o.coaming());
        }
        if (f instanceof Feature.Divider d) {
            return new Feature.Divider(d.origin(), d.name(), (LineString) g);
        }
        if (f instanceof Feature.Support s) {
            return new Feature.Support(s.origin(), s.name(), (LineString) g, s.edge());
        }
        if (f instanceof Feature.Fitting t) {
            return new Feature.Fitting(t.origin(), t.name(), g, t.metal(), t.loadBearing(), t.keepoutMm());
        }
        if (f instanceof Feature.Solid s) {
            return new Feature.Solid(s.origin(), s.name(), (Polygon) g);
        }
        if (f instanceof Feature.LaminateArea a) {
            return new Feature.LaminateArea(a.origin(), a.name(), (Polygon) g, a.laminate());
        }
        if (f instanceof Feature.Disturbance d) {
            return new Feature.Disturbance(d.origin(), d.name(), g);
        }
        return new Feature.Access(f.origin(), f.name(), g);
    }
}
