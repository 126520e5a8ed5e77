package corewright.damage;

import corewright.overlay.Overlay;
import corewright.overlay.Pieces;
import corewright.survey.About;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Finding;
import corewright.survey.Spot;
import corewright.survey.Subject;
import corewright.survey.Survey;
import corewright.survey.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * A face cut into bays.
 *
 * @param bays continuous core, by x, then y of the centroid
 * @param solids what is neither opening nor core: solid laminate and pads
 */
record Plan(Face face, List<Bay> bays, List<Polygon> solids, List<Finding> findings) {
    /** Why a place has no core: what kind of fact it is, and what the reading does there. */
    record OffCore(Subject subject, String words) {}

    /** Smaller left-overs of a cut are slivers of rounding. */
    private static final double SLIVER_MM2 = 1;

    /** A face of a survey, with the solid edge of its own laminate. */
    static Plan of(Survey survey, Face face) {
        return of(face, survey.laminate(face.laminate()).solidEdgeMm());
    }

    /**
     * Outline less openings and solids, cut by every divider that crosses it from side to side.
     *
     * @param solidEdgeMm without core so far in from the outline and from openings
     */
    static Plan of(Face face, double solidEdgeMm) {
        Geometry deck = face.outline();
        for (Feature.Opening opening : face.all(Feature.Opening.class)) {
            deck = Overlay.difference(deck, opening.geometry());
        }
        Geometry core = deck;
        for (Feature.Solid solid : face.all(Feature.Solid.class)) {
            core = Overlay.difference(core, solid.geometry());
        }
        if (solidEdgeMm > 0) {
            core = Overlay.intersection(core, inside(deck, solidEdgeMm));
        }
        Geometry solids = Overlay.difference(deck, core);
        List<Finding> findings = new ArrayList<>();
        List<Polygon> pieces = Pieces.cut(
                core,
                face.all(Feature.Divider.class).stream()
                        .map(Feature.Divider::geometry)
                        .toList(),
                SLIVER_MM2);
        for (Feature.Divider divider : face.all(Feature.Divider.class)) {
            if (!bounds(divider.geometry(), pieces)) {
                findings.add(endsInside(face, divider));
            }
        }
        List<Bay> bays = new ArrayList<>();
        for (Polygon piece : pieces) {
            bays.add(new Bay(face.name() + "-B" + (bays.size() + 1), face.name(), piece));
        }
        return new Plan(face, List.copyOf(bays), Pieces.polygons(solids), List.copyOf(findings));
    }

    /** Corners stay corners, as a laminator keeps to a straight edge. */
    private static Geometry inside(Geometry deck, double widthMm) {
        return BufferOp.bufferOp(
                deck, -widthMm, new BufferParameters(1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 2));
    }

    /** The bay a reading belongs to, or null when it lies off the core. */
    @Nullable
    Bay bayAt(Spot spot) {
        Point point = face.outline().getFactory().createPoint(spot.coordinate());
        Bay nearest = null;
        double least = Tolerances.TAPE_MM;
        for (Bay bay : bays) {
            double distance = bay.area().getEnvelopeInternal().distance(point.getEnvelopeInternal()) > least
                    ? Double.MAX_VALUE
                    : bay.area().distance(point);
            if (distance == 0) {
                return bay;
            }
            if (distance <= least) {
                least = distance;
                nearest = bay;
            }
        }
        return nearest;
    }

    /** Why a place has no core, for a finding. */
    OffCore offCore(Spot spot) {
        Point point = face.outline().getFactory().createPoint(spot.coordinate());
        for (Feature.Opening opening : face.all(Feature.Opening.class)) {
            if (opening.geometry().covers(point)) {
                return new OffCore(
                        Subject.IN_AN_OPENING,
                        "lies in " + (opening.name().isBlank() ? "an opening" : "the opening " + opening.name()));
            }
        }
        return solids.stream().anyMatch(s -> s.covers(point))
                ? new OffCore(Subject.OFF_THE_CORE, "lies over solid laminate, where there is no core")
                : new OffCore(Subject.OUTSIDE, "lies outside the outline");
    }

    /** Whether some part of the line is a common edge of two bays, or runs along one's boundary. */
    private static boolean bounds(LineString divider, List<Polygon> pieces) {
        return pieces.stream()
                .map(p -> p.getBoundary().buffer(Tolerances.LINE_MM))
                .anyMatch(edge -> Overlay.intersection(edge, divider).getLength() > 1);
    }

    private static Finding endsInside(Face face, Feature.Divider divider) {
        return new Finding(
                Finding.Severity.DOUBT,
                divider.origin(),
                About.of(face, divider),
                Subject.DIVIDER,
                String.format(Locale.ROOT, "the divider %s does not cross the core from edge to edge", divider.name()),
                "it parts no bays: water is taken to pass around its end");
    }
}
