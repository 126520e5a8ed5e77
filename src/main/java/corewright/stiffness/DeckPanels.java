package corewright.stiffness;

import corewright.overlay.Overlay;
import corewright.overlay.Pieces;
import corewright.survey.About;
import corewright.survey.EdgeSupport;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Finding;
import corewright.survey.Laminate;
import corewright.survey.Origin;
import corewright.survey.Spot;
import corewright.survey.Subject;
import corewright.survey.Survey;
import corewright.survey.Tolerances;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * A face cut into panels.
 *
 * @param panels by x, then y of the centroid
 * @param findings supports that bound no panel, and laminates that a panel's model leaves out
 */
public record DeckPanels(List<DeckPanel> panels, List<Finding> findings) {
    /** Supports drawn a little short of the edge still reach it: the width of a flange, our choice. */
    private static final double REACH_MM = 25;

    /** Smaller left-overs bear no foot. */
    private static final double SLIVER_MM2 = 10_000;

    public DeckPanels {
        panels = List.copyOf(panels);
        findings = List.copyOf(findings);
    }

    /** The panels that outline, openings and supports make. */
    public static DeckPanels of(Survey survey, Face face) {
        return new Cut(survey, face).panels();
    }

    /** The work of cutting one face. */
    private static final class Cut {
        private final Survey survey;
        private final Face face;
        private final List<Finding> findings = new ArrayList<>();

        Cut(Survey survey, Face face) {
            this.survey = survey;
            this.face = face;
        }

        DeckPanels panels() {
            Geometry deck = face.outline();
            for (Feature.Opening opening : face.all(Feature.Opening.class)) {
                deck = Overlay.difference(deck, opening.geometry());
            }
            List<LineString> supports = face.all(Feature.Support.class).stream()
                    .map(s -> lengthened(s.geometry()))
                    .toList();
            List<DeckPanel> panels = new ArrayList<>();
            for (Polygon piece : Pieces.cut(deck, supports, SLIVER_MM2)) {
                panels.add(panel(face.name() + "-P" + (panels.size() + 1), piece));
            }
            face.all(Feature.Support.class).forEach(s -> noteIdle(s, panels));
            return new DeckPanels(panels, findings);
        }

        private DeckPanel panel(String name, Polygon area) {
            LinearRing ring = area.getExteriorRing();
            List<EdgeSupport> edges = new ArrayList<>();
            for (int i = 0; i + 1 < ring.getNumPoints(); i++) {
                edges.add(edge(new LineSegment(ring.getCoordinateN(i), ring.getCoordinateN(i + 1)).midPoint()));
            }
            List<EdgeSupport> openings = new ArrayList<>();
            List<Optional<Feature.Coaming>> inside = new ArrayList<>();
            for (int i = 0; i < area.getNumInteriorRing(); i++) {
                LinearRing hole = area.getInteriorRingN(i);
                Coordinate middle = new LineSegment(hole.getCoordinateN(0), hole.getCoordinateN(1)).midPoint();
                openings.add(edge(middle));
                inside.add(coaming(middle));
            }
            Laminate laminate = laminate(name, area);
            Optional<DeckPanel.Upstand> upstand = upstand(name, area, inside, laminate);
            EdgeSupport held = openings.isEmpty() ? EdgeSupport.FREE : openings.get(0);
            if (openings.stream().anyMatch(o -> o != held)) {
                note(
                        area,
                        name,
                        "Openings in the panel " + name + " are held in different ways.",
                        "All are calculated as free.");
                return new DeckPanel(name, face.name(), area, edges, EdgeSupport.FREE, laminate, upstand);
            }
            return new DeckPanel(name, face.name(), area, edges, held, laminate, upstand);
        }

        /** One coaming for all openings of a panel: the softest, and none where an opening inside has none. */
        private Optional<DeckPanel.Upstand> upstand(
                String name, Polygon area, List<Optional<Feature.Coaming>> inside, Laminate laminate) {
            List<Integer> sides = new ArrayList<>();
            Set<Feature.Coaming> coamings = new LinkedHashSet<>();
            inside.forEach(coaming -> coaming.ifPresent(coamings::add));
            LinearRing ring = area.getExteriorRing();
            for (int i = 0; i + 1 < ring.getNumPoints(); i++) {
                Optional<Feature.Coaming> coaming =
                        coaming(new LineSegment(ring.getCoordinateN(i), ring.getCoordinateN(i + 1)).midPoint());
                if (coaming.isPresent()) {
                    sides.add(i);
                    coamings.add(coaming.get());
                }
            }
            if (!coamings.isEmpty() && inside.contains(Optional.<Feature.Coaming>empty())) {
                note(
                        area,
                        name,
                        "Some openings in the panel " + name + " have a coaming and others have none.",
                        "All are calculated without: the panel is shown softer than it is.");
                return Optional.empty();
            }
            if (coamings.size() > 1) {
                note(
                        area,
                        name,
                        "The coamings of openings in the panel " + name + " differ.",
                        "All are calculated as the softest of them: the panel is shown softer than it is.");
            }
            return coamings.stream()
                    .min(Comparator.comparingDouble(c -> bending(c, laminate)))
                    .map(softest -> new DeckPanel.Upstand(softest, sides));
        }

        /** E t h³, to which a beam's bending stiffness is proportional. */
        private double bending(Feature.Coaming coaming, Laminate laminate) {
            String skin = coaming.skin().orElse(laminate.skin());
            double modulus = survey.materials().skin(skin).modulusMPa();
            return modulus * coaming.thicknessMm() * Math.pow(coaming.heightMm(), 3);
        }

        /** What stands along a side; nothing where a support or the outline holds it. */
        private Optional<Feature.Coaming> coaming(Coordinate middle) {
            return opening(middle).flatMap(Feature.Opening::coaming);
        }

        /** What runs along a side: a support first, then an opening, else the outline. */
        private EdgeSupport edge(Coordinate middle) {
            return support(middle)
                    .map(Feature.Support::edge)
                    .or(() -> opening(middle).map(Feature.Opening::edge))
                    .orElse(face.edge());
        }

        private Optional<Feature.Support> support(Coordinate middle) {
            Point point = face.outline().getFactory().createPoint(middle);
            return face.all(Feature.Support.class).stream()
                    .filter(s -> lengthened(s.geometry()).isWithinDistance(point, Tolerances.TAPE_MM))
                    .findFirst();
        }

        /** The opening along a side; none where a support or the outline runs there. */
        private Optional<Feature.Opening> opening(Coordinate middle) {
            Point point = face.outline().getFactory().createPoint(middle);
            if (support(middle).isPresent()
                    || face.outline().getExteriorRing().isWithinDistance(point, Tolerances.TAPE_MM)) {
                return Optional.empty();
            }
            return face.all(Feature.Opening.class).stream()
                    .filter(o -> o.geometry().getBoundary().isWithinDistance(point, Tolerances.TAPE_MM))
                    .findFirst();
        }

        /** The laminate that covers most; a finding where another takes a twentieth or more. */
        private Laminate laminate(String name, Polygon area) {
            Map<String, Double> shares = new HashMap<>();
            Geometry rest = area;
            List<Feature.LaminateArea> areas = face.all(Feature.LaminateArea.class);
            for (int i = areas.size() - 1; i >= 0; i--) { // later ones win
                Geometry mine = Overlay.intersection(rest, areas.get(i).geometry());
                shares.merge(areas.get(i).laminate(), mine.getArea() / area.getArea(), Double::sum);
                rest = Overlay.difference(rest, areas.get(i).geometry());
            }
            shares.merge(face.laminate(), rest.getArea() / area.getArea(), Double::sum);
            Map.Entry<String, Double> largest = shares.entrySet().stream()
                    .max(Map.Entry.<String, Double>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                    .orElseThrow();
            String most = largest.getKey();
            if (largest.getValue() < 0.95) {
                note(
                        area,
                        name,
                        String.format(
                                Locale.ROOT,
                                "The panel %s has the laminate %s on %.0f %% of it and another on the rest.",
                                name,
                                most,
                                100 * largest.getValue()),
                        "Its stiffness is calculated as if all had that one.");
            }
            return survey.laminate(most);
        }

        private void noteIdle(Feature.Support support, List<DeckPanel> panels) {
            double used = panels.stream()
                    .map(p -> p.area().getBoundary().buffer(Tolerances.LINE_MM))
                    .mapToDouble(edge ->
                            Overlay.intersection(edge, support.geometry()).getLength())
                    .max()
                    .orElse(0);
            if (used < 0.5 * support.geometry().getLength()) {
                findings.add(new Finding(
                        Finding.Severity.DOUBT,
                        support.origin(),
                        About.of(face, support),
                        Subject.SUPPORT,
                        "The support " + support.name() + " does not reach from edge to edge.",
                        "It bounds no panel and is left out of the stiffness: the deck is shown softer than it is."));
            }
        }

        private void note(Polygon area, String panel, String message, String effect) {
            Coordinate c = area.getInteriorPoint().getCoordinate();
            findings.add(new Finding(
                    Finding.Severity.DOUBT,
                    new Origin("survey.yaml", 0),
                    new About.OfPanel(panel, new Spot(face.name(), c.x, c.y)),
                    Subject.PANEL,
                    message,
                    effect));
        }

        private static LineString lengthened(LineString line) {
            Coordinate[] c = line.getCoordinates();
            int n = c.length;
            Coordinate[] longer = c.clone();
            longer[0] = beyond(c[1], c[0]);
            longer[n - 1] = beyond(c[n - 2], c[n - 1]);
            return line.getFactory().createLineString(longer);
        }

        private static Coordinate beyond(Coordinate from, Coordinate end) {
            double length = from.distance(end);
            return length == 0 ? end : new LineSegment(from, end).pointAlong(1 + REACH_MM / length);
        }
    }
}
