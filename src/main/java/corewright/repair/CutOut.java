package corewright.repair;

import corewright.damage.Region;
import corewright.overlay.Overlay;
import corewright.repair.plan.RecorePlan;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Laminate;
import corewright.survey.Materials;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Resin;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * A cut and the work on it, step by step. Figures without a source are common practice, each by itself.
 *
 * @param plan cut, new core, epoxy
 * @param scarf ground round the cut, as far as there is skin to grind
 * @param scarfMm its width where nothing is in the way: the outer skin times the survey's ratio
 * @param scarfShort share of it that falls on no skin: there it is narrower
 * @param columns core pieces side by side
 * @param rows core pieces one above the other
 * @param plies from the innermost; empty where the skin's cloth is not known
 * @param cups steps that take epoxy, in the order of the work
 * @param below names of what is known to lie under the cut
 * @param fittings that stand in the cut and come off first
 */
public record CutOut(
        RecorePlan plan,
        Region region,
        Laminate laminate,
        Geometry scarf,
        double scarfMm,
        double scarfShort,
        int columns,
        int rows,
        List<Ply> plies,
        List<Cups> cups,
        List<String> below,
        List<String> fittings) {
    /** A piece that one person lays down in the bed without bending it. */
    private static final double LARGEST_PIECE_MM = 320;

    /** Glass, and what of a ply laid by hand is glass; 600 g/m2 then make 0.71 mm. */
    private static final double GLASS_G_MM3 = 2.56e-3;

    private static final double GLASS_SHARE = 0.33;
    private static final double CLOTH_G_M2 = 600;

    /** Finer cloth on top, to be faired. */
    private static final double TOP_CLOTH_G_M2 = 160;

    private static final double EPOXY_G_MM3 = 1.15e-3;
    private static final double MM2_PER_M2 = 1e6;
    private static final int ARC = 8;

    public CutOut {
        plies = List.copyOf(plies);
        cups = List.copyOf(cups);
        below = List.copyOf(below);
        fittings = List.copyOf(fittings);
    }

    /** @param alongMm and {@code acrossMm} of the cloth before it is trimmed to the step of the scarf */
    public record Ply(double clothGM2, double alongMm, double acrossMm, double epoxyG) {}

    /**
     * Equal cups for one step.
     *
     * @param step what they are for
     * @param partAG of each cup
     */
    public record Cups(String step, int count, double partAG, double partBG) {
        public double bothG() {
            return count * (partAG + partBG);
        }
    }

    /** The work on a cut of a survey. */
    public static CutOut of(Survey survey, Region region, RecorePlan plan) {
        Face face = survey.face(region.face());
        Laminate laminate = survey.laminateAt(
                new Spot(region.face(), region.label().getX(), region.label().getY()));
        double scarfMm = laminate.outerSkinMm() * survey.settings().thresholds().scarfRatio();
        Geometry wanted = Overlay.difference(plan.cut().buffer(scarfMm, ARC), plan.cut());
        Geometry scarf = wanted;
        scarf = Overlay.intersection(scarf, face.outline());
        for (Feature.Opening opening : face.all(Feature.Opening.class)) {
            scarf = Overlay.difference(scarf, opening.geometry());
        }
        Envelope box = plan.cut().getEnvelopeInternal();
        List<Ply> plies = plies(survey, laminate, plan.cut(), scarfMm);
        return new CutOut(
                plan,
                region,
                laminate,
                scarf,
                scarfMm,
                wanted.getArea() > 0 ? 1 - scarf.getArea() / wanted.getArea() : 0,
                pieces(box.getWidth()),
                pieces(box.getHeight()),
                plies,
                cups(survey, plan, plies),
                below(face, plan.cut()),
                face.all(Feature.Fitting.class).stream()
                        .filter(f -> f.geometry().intersects(plan.cut()))
                        .map(Feature::called)
                        .toList());
    }

    private static int pieces(double lengthMm) {
        return (int) Math.max(1, Math.ceil(lengthMm / LARGEST_PIECE_MM));
    }

    /** Size of a core piece, before it is cut to the line. */
    public double pieceAlongMm() {
        return plan.cut().getEnvelopeInternal().getWidth() / columns;
    }

    public double pieceAcrossMm() {
        return plan.cut().getEnvelopeInternal().getHeight() / rows;
    }

    /** Epoxy of all cups, with waste. */
    public double epoxyG() {
        return cups.stream().mapToDouble(Cups::bothG).sum();
    }

    /** Plies of glass that make up the skin, each a step of the scarf larger than the one before. */
    private static List<Ply> plies(Survey survey, Laminate laminate, Geometry cut, double scarfMm) {
        Materials.Skin skin = survey.materials().skins().get(laminate.skin());
        boolean glass = laminate.skin().contains("glass");
        if (skin == null || !glass) {
            return List.of();
        }
        double top = thicknessMm(TOP_CLOTH_G_M2);
        int thick = (int) Math.max(1, Math.rint((laminate.outerSkinMm() - top) / thicknessMm(CLOTH_G_M2)));
        double waste = survey.settings().drilling().wasteFraction();
        Envelope box = cut.getEnvelopeInternal();
        List<Ply> plies = new ArrayList<>();
        for (int i = 1; i <= thick + 1; i++) {
            double cloth = i <= thick ? CLOTH_G_M2 : TOP_CLOTH_G_M2;
            double overMm = scarfMm * Math.min(i, thick) / thick;
            double area = cut.buffer(overMm, ARC).getArea();
            double net = area * thicknessMm(cloth) * (1 - GLASS_SHARE) * EPOXY_G_MM3;
            plies.add(new Ply(
                    cloth, box.getWidth() + 2 * overMm, box.getHeight() + 2 * overMm, Math.ceil(net / (1 - waste))));
        }
        return plies;
    }

    /** Of a ply laid by hand. */
    public static double thicknessMm(double clothGM2) {
        return clothGM2 / MM2_PER_M2 / GLASS_G_MM3 / GLASS_SHARE;
    }

    private static List<Cups> cups(Survey survey, RecorePlan plan, List<Ply> plies) {
        Drilling drilling = survey.settings().drilling();
        Optional<Resin> thin = survey.settings().resins().stream()
                .filter(r -> r.structural() && r.expansion() <= 1)
                .findFirst();
        if (thin.isEmpty()) {
            return List.of();
        }
        double wetting = RecorePlanner.wettingG(plan.cut()) / (1 - drilling.wasteFraction());
        List<Cups> cups = new ArrayList<>();
        cups.add(cups("wet out skins and core", wetting, thin.get(), drilling));
        cups.add(cups("bed and joints, with filler", plan.epoxyG() - wetting, thin.get(), drilling));
        for (int i = 0; i < plies.size(); i++) {
            cups.add(cups("ply " + (i + 1), plies.get(i).epoxyG(), thin.get(), drilling));
        }
        return cups;
    }

    private static Cups cups(String step, double grams, Resin resin, Drilling drilling) {
        int count = (int) Math.max(1, Math.ceil(grams / drilling.largestBatchG() - 1e-9));
        double each = grams / count;
        double partA = each / (1 + resin.hardenerPerResin());
        return new Cups(step, count, partA, each - partA);
    }

    /** Supports, tanks, cables and pipes. */
    private static List<String> below(Face face, Geometry cut) {
        List<String> below = new ArrayList<>();
        for (Feature feature : face.features()) {
            boolean under = feature instanceof Feature.Support || feature instanceof Feature.Disturbance;
            if (under && feature.geometry().intersects(cut)) {
                below.add(feature.called());
            }
        }
        return below;
    }
}
