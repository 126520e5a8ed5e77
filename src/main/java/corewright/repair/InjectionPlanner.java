package corewright.repair;

import corewright.damage.FaceDamage;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.survey.Drilling;
import corewright.survey.Laminate;
import corewright.survey.Resin;
import corewright.survey.Settings;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntPredicate;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** Plans the injection of one empty space. */
final class InjectionPlanner {
    /** The gap this near to a hole decides how far the mix gets from it (measured in simulated gaps). */
    private static final double HOLE_NEIGHBOURHOOD_MM = 25;

    private final Survey survey;
    private final FaceDamage damage;
    private final EmptySpace space;
    private final Settings settings;

    private InjectionPlanner(Survey survey, FaceDamage damage, EmptySpace space) {
        this.survey = survey;
        this.damage = damage;
        this.space = space;
        settings = survey.settings();
    }

    /** A plan, or the sentence that says why there is none. */
    record Outcome(@Nullable InjectionPlan plan, String refusal) {
        static Outcome refused(String why) {
            return new Outcome(null, why);
        }
    }

    static Outcome plan(Survey survey, FaceDamage damage, EmptySpace space) {
        return new InjectionPlanner(survey, damage, space).plan();
    }

    private Outcome plan() {
        double looseGapMm = settings.thresholds().looseGapMm();
        Polygon lead = space.lead().likely();
        Cavity coarse = cavity(lead, Cavity.cellFor(lead, Double.POSITIVE_INFINITY));
        double gapMm = coarse.cells.length == 0 ? looseGapMm : middleGapMm(coarse);
        Optional<Resin> resin = ResinChoice.forGap(settings.resins(), gapMm);
        if (resin.isEmpty()) {
            return Outcome.refused(ResinChoice.refusal(settings.resins()));
        }
        double temperatureC = settings.climate().temperatureC();
        if (Batches.largestCupG(resin.get(), settings.drilling(), temperatureC) <= 0) {
            return Outcome.refused(String.format(
                    Locale.ROOT,
                    "At %.0f °C %s sets before it can be mixed and poured. Work when it is cooler.",
                    temperatureC,
                    resin.get().name()));
        }
        ReachLaw law = new ReachLaw(resin.get(), settings.drilling(), temperatureC);
        return pattern(law, law.at(gapMm));
    }

    private Outcome pattern(ReachLaw law, Reach reach) {
        Cavity cavity = cavity(space.area(), Cavity.cellFor(space.area(), reach.mm()));
        DrillPlaces places = DrillPlaces.of(
                cavity, space.area(), damage.face(), settings.drilling().edgeClearanceMm());
        double[] cellReach = new double[cavity.size()];
        double[] holeReach = new double[cavity.size()];
        for (int c : cavity.cells) {
            cellReach[c] = law.at(cavity.gapMm[c]).mm();
        }
        for (int c : cavity.cells) {
            holeReach[c] = places.allowed[c] ? law.at(gapNear(cavity, c)).mm() : 0;
        }
        Travel travel = new Travel(cavity, cellReach);
        LockedHoles locked = LockedHoles.of(survey.judgements().holes(), space, cavity, places);
        int[] cells =
                HolePattern.holes(new HolePattern.Task(cavity, places, holeReach, reach.mm(), travel), locked.cells());
        if (cells.length == 0) {
            return Outcome.refused("No hole may be drilled here: fittings, supports or edges lie too near everywhere.");
        }
        Travel.Field field = travel.from(
                cells, Arrays.stream(cells).mapToDouble(c -> holeReach[c]).toArray());
        Pattern pattern = new Pattern(cavity, places, cells, holeReach, field, locked);
        for (int c : cells) {
            Laminate laminate = survey.laminateAt(spot(cavity.centre(c)));
            if (!DepthStop.possible(laminate, settings.drilling().depthMarginMm())) {
                return Outcome.refused("The core is only " + Words.plain(laminate.coreMm())
                        + " mm thick: a drill cannot open it and stay clear of the inner skin.");
            }
        }
        return new Outcome(finish(law.resin(), reach, pattern), "");
    }

    /** The injection holes on their raster, before they are numbered. */
    private static final class Pattern {
        final Cavity cavity;
        final DrillPlaces places;
        final int[] cells;
        final double[] holeReachMm;
        final Travel.Field field;
        final LockedHoles locked;

        Pattern(
                Cavity cavity,
                DrillPlaces places,
                int[] cells,
                double[] holeReachMm,
                Travel.Field field,
                LockedHoles locked) {
            this.cavity = cavity;
            this.places = places;
            this.cells = cells;
            this.holeReachMm = holeReachMm;
            this.field = field;
            this.locked = locked;
        }

        /** Where the hole of a cell is drilled: the middle, or just where a person put it. */
        Coordinate place(int cell) {
            Spot put = locked.spots().get(cell);
            return put == null ? cavity.centre(cell) : put.coordinate();
        }

        /** Share of some cells that the expanded mix gets to; 1 of none. */
        double coveredFraction(IntPredicate which) {
            long all = Arrays.stream(cavity.cells).filter(which).count();
            long covered = Arrays.stream(cavity.cells)
                    .filter(which)
                    .filter(c -> field.cost[c] <= 1 + 1e-9)
                    .count();
            return all == 0 ? 1 : (double) covered / all;
        }
    }

    private InjectionPlan finish(Resin resin, Reach reach, Pattern pattern) {
        Quantiles cavityMm3 = space.mm3(settings.thresholds().looseGapMm());
        String id = space.lead().id();
        List<Integer> cells = Arrays.stream(pattern.cells).boxed().toList();
        List<Integer> firstVents =
                Vents.cells(pattern.cavity, pattern.places, cells, pattern.field, Slope.of(damage.face()), reach.mm());
        List<Hole> injections = injections(pattern, firstVents, reach, cavityMm3.p50());
        Drilling drilling = settings.drilling();
        Mix mix = Mix.of(cavityMm3.p50(), resin, drilling.wasteFraction());
        List<Batch> batches = Batches.of(id, injections, mix, resin, settings);
        double area = space.area().getArea();
        FillPlanning.Outcome filled = new FillPlanning(
                        damage.face(),
                        cavity(space.area(), FillPlanning.cellMm(area)),
                        pattern.cavity,
                        pattern.places,
                        resin,
                        settings)
                .of(injections, batches, firstVents);
        List<Hole> holes = withVents(injections, pattern.cavity, filled.vents());
        return new InjectionPlan(
                id,
                parts(pattern, reach.mm()),
                resin.name(),
                cavityMm3,
                reach.mm(),
                reach.governedBy(),
                holes,
                pattern.coveredFraction(c -> true),
                batches,
                mix.partAG(),
                mix.partBG(),
                Mix.of(cavityMm3.p90(), resin, drilling.wasteFraction()).grossG(),
                Mix.arithmetic(cavityMm3, resin, drilling.wasteFraction()),
                cautions(pattern, holes, resin, reach),
                filled.fill());
    }

    private List<InjectionPlan.Part> parts(Pattern pattern, double reachMm) {
        Region[] regionOf = new Region[pattern.cavity.size()];
        for (int c : pattern.cavity.cells) {
            regionOf[c] = space.at(pattern.cavity.centre(c));
        }
        List<InjectionPlan.Part> parts = new ArrayList<>();
        for (Region region : space.regions()) {
            double covered = pattern.coveredFraction(c -> regionOf[c] == region);
            double ownMm2 = region == space.lead() ? region.likely().getArea() : 0;
            parts.add(new InjectionPlan.Part(region.id(), covered, ownMm2, reachMm));
        }
        return parts;
    }

    private List<String> cautions(Pattern pattern, List<Hole> holes, Resin resin, Reach reach) {
        Cavity cavity = pattern.cavity;
        Cautions.Facts facts = new Cautions.Facts(
                Arrays.stream(cavity.cells)
                        .mapToDouble(c -> cavity.gapMm[c])
                        .max()
                        .orElse(0),
                holes.stream().mapToDouble(Hole::depthStopMm).max().orElse(0),
                pattern.coveredFraction(c -> true),
                (int) Arrays.stream(pattern.cells)
                        .filter(c -> pattern.places.narrow[c])
                        .count(),
                holes.stream().anyMatch(h -> !survey.laminateAt(h.spot()).measured()),
                new Cautions.Lift(
                        Restraint.range(resin, settings.climate().temperatureC(), reach.mm(), middleGapMm(cavity)),
                        MaximumInscribedCircle.getRadiusLine(space.area(), cavity.cell)
                                .getLength()));
        Laminate thinnest = holes.stream()
                .map(h -> survey.laminateAt(h.spot()))
                .min((a, b) -> Double.compare(a.outerSkinMm() + a.coreMm(), b.outerSkinMm() + b.coreMm()))
                .orElseThrow();
        List<String> all = new ArrayList<>(pattern.locked.refused());
        all.addAll(Cautions.of(facts, resin, settings.drilling(), thinnest));
        return all;
    }

    private List<Hole> injections(Pattern pattern, List<Integer> vents, Reach reach, double cavityMm3) {
        Cavity cavity = pattern.cavity;
        List<Coordinate> centres =
                Arrays.stream(pattern.cells).mapToObj(pattern::place).toList();
        Coordinate mainVent = vents.isEmpty() ? null : cavity.centre(vents.get(0));
        double[] served = served(pattern, cavityMm3);
        List<Hole> holes = new ArrayList<>();
        for (int i : WorkingOrder.of(centres, Slope.of(damage.face()), mainVent, reach.mm())) {
            int order = holes.size() + 1;
            double reachMm = pattern.holeReachMm[pattern.cells[i]];
            holes.add(hole(Hole.Kind.INJECTION, "-" + order, order, centres.get(i), reachMm, served[i]));
        }
        return holes;
    }

    private List<Hole> withVents(List<Hole> injections, Cavity cavity, List<Integer> vents) {
        List<Hole> holes = new ArrayList<>(injections);
        for (int v = 0; v < vents.size(); v++) {
            Coordinate at = cavity.centre(vents.get(v));
            holes.add(hole(Hole.Kind.VENT, "-V" + (v + 1), holes.size() + 1, at, 0, 0));
        }
        return holes;
    }

    private Hole hole(Hole.Kind kind, String suffix, int order, Coordinate at, double reachMm, double servedMm3) {
        Drilling drilling = settings.drilling();
        Spot spot = new Spot(space.face(), Math.rint(at.x), Math.rint(at.y)); // a person measures whole millimetres
        double depthMm = Cavity.depthAt(damage.surfaces().voidDepthMm(), spot.xMm(), spot.yMm());
        double stopMm = DepthStop.mm(survey.laminateAt(spot), depthMm, drilling.depthMarginMm());
        String region = space.at(spot.coordinate()).id();
        return new Hole(
                region + suffix, region, kind, order, spot, drilling.holeDiameterMm(), stopMm, reachMm, servedMm3);
    }

    /** The cavity shared out: each cell to the hole nearest to it inside the cavity, in the air where no way leads. */
    private static double[] served(Pattern pattern, double cavityMm3) {
        Cavity cavity = pattern.cavity;
        double[] served = new double[pattern.cells.length];
        double whole = 0;
        for (int c : cavity.cells) {
            int owner = pattern.field.owner[c] >= 0 ? pattern.field.owner[c] : nearest(cavity, pattern.cells, c);
            served[owner] += cavity.gapMm[c];
            whole += cavity.gapMm[c];
        }
        for (int i = 0; i < served.length; i++) {
            served[i] *= cavityMm3 / whole;
        }
        return served;
    }

    private static int nearest(Cavity cavity, int[] holes, int cell) {
        int best = 0;
        for (int i = 1; i < holes.length; i++) {
            Coordinate at = cavity.centre(cell);
            best = at.distance(cavity.centre(holes[i])) < at.distance(cavity.centre(holes[best])) ? i : best;
        }
        return best;
    }

    private Cavity cavity(Polygon area, double cellMm) {
        return Cavity.of(
                area,
                damage.face(),
                damage.surfaces().voidDepthMm(),
                cellMm,
                settings.thresholds().looseGapMm());
    }

    private static double middleGapMm(Cavity cavity) {
        return median(
                Arrays.stream(cavity.cells).mapToDouble(c -> cavity.gapMm[c]).toArray());
    }

    private static double gapNear(Cavity cavity, int cell) {
        int window = (int) (HOLE_NEIGHBOURHOOD_MM / cavity.cell);
        int row = cell / cavity.columns;
        int column = cell % cavity.columns;
        double[] gaps = new double[(2 * window + 1) * (2 * window + 1)];
        int n = 0;
        for (int r = Math.max(0, row - window); r <= Math.min(cavity.rows - 1, row + window); r++) {
            for (int c = Math.max(0, column - window); c <= Math.min(cavity.columns - 1, column + window); c++) {
                int i = r * cavity.columns + c;
                boolean near = Math.hypot(r - row, c - column) * cavity.cell <= HOLE_NEIGHBOURHOOD_MM;
                if (near && cavity.inside(i)) {
                    gaps[n++] = cavity.gapMm[i];
                }
            }
        }
        return median(Arrays.copyOf(gaps, n));
    }

    private static double median(double[] values) {
        Arrays.sort(values);
        int n = values.length;
        return 0.5 * (values[(n - 1) / 2] + values[n / 2]);
    }

    private Spot spot(Coordinate at) {
        return new Spot(space.face(), at.x, at.y);
    }
}
