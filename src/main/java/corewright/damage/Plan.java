package corewright.damage;

import corewright.overlay.AreaIndex;
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
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** A face cut into bays; asked for by every reading. */
final class Plan {
    /** Why a place has no core: what kind of fact it is, and what the reading does there. */
    record OffCore(Subject subject, String words) {}

    /** Smaller left-overs of a cut are slivers of rounding. */
    private static final double SLIVER_MM2 = 1;

    private final List<Bay> bays;
    private final List<Polygon> solids;
    private final List<Finding> findings;
    private final AreaIndex<Bay> bayOf;
    private final AreaIndex<Feature.Opening> openingOf;
    private final AreaIndex<Polygon> solidOf;

    private Plan(Face face, List<Bay> bays, List<Polygon> solids, List<Finding> findings) {
        this.bays = List.copyOf(bays);
        this.solids = List.copyOf(solids);
        this.findings = List.copyOf(findings);
        bayOf = new AreaIndex<>(bays, Bay::area);
        openingOf = new AreaIndex<>(face.all(Feature.Opening.class), Feature.Opening::geometry);
        solidOf = new AreaIndex<>(solids, s -> s);
    }

    /** Continuous core, by x, then y of the centroid. */
    List<Bay> bays() {
        return bays;
    }

    /** What is neither opening nor core: solid laminate and pads. */
    List<Polygon> solids() {
        return solids;
    }

    List<Finding> findings() {
        return findings;
    }

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
        Geometry deck = without(
                face.outline(),
                face.all(Feature.Opening.class).stream()
                        .map(Feature.Opening::geometry)
                        .toList());
        Geometry core = without(
                deck,
                face.all(Feature.Solid.class).stream()
                        .map(Feature.Solid::geometry)
                        .toList());
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
        return new Plan(face, bays, Pieces.polygons(solids), findings);
    }

    private static Geometry without(Geometry area, List<? extends Geometry> holes) {
        return holes.isEmpty() ? area : Overlay.difference(area, Overlay.union(holes));
    }

    /** Corners stay corners, as a laminator keeps to a straight edge. */
    private static Geometry inside(Geometry deck, double widthMm) {
        return BufferOp.bufferOp(
                deck, -widthMm, new BufferParameters(1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 2));
    }

    /** The bay a reading belongs to, or null when it lies off the core. */
    @Nullable
    Bay bayAt(Spot spot) {
        return bayOf.nearest(spot.coordinate(), Tolerances.TAPE_MM).orElse(null);
    }

    /** Why a place has no core, for a finding. */
    OffCore offCore(Spot spot) {
        return openingOf
                .firstAt(spot.coordinate())
                .map(o -> new OffCore(
                        Subject.IN_AN_OPENING,
                        "lies in " + (o.name().isBlank() ? "an opening" : "the opening " + o.name())))
                .orElseGet(() -> solidOf.firstAt(spot.coordinate()).isPresent()
                        ? new OffCore(Subject.OFF_THE_CORE, "lies over solid laminate, where there is no core")
                        : new OffCore(Subject.OUTSIDE, "lies outside the outline"));
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
