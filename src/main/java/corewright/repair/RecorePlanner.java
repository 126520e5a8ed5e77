package corewright.repair;

import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.overlay.Overlay;
import corewright.overlay.Pieces;
import corewright.repair.plan.Cautions;
import corewright.repair.plan.RecorePlan;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Laminate;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** The cut through the outer skin around a region, and what a new core takes. */
final class RecorePlanner {
    /** Radius of the cut's corners: a sharp corner starts a crack. Practice. */
    private static final double CORNER_MM = 25;

    /** Arcs in eighths of a quarter circle. */
    private static final int ARC = 8;

    /** Unthickened epoxy that wets out both faces of the core and both skins. Practice. */
    private static final double WETTING_G_PER_MM2 = 800e-6;

    /** Thickened bed under and over the core. Practice. */
    private static final double BED_MM = 1.5;

    /** Gap filled all round the new core. Practice. */
    private static final double KERF_MM = 4;

    private static final double EPOXY_G_PER_MM3 = 1.15e-3;

    private RecorePlanner() {}

    /**
     * Everything a cut depends on.
     *
     * @param doubtful core beside it that may be wet too, and comes out with it
     * @param bay the continuous core round the region
     */
    record Task(
            Polygon likely,
            Geometry doubtful,
            Geometry bay,
            Face face,
            Laminate laminate,
            double marginMm,
            double wasteFraction) {
        static Task of(Survey survey, FaceDamage damage, Region region) {
            Geometry bay = damage.bays().stream()
                    .filter(b -> b.name().equals(region.bay()))
                    .map(b -> (Geometry) b.area())
                    .findFirst()
                    .orElse(damage.face().outline());
            Spot middle = new Spot(
                    region.face(), region.label().getX(), region.label().getY());
            return new Task(
                    region.likely(),
                    Doubtful.beside(
                            damage, region, survey.settings().thresholds().cutWet()),
                    bay,
                    damage.face(),
                    survey.laminateAt(middle),
                    survey.settings().thresholds().recoreMarginMm(),
                    survey.settings().drilling().wasteFraction());
        }
    }

    /** The cut of a region that has no name yet. */
    static RecorePlan plan(Task task) {
        Geometry cut = cut(task);
        Laminate laminate = task.laminate;
        double epoxy = epoxyG(cut, laminate.coreMm()) / (1 - task.wasteFraction);
        return new RecorePlan("", cut, laminate.coreMm(), laminate.core(), epoxy, cautions(task.face, cut, laminate));
    }

    /** Likely extent, what may be wet beside it, and margin, within the bay, corners rounded inside and out. */
    private static Geometry cut(Task task) {
        Geometry damaged = task.doubtful.isEmpty() ? task.likely : Overlay.union(task.likely, task.doubtful);
        Geometry wide = damaged.buffer(task.marginMm + CORNER_MM, ARC).buffer(-CORNER_MM, ARC);
        Geometry clipped = Pieces.areal(Overlay.intersection(wide, task.bay));
        Geometry rounded = Pieces.areal(
                Overlay.intersection(clipped.buffer(-CORNER_MM, ARC).buffer(CORNER_MM, ARC), clipped));
        // a sliver narrower than two corner radii has no rounded form
        return rounded.getArea() >= 0.9 * clipped.getArea() ? rounded : clipped;
    }

    /** Wetting out, bed and kerf; laminating the skin again comes on top. */
    static double epoxyG(Geometry cut, double coreMm) {
        double area = cut.getArea();
        double kerfMm3 = cut.getLength() * KERF_MM * coreMm;
        return wettingG(cut) + (area * BED_MM + kerfMm3) * EPOXY_G_PER_MM3;
    }

    /** What wets out core and skins, without waste. */
    static double wettingG(Geometry cut) {
        return cut.getArea() * WETTING_G_PER_MM2;
    }

    private static List<String> cautions(Face face, Geometry cut, Laminate laminate) {
        List<String> cautions = new ArrayList<>();
        cautions.add(String.format(
                Locale.ROOT,
                "Set the saw to %.1f mm: the outer skin only. The inner skin carries on without it.",
                laminate.outerSkinMm()));
        if (!laminate.measured()) {
            cautions.add("Drill a pilot hole first: the skin's thickness is not measured on this boat.");
        }
        cautions.add(Cautions.before("cutting", face.posture()));
        cautions.add(
                switch (face.posture()) {
                    case DECK ->
                        "Prop the deck before a cut runs from support to support: an opened panel has lost its stiffness.";
                    case WALL ->
                        "Strut the wall before a cut runs from support to support, and hold the piece before the last cut: it"
                                + " comes off at once.";
                    case OVERHEAD ->
                        "Prop a board under the piece before the first cut: skin and wet core fall. Goggles that seal and a face"
                                + " shield; nobody stands below.";
                });
        for (Feature.Fitting fitting : face.all(Feature.Fitting.class)) {
            if (fitting.geometry().intersects(cut)) {
                cautions.add("Take off " + fitting.called() + " first"
                        + (fitting.loadBearing() ? " and keep it out of use until the repair is signed off" : "")
                        + ": it stands in the cut.");
            }
        }
        cautions.add("Let the new core in at 15 % moisture or less: damp core does not bond.");
        cautions.add("Wear a P3 mask and draw off the dust: glass, mouldy core and old paint.");
        cautions.add(
                "Laminate with an A2 filter in moving air, no flame near: styrene and solvent harm lungs and burn.");
        cautions.add(Cautions.SKIN);
        cautions.add(Cautions.RULES);
        return cautions;
    }
}
