package corewright.drawing.kit;

import corewright.damage.FaceDamage;
import corewright.overlay.Overlay;
import corewright.survey.Face;
import corewright.survey.Feature;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** The part of a face round some places, so that a map of them may be larger. */
public final class Cutout {
    /** Deck shown round the places, survey millimetres. */
    private static final double MARGIN_MM = 60;

    private Cutout() {}

    /**
     * The face cut down to a rectangle round the places and round every opening that this touches; the whole face where
     * the rectangle would cut it in two.
     */
    public static FaceDamage of(FaceDamage whole, List<Polygon> places) {
        Face face = whole.face();
        Envelope window = new Envelope();
        places.forEach(p -> window.expandToInclude(p.getEnvelopeInternal()));
        window.expandBy(MARGIN_MM);
        for (Feature.Opening opening : face.all(Feature.Opening.class)) {
            Envelope hatch = opening.geometry().getEnvelopeInternal();
            if (hatch.intersects(window)) {
                hatch.expandBy(MARGIN_MM / 2); // or its edge would lie on the cut
                window.expandToInclude(hatch);
            }
        }
        Geometry rectangle = Shapes.FACTORY.toGeometry(window);
        Geometry part = cut(face.outline(), rectangle);
        if (places.isEmpty() || !(part instanceof Polygon outline)) {
            return whole;
        }
        List<Feature> features = new ArrayList<>();
        face.features().forEach(f -> features.addAll(inside(f, rectangle)));
        Face shown = new Face(
                face.name(), face.tiltDeg(), face.uphillDeg(), outline, face.edge(), face.laminate(), features);
        return new FaceDamage(
                shown,
                whole.bays(),
                whole.surfaces(),
                whole.regions(),
                whole.sound(),
                whole.undecided(),
                whole.damagedMm2(),
                whole.voidMm3(),
                whole.next(),
                whole.findings(),
                whole.notes());
    }

    private static List<Feature> inside(Feature feature, Geometry rectangle) {
        if (feature instanceof Feature.Support s) {
            return lines(s.geometry(), rectangle).stream()
                    .<Feature>map(l -> new Feature.Support(s.origin(), s.name(), l, s.edge()))
                    .toList();
        }
        if (feature instanceof Feature.Divider d) {
            return lines(d.geometry(), rectangle).stream()
                    .<Feature>map(l -> new Feature.Divider(d.origin(), d.name(), l))
                    .toList();
        }
        if (feature instanceof Feature.Solid s) {
            return cut(s.geometry(), rectangle) instanceof Polygon p && !p.isEmpty()
                    ? List.of(new Feature.Solid(s.origin(), s.name(), p))
                    : List.of();
        }
        return rectangle.covers(feature.geometry().getCentroid()) ? List.of(feature) : List.of();
    }

    private static List<LineString> lines(LineString line, Geometry rectangle) {
        Geometry kept = cut(line, rectangle);
        List<LineString> lines = new ArrayList<>();
        for (int i = 0; i < kept.getNumGeometries(); i++) {
            if (kept.getGeometryN(i) instanceof LineString part && !part.isEmpty()) {
                lines.add(part);
            }
        }
        return lines;
    }

    private static Geometry cut(Geometry geometry, Geometry rectangle) {
        return Overlay.intersection(geometry, rectangle);
    }
}
