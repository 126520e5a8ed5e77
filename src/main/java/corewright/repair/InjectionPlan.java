package corewright.repair;

import corewright.damage.Quantiles;
import java.util.ArrayList;
import java.util.List;

/**
 * How one region would be injected.
 *
 * @param resin name of the mix
 * @param cavityMm3 to be filled, P10 to P90
 * @param reachMm at the region's middle gap
 * @param reachGovernedBy what limits the reach, a word or two
 * @param coveredFraction of the likely cavity, by the expanded front, measured inside the cavity on a fine raster
 * @param holeLowerBound area / (pi R^2) rounded up: no pattern can have fewer
 * @param holeHexEstimate 2 area / (3 sqrt 3 R^2): Kershner (1939)
 * @param resinG part A, P50 plus waste: the sum of the batches
 * @param hardenerG part B likewise
 * @param buyG mixed grams to have at hand, P90 plus waste
 * @param arithmetic the sum written out, a line each
 * @param cautions what can hurt or spoil
 * @param fill where the mix gets to
 */
public record InjectionPlan(
        String region,
        String resin,
        Quantiles cavityMm3,
        double reachMm,
        String reachGovernedBy,
        List<Hole> holes,
        double coveredFraction,
        int holeLowerBound,
        double holeHexEstimate,
        List<Batch> batches,
        double resinG,
        double hardenerG,
        double buyG,
        List<String> arithmetic,
        List<String> cautions,
        Fill fill) {
    public InjectionPlan {
        holes = List.copyOf(holes);
        batches = List.copyOf(batches);
        arithmetic = List.copyOf(arithmetic);
        cautions = List.copyOf(cautions);
    }

    /** How many holes of one kind. */
    public int count(Hole.Kind kind) {
        return (int) holes.stream().filter(h -> h.kind() == kind).count();
    }

    /** The same plan at another place in the day, with what is to be known of the fills before it. */
    public InjectionPlan onTheDay(List<Batch> moved, List<String> said) {
        List<String> all = new ArrayList<>(said);
        all.addAll(cautions);
        return new InjectionPlan(
                region,
                resin,
                cavityMm3,
                reachMm,
                reachGovernedBy,
                holes,
                coveredFraction,
                holeLowerBound,
                holeHexEstimate,
                moved,
                resinG,
                hardenerG,
                buyG,
                arithmetic,
                all,
                fill);
    }
}
