package corewright.repair.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Gives the regions of a plan, called 1, 2 ... in their order, their names, and the holes theirs. */
public final class Naming {
    private final List<String> names;

    private Naming(List<String> names) {
        this.names = names;
    }

    /** @param names of the space's regions, the one that leads first */
    public static InjectionPlan of(InjectionPlan plan, List<String> names) {
        return new Naming(names).named(plan);
    }

    private String region(String number) {
        return names.get(Integer.parseInt(number) - 1);
    }

    private InjectionPlan named(InjectionPlan p) {
        Map<String, String> holes = new LinkedHashMap<>();
        p.holes()
                .forEach(h -> holes.put(
                        h.id(), region(h.region()) + h.id().substring(h.region().length())));
        return new InjectionPlan(
                region(p.region()),
                p.parts().stream().map(this::part).toList(),
                p.resin(),
                p.cavityMm3(),
                p.reachMm(),
                p.reachGovernedBy(),
                p.holes().stream().map(h -> hole(h, name(holes, h.id()))).toList(),
                p.coveredFraction(),
                p.batches().stream().map(b -> batch(b, holes)).toList(),
                p.resinG(),
                p.hardenerG(),
                p.buyG(),
                p.arithmetic(),
                p.cautions(),
                fill(p.fill(), holes),
                p.outlook().renamed(h -> name(holes, h)));
    }

    private InjectionPlan.Part part(InjectionPlan.Part p) {
        return new InjectionPlan.Part(region(p.region()), p.coveredFraction(), p.ownMm2(), p.reachMm());
    }

    private Hole hole(Hole h, String id) {
        return new Hole(
                id,
                region(h.region()),
                h.kind(),
                h.order(),
                h.spot(),
                h.diameterMm(),
                h.depthStopMm(),
                h.reachMm(),
                h.servedMm3(),
                h.nozzle(),
                h.range(),
                h.gapMm());
    }

    private Batch batch(Batch b, Map<String, String> holes) {
        return new Batch(
                b.number(),
                region(b.region()),
                b.holes().stream().map(h -> name(holes, h)).toList(),
                b.partAG(),
                b.partBG(),
                b.mixAtS(),
                b.workUntilS(),
                b.firstRiseS(),
                b.hardAtS());
    }

    private static Fill fill(Fill f, Map<String, String> holes) {
        Map<String, Double> filledMm3 = new LinkedHashMap<>();
        f.filledMm3().forEach((hole, mm3) -> filledMm3.put(name(holes, hole), mm3));
        Map<String, Double> takenMm3 = new LinkedHashMap<>();
        f.takenMm3().forEach((hole, mm3) -> takenMm3.put(name(holes, hole), mm3));
        return new Fill(f.arrivalS(), f.liquidShare(), f.emptyShare(), f.pockets(), filledMm3, takenMm3, f.density());
    }

    private static String name(Map<String, String> holes, String number) {
        return Objects.requireNonNull(holes.get(number), number);
    }
}
