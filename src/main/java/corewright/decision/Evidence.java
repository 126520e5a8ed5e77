package corewright.decision;

import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.overlay.Overlay;
import corewright.survey.CoreMoisture;
import corewright.survey.CoreState;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Plug;
import corewright.survey.Probe;
import corewright.survey.Reading;
import corewright.survey.Readings;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.Tolerances;
import corewright.survey.settings.Thresholds;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * What was found in and around a region.
 *
 * @param probes pilot holes inside
 * @param plugs samples inside
 * @param cavity the region and every loose region without sign of water that it touches, one after another: mix, air and
 *     proof pass between them
 * @param cavityProbes pilot holes inside any of these
 * @param cavityPlugs samples inside any of these
 * @param loads load-bearing fittings in or near the region
 * @param meanIndex moisture index over the region, NaN where nothing was estimated
 */
record Evidence(
        Face face,
        Region region,
        List<Probe> probes,
        List<Plug> plugs,
        List<Region> cavity,
        List<Probe> cavityProbes,
        List<Plug> cavityPlugs,
        List<Feature.Fitting> loads,
        double meanIndex) {
    /** A load spreads into the deck at least this far around its fitting. Practice. */
    static final double LOAD_ZONE_MM = 150;

    /**
     * How far a pilot hole or plug that found dry core speaks for the core around it. The fields of water that readings of
     * decks carry, with a range of 110 mm, still agree by 0.4 at this distance and by less beyond; as far apart stand the
     * readings of a coarse grid. Common practice.
     */
    static final double PROOF_REACH_MM = 300;

    /** Part of a region that may lie beyond every proof: its rim is no rounder than the readings know it. Practice. */
    static final double BEYOND_SHARE = 0.1;

    static Evidence of(Survey survey, FaceDamage damage, Region region) {
        List<Region> cavity = cavity(damage, region);
        Readings readings = survey.readings().on(region.face());
        return new Evidence(
                damage.face(),
                region,
                inside(readings.probes(), List.of(region)),
                inside(readings.plugs(), List.of(region)),
                cavity,
                inside(readings.probes(), cavity),
                inside(readings.plugs(), cavity),
                loads(damage, region),
                damage.surfaces().meanMoistureIndex(region.likely()));
    }

    private static <R extends Reading> List<R> inside(List<R> readings, List<Region> regions) {
        return readings.stream()
                .filter(r -> regions.stream().anyMatch(a -> holds(a, r.spot())))
                .toList();
    }

    private static boolean holds(Region region, Spot spot) {
        return region.likely().covers(region.likely().getFactory().createPoint(spot.coordinate()));
    }

    private static List<Region> cavity(FaceDamage damage, Region region) {
        List<Region> found = new ArrayList<>(List.of(region));
        for (int i = 0; i < found.size(); i++) {
            Region from = found.get(i);
            damage.regions().stream()
                    .filter(r -> !found.contains(r) && looseAndDry(r) && r.bay().equals(from.bay()))
                    .filter(r -> touches(from, r))
                    .forEach(found::add);
        }
        return List.copyOf(found);
    }

    static boolean looseAndDry(Region region) {
        return region.condition().loose() && !region.wet();
    }

    static boolean touches(Region a, Region b) {
        return a.likely().isWithinDistance(b.likely(), Tolerances.LAST_DIGIT_MM);
    }

    /** Length of the edge that two regions have in common, millimetres. */
    static double sharedEdgeMm(Region a, Region b) {
        if (!touches(a, b)) {
            return 0;
        }
        double band = 1; // as wide as it is read
        return Overlay.intersection(a.likely().buffer(band, 2), b.likely()).getArea() / band;
    }

    /** Load-bearing fittings in or near a region. */
    static List<Feature.Fitting> loads(FaceDamage damage, Region region) {
        return damage.face().all(Feature.Fitting.class).stream()
                .filter(Feature.Fitting::loadBearing)
                .filter(f -> {
                    Geometry place = f.geometry();
                    return place.isWithinDistance(region.likely(), Math.max(LOAD_ZONE_MM, f.keepoutMm()));
                })
                .toList();
    }

    /** The sentence about rotted core, if any was found. */
    Optional<String> rot() {
        return probes.stream()
                .filter(p -> p.coreState() == CoreState.ROTTED)
                .findFirst()
                .map(p -> "A pilot hole at " + Words.place(face, p.spot()) + " brought up rotted core.");
    }

    /** The sentence about wet core found inside, if any was. */
    Optional<String> wetFound(Thresholds rules) {
        return wetFound(probes, plugs, rules);
    }

    private Optional<String> wetFound(List<Probe> probes, List<Plug> plugs, Thresholds rules) {
        Stream<String> holes = probes.stream()
                .filter(p -> p.water() == CoreMoisture.WET)
                .map(p ->
                        "A pilot hole at " + Words.place(face, p.spot()) + found(p, "wet") + elsewhere(p.spot()) + ".");
        Stream<String> samples = plugs.stream()
                .filter(p -> p.moisturePercent() >= rules.wetPlugPercent())
                .map(p ->
                        "A core sample at " + Words.place(face, p.spot()) + " held " + Words.plain(p.moisturePercent())
                                + " % water; " + Words.plain(rules.wetPlugPercent()) + " % or more counts as wet.");
        return Stream.concat(holes, samples).findFirst();
    }

    /** What a hole brought up: in the same words wherever it is told. */
    private static String found(Probe probe, String water) {
        if (probe.coreState() == CoreState.ROTTED) {
            return " brought up rotted core" + (water.equals("wet") ? "" : ", " + water);
        }
        return probe.coreState() == CoreState.NONE ? " found no core, the place " + water : " found " + water + " core";
    }

    /** The sentence that proves the cavity dry, if there is one. */
    Optional<String> dryProof(Thresholds rules) {
        Stream<String> holes = cavityProbes.stream()
                .filter(p -> p.water() == CoreMoisture.DRY)
                .map(p -> "The core is proven dry: a pilot hole at " + Words.place(face, p.spot()) + found(p, "dry")
                        + elsewhere(p.spot()) + ".");
        Stream<String> samples = cavityPlugs.stream()
                .filter(p -> p.moisturePercent() <= rules.dryPlugPercent())
                .map(p -> "The core is proven dry: a sample at " + Words.place(face, p.spot()) + " held "
                        + Words.plain(p.moisturePercent()) + " % water, " + Words.plain(rules.dryPlugPercent())
                        + " % or less counts as dry" + elsewhere(p.spot()) + ".");
        return Stream.concat(holes, samples).findFirst();
    }

    /** What of the region lies farther than {@link #PROOF_REACH_MM} from every proof; empty where that is next to nothing. */
    Optional<Geometry> beyondProof(Thresholds rules) {
        GeometryFactory points = region.likely().getFactory();
        Stream<Spot> holes =
                cavityProbes.stream().filter(p -> p.water() == CoreMoisture.DRY).map(Probe::spot);
        Stream<Spot> samples = cavityPlugs.stream()
                .filter(p -> p.moisturePercent() <= rules.dryPlugPercent())
                .map(Plug::spot);
        List<Geometry> reached = Stream.concat(holes, samples)
                .map(s -> points.createPoint(s.coordinate()).buffer(PROOF_REACH_MM))
                .toList();
        if (reached.isEmpty()) {
            return Optional.of(region.likely());
        }
        Geometry rest = Overlay.difference(region.likely(), Overlay.union(reached));
        return rest.getArea() > BEYOND_SHARE * region.likely().getArea() ? Optional.of(rest) : Optional.empty();
    }

    private String elsewhere(Spot spot) {
        return cavity.stream()
                .filter(r -> holds(r, spot))
                .filter(r -> r != region && !holds(region, spot))
                .findFirst()
                .map(r -> ", in " + r.id() + " that opens into this one")
                .orElse("");
    }

    /** The sentence that speaks against dry core anywhere in the cavity, if there is one. */
    Optional<String> notDry(Thresholds rules) {
        Stream<String> wet = wetFound(cavityProbes, cavityPlugs, rules).stream();
        Stream<String> holes = cavityProbes.stream()
                .filter(p -> p.water() == CoreMoisture.DAMP)
                .map(p -> "A pilot hole at " + Words.place(face, p.spot()) + found(p, "damp") + elsewhere(p.spot())
                        + ".");
        Stream<String> samples = cavityPlugs.stream()
                .filter(p ->
                        p.moisturePercent() > rules.dryPlugPercent() && p.moisturePercent() < rules.wetPlugPercent())
                .map(p -> "A core sample at " + Words.place(face, p.spot()) + " held "
                        + Words.plain(p.moisturePercent()) + " % water: neither dry nor wet.");
        return Stream.of(wet, holes, samples).flatMap(s -> s).findFirst();
    }
}
