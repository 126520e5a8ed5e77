package corewright.repair.plan;

import corewright.damage.Quantiles;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How one empty space would be injected.
 *
 * @param region that leads: the void, or the only one
 * @param parts every region that is filled, the one that leads first
 * @param resin name of the mix
 * @param cavityMm3 to be filled, P10 to P90
 * @param reachMm at the region's middle gap
 * @param reachGovernedBy what limits the reach, a word or two
 * @param coveredFraction of the likely cavity, by the expanded front, measured inside the cavity on a fine raster
 * @param resinG part A of the cups for the holes, their sum
 * @param hardenerG part B likewise
 * @param buyG mixed grams to have at hand, P90 plus waste
 * @param arithmetic the sum written out, a line each
 * @param cautions what can hurt or spoil
 * @param fill where the mix gets to
 * @param outlook how it does where the cavity is another
 */
public record InjectionPlan(
        String region,
        List<Part> parts,
        String resin,
        Quantiles cavityMm3,
        double reachMm,
        String reachGovernedBy,
        List<Hole> holes,
        double coveredFraction,
        List<Batch> batches,
        double resinG,
        double hardenerG,
        double buyG,
        List<String> arithmetic,
        List<String> cautions,
        Fill fill,
        Outlook outlook) {
    public InjectionPlan {
        parts = List.copyOf(parts);
        holes = List.copyOf(holes);
        batches = List.copyOf(batches);
        arithmetic = List.copyOf(arithmetic);
        cautions = List.copyOf(cautions);
    }

    /**
     * A region of the space.
     *
     * @param coveredFraction of its likely cavity
     * @param ownMm2 area that it needs holes of its own for; 0 where it is filled from the region that leads
     * @param reachMm the plan's
     */
    public record Part(String region, double coveredFraction, double ownMm2, double reachMm) {
        /** Area / (pi R^2) rounded up: no pattern can have fewer. */
        public int holeLowerBound() {
            return (int) Math.ceil(ownMm2 / (Math.PI * reachMm * reachMm));
        }

        /** 2 area / (3 sqrt 3 R^2): Kershner (1939). */
        public double holeHexEstimate() {
            return 2 * ownMm2 / (3 * Math.sqrt(3) * reachMm * reachMm);
        }
    }

    /** What it says of one of its regions. */
    public Optional<Part> part(String id) {
        return parts.stream().filter(p -> p.region().equals(id)).findFirst();
    }

    /** Whether a region is filled with the one that leads, and not for itself. */
    public boolean fillsBeside(String id) {
        return !region.equals(id) && part(id).isPresent();
    }

    /** Mixed for the most likely space, P50 plus waste: the cups for the holes and what is held back of it. */
    public double mixedG() {
        return resinG + hardenerG + outlook.heldLikelyG();
    }

    /** Holes into which mix goes, in the plan's order. */
    public List<Hole> filling() {
        return holes.stream().filter(Hole::fills).toList();
    }

    /** How many holes of one kind. */
    public int count(Hole.Kind kind) {
        return (int) holes.stream().filter(h -> h.kind() == kind).count();
    }

    /** What of it is left, with its own cups. */
    public InjectionPlan with(List<Hole> left, List<Batch> cups, double mostG) {
        double partAG = cups.stream().mapToDouble(Batch::partAG).sum();
        double partBG = cups.stream().mapToDouble(Batch::partBG).sum();
        return with(left, cups, new Mixed(partAG, partBG, Math.max(mostG, partAG + partBG)), cautions);
    }

    /** The same plan at another place in the day, with what is to be known of the fills before it. */
    public InjectionPlan onTheDay(List<Batch> moved, List<String> said) {
        List<String> all = new ArrayList<>(said);
        all.addAll(cautions);
        return with(holes, moved, new Mixed(resinG, hardenerG, buyG), all);
    }

    private record Mixed(double resinG, double hardenerG, double buyG) {}

    private InjectionPlan with(List<Hole> otherHoles, List<Batch> cups, Mixed mixed, List<String> said) {
        return new InjectionPlan(
                region,
                parts,
                resin,
                cavityMm3,
                reachMm,
                reachGovernedBy,
                otherHoles,
                coveredFraction,
                cups,
                mixed.resinG,
                mixed.hardenerG,
                mixed.buyG,
                arithmetic,
                said,
                fill,
                outlook);
    }
}
