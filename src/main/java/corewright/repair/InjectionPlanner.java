package corewright.repair;

import corewright.contour.Raster;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.repair.fill.DrawnCavities;
import corewright.repair.fill.FillPlanning;
import corewright.repair.fill.Pouring;
import corewright.repair.mix.Batches;
import corewright.repair.mix.HeldCups;
import corewright.repair.mix.Lifts;
import corewright.repair.mix.Mix;
import corewright.repair.mix.ReachLaw;
import corewright.repair.mix.ResinChoice;
import corewright.repair.pattern.Cavity;
import corewright.repair.pattern.HolePlacing;
import corewright.repair.pattern.PlacedHoles;
import corewright.repair.pattern.Slope;
import corewright.repair.pattern.Vents;
import corewright.repair.plan.Amounts;
import corewright.repair.plan.Cautions;
import corewright.repair.plan.DepthStop;
import corewright.repair.plan.EmptySpace;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.Naming;
import corewright.repair.plan.Outlook;
import corewright.repair.plan.Prospect;
import corewright.repair.plan.Reach;
import corewright.repair.plan.Restraint;
import corewright.repair.plan.SpaceTask;
import corewright.survey.Laminate;
import corewright.survey.Spot;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** Plans the injection of one empty space. */
final class InjectionPlanner {
    /** More of a large space that stays empty is told. */
    private static final double MUCH_EMPTY = 0.04;

    private final SpaceTask task;
    private final EmptySpace space;
    private final Settings settings;

    private InjectionPlanner(SpaceTask task) {
        this.task = task;
        space = task.space();
        settings = task.settings();
    }

    /** A plan, or the sentence that says why there is none. */
    record Outcome(@Nullable InjectionPlan plan, String refusal) {
        static Outcome refused(String why) {
            return new Outcome(null, why);
        }

        /** With the regions' names. */
        Outcome named(List<String> names) {
            return plan == null ? this : new Outcome(Naming.of(plan, names), refusal);
        }

        /** With the names of a frozen plan. */
        Outcome named(UnaryOperator<InjectionPlan> names) {
            return plan == null ? this : new Outcome(names.apply(plan), refusal);
        }
    }

    static Outcome plan(SpaceTask task) {
        InjectionPlanner planner = new InjectionPlanner(task);
        Places places = planner.places();
        return places.laid == null ? Outcome.refused(places.refusal) : new Outcome(planner.finish(places.laid), "");
    }

    /** A task of which only the prospect is asked. */
    record Outlined(SpaceTask task) {}

    /** What a plan begins with, or the sentence that says why there will be none. */
    record Outline(@Nullable Prospect prospect, String refusal) {}

    /** The places without the fill, which takes far longer. */
    static Outline outline(Outlined of) {
        InjectionPlanner planner = new InjectionPlanner(of.task);
        Places places = planner.places();
        Laid laid = places.laid;
        if (laid == null) {
            return new Outline(null, places.refusal);
        }
        List<Spot> holes = Arrays.stream(laid.holes.drilled())
                .mapToObj(c -> planner.spot(laid.holes.mark(c)))
                .toList();
        return new Outline(new Prospect("", laid.resin.name(), holes), "");
    }

    /** The mix and where it goes in. */
    private record Laid(Resin resin, Reach reach, PlacedHoles holes) {}

    private record Places(@Nullable Laid laid, String refusal) {
        static Places refused(String why) {
            return new Places(null, why);
        }
    }

    /** The mix for a space; empty where none is fit. */
    static Optional<Resin> mix(SpaceTask task) {
        return ResinChoice.forGap(task.settings().resins(), new InjectionPlanner(task).gapMm());
    }

    /** The middle gap of the region that leads. */
    private double gapMm() {
        Polygon lead = space.lead().likely();
        Cavity coarse = cavity(lead, Cavity.cellFor(lead, Double.POSITIVE_INFINITY));
        return coarse.cells.length == 0 ? settings.thresholds().looseGapMm() : HolePlacing.middleGapMm(coarse);
    }

    private Places places() {
        double gapMm = gapMm();
        Optional<Resin> resin = ResinChoice.forGap(settings.resins(), gapMm);
        if (resin.isEmpty()) {
            return Places.refused(ResinChoice.refusal(settings.resins()));
        }
        double temperatureC = settings.climate().temperatureC();
        if (Batches.largestCupG(resin.get(), settings.drilling(), temperatureC) <= 0) {
            return Places.refused(String.format(
                    Locale.ROOT,
                    "At %.0f °C %s sets before it can be mixed and poured. Work when it is cooler.",
                    temperatureC,
                    resin.get().name()));
        }
        ReachLaw law = new ReachLaw(resin.get(), settings.drilling(), temperatureC);
        return laid(law, law.at(gapMm));
    }

    private Places laid(ReachLaw law, Reach reach) {
        PlacedHoles pattern = new HolePlacing(task, law).holes(reach);
        if (pattern.cells.length == 0) {
            return Places.refused(
                    pattern.locked.only()
                            ? "Every hole of this place was taken away by hand."
                            : "No hole may be drilled here: fittings, supports or edges lie too near everywhere.");
        }
        for (int c : pattern.drilled()) {
            Laminate laminate = task.laminateAt(spot(pattern.cavity.centre(c)));
            if (!DepthStop.possible(laminate, settings.drilling().depthMarginMm())) {
                return Places.refused("The core is only " + Amounts.plain(laminate.coreMm())
                        + " mm thick: a drill cannot open it and stay clear of the inner skin.");
            }
        }
        return new Places(new Laid(law.resin(), reach, pattern), "");
    }

    private InjectionPlan finish(Laid laid) {
        Resin resin = laid.resin;
        Reach reach = laid.reach;
        PlacedHoles pattern = laid.holes;
        Quantiles cavityMm3 = space.mm3(settings.thresholds().looseGapMm());
        String id = space.lead().id();
        List<Integer> firstVents = firstVents(laid);
        SpaceHoles made = new SpaceHoles(task, pattern);
        List<Hole> injections = made.injections(firstVents, reach, cavityMm3.p50());
        double waste = settings.drilling().wasteFraction();
        Pouring start =
                Pouring.of(id, injections, Mix.of(cavityMm3.p50(), resin, waste).netG(), resin, settings, lifts());
        Mix buy = Mix.of(cavityMm3.p90(), resin, waste);
        DrawnCavities drawn = new DrawnCavities(task, cavityMm3, injections);
        FillPlanning planning = new FillPlanning(
                drawn.trial(DrawnCavities.Size.MIDDLE, resin),
                drawn.trial(DrawnCavities.Size.LARGE, resin),
                pattern.cavity,
                pattern.places,
                !pattern.locked.spots().isEmpty());
        FillPlanning.Outcome filled = pattern.locked.ventsByHand()
                ? planning.asPlaced(start, buy.netG(), firstVents)
                : planning.of(start, buy.netG(), firstVents);
        Mix mix = filled.state().pouring().mix();
        Covered covered = covered(pattern, injections, filled);
        List<Hole> holes = ranged(
                made.collared(made.withVents(
                        filled.state().pouring().holes(), filled.state().vents())),
                filled,
                cavityMm3);
        return new InjectionPlan(
                id,
                parts(pattern, reach.mm(), covered),
                resin.name(),
                cavityMm3,
                reach.mm(),
                reach.governedBy(),
                holes,
                covered.of(c -> true),
                filled.state().pouring().batches(),
                mix.partAG(),
                mix.partBG(),
                buy.grossG(),
                arithmetic(cavityMm3, mix, buy, filled),
                with(cautions(pattern, holes, resin, reach, covered), injections, filled, pattern.locked.ventsByHand()),
                filled.fill(),
                new Outlook(
                        filled.fill().simulated()
                                ? drawn.trial(DrawnCavities.Size.SMALL, resin)
                                        .run(filled.state().work(), filled.watching())
                                        .emptyShare()
                                : 0,
                        filled.emptyLarge(),
                        filled.emptyLargeWithout(),
                        HeldCups.likelyG(cavityMm3.p50(), mix, resin, waste),
                        Math.max(0, buy.grossG() - mix.grossG()),
                        filled.unshown().stream().map(p -> holes.get(p).id()).toList()));
    }

    private List<Integer> firstVents(Laid laid) {
        PlacedHoles at = laid.holes;
        Slope slope = Slope.of(task.face());
        List<Integer> cells = Arrays.stream(at.cells).boxed().toList();
        return at.locked.ventsByHand()
                ? at.locked.ventCells(at.cavity, slope)
                : Vents.cells(at.cavity, at.places, cells, at.field, slope, laid.reach.mm());
    }

    /** Share of some cells that the mix gets to. */
    private interface Covered {
        double of(IntPredicate cells);
    }

    private static Covered covered(PlacedHoles pattern, List<Hole> wanted, FillPlanning.Outcome filled) {
        Set<Coordinate> out = new HashSet<>();
        wanted.forEach(h -> out.add(h.spot().coordinate()));
        filled.state().pouring().holes().forEach(h -> out.remove(h.spot().coordinate()));
        Cavity cavity = pattern.cavity;
        IntPredicate kept = owner -> !out.contains(pattern.mark(pattern.cells[owner]));
        Optional<Raster> arrival = filled.fill().arrivalS();
        IntPredicate reached = c -> arrival.map(a -> !Double.isNaN(a.cellAt(cavity.x(c), cavity.y(c))))
                .orElse(false);
        return cells -> pattern.coveredFraction(cells, kept, reached);
    }

    /** The sum written out, and what of it the holes do not take. */
    private List<String> arithmetic(Quantiles cavityMm3, Mix mix, Mix buy, FillPlanning.Outcome filled) {
        Resin resin = filled.state().pouring().resin();
        double waste = settings.drilling().wasteFraction();
        List<String> lines = new ArrayList<>(Mix.arithmetic(cavityMm3, resin, waste));
        double heldG = HeldCups.likelyG(cavityMm3.p50(), mix, resin, waste);
        lines.addAll(HeldCups.told(mix.grossG(), heldG, buy.grossG() - mix.grossG(), resin));
        return lines;
    }

    /** And which holes are left out, and which vents stand near another opening, with the reason; a person has their own. */
    private static List<String> with(
            List<String> cautions, List<Hole> wanted, FillPlanning.Outcome filled, boolean byHand) {
        List<String> all = new ArrayList<>(cautions);
        Set<String> kept = new HashSet<>();
        filled.state().pouring().holes().forEach(h -> kept.add(h.id()));
        long out = wanted.stream().filter(h -> !kept.contains(h.id())).count();
        if (out > 0) {
            all.add(out + (out == 1 ? " number is" : " numbers are")
                    + " left out among the holes: mix from the others fills there.");
        }
        List<Integer> vents = filled.state().vents();
        for (int v = 0; v < vents.size(); v++) {
            Double share = filled.state().near().get(vents.get(v));
            if (share != null) {
                all.add("Vent V" + (v + 1) + " stands near another hole: without it " + Amounts.percent(share)
                        + " of the space would keep its air.");
            } else if (filled.state().crowded(vents.get(v))) {
                String why = byHand ? ", where it was placed by hand." : ": the last of the air is expected there.";
                all.add("Vent V" + (v + 1) + " stands near another hole" + why);
            }
        }
        filled.state().pouring().tooLong().ifPresent(all::add);
        if (filled.emptyLarge() > MUCH_EMPTY) {
            all.add("Were the space as large as one in ten, " + Amounts.percent(filled.emptyLarge())
                    + " of it would stay empty even so: tap it all when cured.");
        }
        return all;
    }

    /** With the grams for a small and for a large cavity. */
    private static List<Hole> ranged(List<Hole> holes, FillPlanning.Outcome filled, Quantiles cavityMm3) {
        Pouring pouring = filled.state().pouring();
        double gPerMm3 = pouring.resin().densityKgM3() * 1e-6;
        Map<String, Double> liquid = pouring.liquidMm3();
        double small = cavityMm3.p10() / cavityMm3.p50();
        List<Hole> all = new ArrayList<>();
        for (int p = 0; p < holes.size(); p++) {
            double planned = gPerMm3 * liquid.getOrDefault(holes.get(p).id(), 0.0);
            double held = pouring.resin().expansion() > 1 && holes.get(p).fills()
                    ? planned * (filled.held().largerBy() - 1) // while it rises; see FillSimulation
                    : gPerMm3 * filled.held().doses().get(p).liquidMm3();
            all.add(holes.get(p).with(new Hole.Range(small * planned, planned + held)));
        }
        return all;
    }

    private List<InjectionPlan.Part> parts(PlacedHoles pattern, double reachMm, Covered by) {
        Region[] regionOf = new Region[pattern.cavity.size()];
        for (int c : pattern.cavity.cells) {
            regionOf[c] = space.at(pattern.cavity.centre(c));
        }
        List<InjectionPlan.Part> parts = new ArrayList<>();
        for (Region region : space.regions()) {
            double covered = by.of(c -> regionOf[c] == region);
            double ownMm2 = region == space.lead() ? toDrillMm2(pattern, regionOf) : 0;
            parts.add(new InjectionPlan.Part(region.id(), covered, ownMm2, reachMm));
        }
        return parts;
    }

    /** The area of the region that leads, less what the nozzle fills of it. */
    private double toDrillMm2(PlacedHoles pattern, Region[] regionOf) {
        Set<Integer> byNozzle = new HashSet<>();
        for (int c : pattern.cavity.cells) {
            int owner = pattern.field.owner[c];
            if (regionOf[c] == space.lead() && pattern.covers(c) && pattern.nozzles.containsKey(pattern.cells[owner])) {
                byNozzle.add(c);
            }
        }
        double cell = pattern.cavity.cell;
        return Math.max(0, space.lead().likely().getArea() - byNozzle.size() * cell * cell);
    }

    private List<String> cautions(PlacedHoles pattern, List<Hole> holes, Resin resin, Reach reach, Covered covered) {
        Cavity cavity = pattern.cavity;
        Cautions.Facts facts = new Cautions.Facts(
                Arrays.stream(cavity.cells)
                        .mapToDouble(c -> cavity.gapMm[c])
                        .max()
                        .orElse(0),
                holes.stream().mapToDouble(Hole::depthStopMm).max().orElse(0),
                covered.of(c -> true),
                (int) Arrays.stream(pattern.drilled())
                        .filter(c -> pattern.places.narrow[c])
                        .count(),
                lifts().most(holes),
                holes.stream().anyMatch(h -> !task.laminateAt(h.spot()).measured()),
                new Cautions.Lift(
                        Restraint.range(
                                resin,
                                settings.climate().temperatureC(),
                                reach.mm(),
                                HolePlacing.middleGapMm(cavity),
                                settings.drilling().holeDiameterMm() / 2),
                        MaximumInscribedCircle.getRadiusLine(space.area(), cavity.cell)
                                .getLength()),
                task.face().posture(),
                task.face().tiltDeg(),
                columnMm(cavity, resin));
        Laminate thinnest = holes.stream()
                .map(h -> task.laminateAt(h.spot()))
                .min((a, b) -> Double.compare(a.outerSkinMm() + a.coreMm(), b.outerSkinMm() + b.coreMm()))
                .orElseThrow();
        List<String> all = new ArrayList<>(pattern.locked.refused());
        if (!pattern.nozzles.isEmpty()) {
            all.add(
                    "Try the nozzle's way before mixing: where it stops short, drill at the place of its mouth instead.");
        }
        all.addAll(Cautions.of(facts, resin, settings.drilling(), thinnest));
        return all;
    }

    /** How high the liquid of the whole space may stand: as high as the space, of a mix that rises the liquid's share of that. */
    private double columnMm(Cavity cavity, Resin resin) {
        Slope slope = Slope.of(task.face());
        DoubleSummaryStatistics up = Arrays.stream(cavity.cells)
                .mapToDouble(c -> slope.height(cavity.centre(c)))
                .summaryStatistics();
        double highMm = Math.sin(Math.toRadians(task.face().tiltDeg())) * (up.getMax() - up.getMin() + cavity.cell);
        return highMm * resin.pack() / resin.expansion();
    }

    private Lifts lifts() {
        return Lifts.of(task.face(), settings.drilling());
    }

    private Cavity cavity(Polygon area, double cellMm) {
        return Cavity.of(task, area, cellMm);
    }

    private Spot spot(Coordinate at) {
        return new Spot(space.face(), at.x, at.y);
    }
}
