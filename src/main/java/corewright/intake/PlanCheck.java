package corewright.intake;

import corewright.intake.text.Notes;
import corewright.intake.text.Numerals;
import corewright.overlay.Overlay;
import corewright.survey.About;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Feature.Opening;
import corewright.survey.Origin;
import corewright.survey.Subject;
import corewright.survey.Tolerances;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** Checks a face's features against its outline, and the outline against good sense. */
final class PlanCheck {
    /** About 2500 m² at the usual 25 mm cell: no boat has a larger face, and the rasters still fit in memory. */
    private static final double MOST_CELLS = 4e6;

    private final Face face;
    private final Origin outline;
    private final Notes notes;

    PlanCheck(Face face, Origin outline, Notes notes) {
        this.face = face;
        this.outline = outline;
        this.notes = notes;
    }

    void check(double cellMm) {
        size(cellMm);
        PreparedGeometry deck = PreparedGeometryFactory.prepare(face.outline());
        IndexedFacetDistance edge = new IndexedFacetDistance(face.outline());
        for (Feature feature : face.features()) {
            if (deck.intersects(feature.geometry())) {
                continue;
            }
            if (!(feature instanceof Opening) && edge.isWithinDistance(feature.geometry(), Tolerances.TAPE_MM)) {
                continue; // a beam along the deck edge, drawn in whole millimetres
            }
            if (feature instanceof Opening) {
                notes.complain(
                        feature.origin(), "wkt", "found an opening that does not touch face \"" + face.name() + "\"");
            } else {
                String message = label(feature) + " lies outside the outline of " + face.name() + ".";
                notes.doubt(
                        feature.origin(),
                        About.of(face, feature),
                        Subject.PLAN,
                        message,
                        "It has no effect on the face.");
            }
        }
        if (deckLeftMm2() < 1) {
            notes.complain(outline, "wkt", "the openings leave nothing of face \"" + face.name() + "\"");
        }
    }

    private void size(double cellMm) {
        Envelope box = face.outline().getEnvelopeInternal();
        double cells = box.getWidth() / cellMm * (box.getHeight() / cellMm);
        String size = String.format(
                Locale.ROOT, "%s x %s mm", Numerals.plain(box.getWidth()), Numerals.plain(box.getHeight()));
        if (cells > MOST_CELLS) {
            notes.complain(
                    outline,
                    "wkt",
                    "the face measures " + size + ", which is too large at a cell of " + Numerals.plain(cellMm)
                            + " mm: check units.length, or set numerics.cell_mm");
        }
    }

    private double deckLeftMm2() {
        List<Geometry> openings =
                face.all(Opening.class).stream().map(Feature::geometry).toList();
        if (openings.isEmpty()) {
            return face.outline().getArea();
        }
        Geometry open = Overlay.union(openings);
        return Overlay.difference(face.outline(), open).getArea();
    }

    private static String label(Feature feature) {
        String kind = feature.getClass().getSimpleName().toLowerCase(Locale.ROOT);
        return feature.name().isEmpty() ? "A " + kind : "The " + kind + " \"" + feature.name() + "\"";
    }
}
