package corewright.stiffness;

import corewright.sandwich.FootLoadMap;
import corewright.sandwich.FootLoadMap.Place;
import corewright.survey.About;
import corewright.survey.EdgeSupport;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Finding;
import corewright.survey.Spot;
import corewright.survey.Subject;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Point;

/** An opening whose edge nothing holds, where a panel as built gives most: most hatches have a coaming that a plan may lack. */
final class BareOpening {
    /** A foot whose centre is this near stands at the edge: its own side. */
    private static final double NEAR_MM = FootLoadMap.SIDE_MM;

    private BareOpening() {}

    /** A finding where such an opening is the softest place of the panel as built. */
    static Optional<Finding> softest(Face face, PanelStiffness panel) {
        Place place = panel.in(State.AS_BUILT).feet().softest();
        Point foot = face.outline().getFactory().createPoint(new Coordinate(place.x(), place.y()));
        return face.all(Feature.Opening.class).stream()
                .filter(o -> o.edge() == EdgeSupport.FREE && o.coaming().isEmpty())
                .filter(o -> o.geometry().isWithinDistance(foot, NEAR_MM))
                .findFirst()
                .map(o -> finding(o, panel.panel().name(), new Spot(face.name(), place.x(), place.y())));
    }

    private static Finding finding(Feature.Opening opening, String panel, Spot place) {
        return new Finding(
                Finding.Severity.DOUBT,
                opening.origin(),
                new About.OfPanel(panel, place),
                Subject.PANEL,
                "As built, the panel " + panel + " gives most at the edge of " + opening.called()
                        + ", which has no coaming in the plan.",
                "Where the boat has one there, the panel is shown softer than it is: enter its height and thickness.");
    }
}
