package corewright.drawing.marks;

import corewright.damage.Bay;
import corewright.damage.FaceDamage;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.PlanView;
import corewright.survey.Face;
import corewright.survey.Feature;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * A face without what was found on it: edge, solid laminate, supports, dividers, openings. Every plan has it from here, on
 * paper, on cards and on screens; they differ in what they show.
 */
public final class Structure {
    /** What a plan shows of the structure. */
    public enum Shows {
        ALL,
        /** Supports lie under the deck: a screen may hide them. */
        NO_SUPPORTS
    }

    /** Farther apart than two lines of a plan that are meant to be one. */
    private static final double APART_MM = 1;

    private final Paper paper;
    private final PlanView view;
    private final Face face;
    private final Polygon outline;

    private Structure(Paper paper, PlanView view, Face face) {
        this.paper = paper;
        this.view = view;
        this.face = face;
        outline = view.onPaper(face.outline());
    }

    /** Where the core ends inside a face whose laminate has a solid edge: a quiet line, as round solid areas. */
    public static void coreEdge(Paper paper, PlanView view, FaceDamage damage) {
        withinSolid(damage.face(), damage.bays()).forEach(core -> StructureMarks.quietEdge(paper, view.onPaper(core)));
    }

    /** The bays that end where nothing is drawn: a corner lies off the outline and everything on it. */
    static List<Polygon> withinSolid(Face face, List<Bay> bays) {
        Geometry outline = face.outline().getBoundary();
        return bays.stream()
                .map(Bay::area)
                .filter(area -> Stream.of(area.getExteriorRing().getCoordinates())
                        .map(area.getFactory()::createPoint)
                        .anyMatch(corner -> corner.distance(outline) > APART_MM
                                && face.features().stream()
                                        .noneMatch(f -> f.geometry().distance(corner) <= APART_MM)))
                .toList();
    }

    /** Paints a whole face. */
    public static void paint(Paper paper, PlanView view, Face face, Shows shows) {
        Structure structure = new Structure(paper, view, face);
        structure.paint(shows, () -> StructureMarks.outline(paper, structure.outline));
    }

    /** Paints a part of a face: its edge is broken where the map ends but not the deck. */
    public static void paintPart(Paper paper, PlanView view, Face part, Face whole) {
        Structure structure = new Structure(paper, view, part);
        structure.paint(
                Shows.ALL, () -> StructureMarks.outline(paper, structure.outline, view.onPaper(whole.outline())));
    }

    /** The rings round fittings in which no hole may be drilled. */
    public static void keepOuts(Paper paper, PlanView view, Face face) {
        for (Feature.Fitting fitting : face.all(Feature.Fitting.class)) {
            if (fitting.keepoutMm() > 0) {
                StructureMarks.keepOut(paper, view.onPaper(fitting.geometry().buffer(fitting.keepoutMm())));
            }
        }
    }

    private void paint(Shows shows, Runnable edge) {
        for (Feature.Solid solid : face.all(Feature.Solid.class)) {
            StructureMarks.quietEdge(paper, view.onPaper(solid.geometry()));
        }
        List<LineString> supports = new ArrayList<>();
        if (shows == Shows.ALL) {
            face.all(Feature.Support.class)
                    .forEach(s -> supports.addAll(StructureMarks.onDeck(view.onPaper(s.geometry()), outline)));
        }
        supports.forEach(l -> StructureMarks.support(paper, l, outline));
        for (Feature.Divider divider : face.all(Feature.Divider.class)) {
            StructureMarks.onDeck(view.onPaper(divider.geometry()), outline)
                    .forEach(l -> StructureMarks.divider(paper, l));
        }
        for (Feature.Opening opening : face.all(Feature.Opening.class)) {
            StructureMarks.opening(paper, view.onPaper(opening.geometry()));
        }
        edge.run();
        supports.stream()
                .filter(l -> StructureMarks.onEdge(l, outline)) // over the edge's own line
                .forEach(l -> StructureMarks.support(paper, l, outline));
    }
}
