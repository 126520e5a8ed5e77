package corewright.desktop.state;

import corewright.survey.EdgeSupport;
import corewright.survey.Face;
import corewright.survey.FrozenPlan;
import corewright.survey.Heading;
import corewright.survey.Judgements;
import corewright.survey.Laminate;
import corewright.survey.Materials;
import corewright.survey.Meter;
import corewright.survey.Readings;
import corewright.survey.Survey;
import corewright.survey.settings.Settings;
import java.time.LocalDate;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** A survey in which nothing is observed yet. */
public final class NewSurvey {
    private static final GeometryFactory PLAN = new GeometryFactory();

    /** Usual for a cored deck of a yacht of some ten metres, common practice; to be measured, so marked as not measured. */
    private static final Laminate USUAL = new Laminate("deck", 3.0, 12.5, 2.5, "e-glass-polyester", "balsa-150", false);

    private NewSurvey() {}

    /**
     * One face with a rectangle for an outline, to be drawn over, one meter of a relative scale, one usual laminate.
     *
     * @param box millimetres aft and to starboard
     */
    public static Survey of(String name, String face, LocalDate day, Envelope box) {
        Polygon outline = PLAN.createPolygon(new Coordinate[] {
            new Coordinate(box.getMinX(), box.getMinY()),
            new Coordinate(box.getMaxX(), box.getMinY()),
            new Coordinate(box.getMaxX(), box.getMaxY()),
            new Coordinate(box.getMinX(), box.getMaxY()),
            new Coordinate(box.getMinX(), box.getMinY())
        });
        return new Survey(
                new Heading(name, day, "", "", "", "", null, ""),
                List.of(new Face(face, 0, 180, outline, EdgeSupport.SIMPLE, USUAL.name(), List.of())),
                List.of(new Meter("A", Meter.Kind.RELATIVE, 100, null, null)),
                List.of(USUAL),
                Materials.builtIn(),
                new Readings(List.of(), List.of(), List.of(), List.of(), List.of(), List.of()),
                Settings.defaults(),
                List.of(),
                List.of(),
                Judgements.NONE,
                List.of(),
                FrozenPlan.NONE);
    }
}
