package corewright.repair;

import corewright.damage.Condition;
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
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;

/** Plans the injection of one loose region. */
final class InjectionPlanner {
    /** The gap this near to a hole decides how far the mix gets from it (measured in simulated gaps). */
    private static final double HOLE_NEIGHBOURHOOD_MM = 25;

    /** Spread of the height under a loose skin without measured void: P10 and P90 over the middle. Practice. */
    private static final Quantiles LOOSE_SPREAD = new Quantiles(0.5, 1, 1.7);

    private final Survey survey;
    private final FaceDamage damage;
    private final Region region;
    private final Settings settings;

    private InjectionPlanner(Survey survey, FaceDamage damage, Region region) {
        this.survey = survey;
        this.damage = damage;
        this.region = region;
        settings = survey.settings();
    }

    /** A plan, or the sentence that says why there is none. */
    record Outcome(@Nullable InjectionPlan plan, String refusal) {
        static Outcome refused(String why) {
            return new Outcome(null, why);
        }
    }

    static Outcome plan(Survey survey, FaceDamage damage, Region region) {
        return new InjectionPlanner(survey, damage, region).plan();
    }

    private Outcome plan() {
        double looseGapMm = settings.thresholds().looseGapMm();
        Cavity coarse = cavity(Cavity.cellFor(region.likely(), Double.POSITIVE_INFINITY));
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
        Cavity cavity = cavity(Cavity.cellFor(region.likely(), reach.mm()));
        DrillPlaces places = DrillPlaces.of(
                cavity, region.likely(), damage.face(), settings.drilling().edgeClearanceMm());
        double[] cellReach = new double[cavity.size()];
        double[] holeReach = new double[cavity.size()];
        for (int c : cavity.cells) {
            cellReach[c] = law.at(cavity.gapMm[c]).mm();
        }
        for (int c : cavity.cells) {
            holeReach[c] = places.allowed[c] ? law.at(gapNear(cavity, c)).mm() : 0;
        }
        Travel travel = new Travel(cavity, cellReach);
        LockedHoles locked = LockedHoles.of(survey.judgements().holes(), region, cavity, places);
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

        double coveredFraction() {
            long covered = Arrays.stream(cavity.cells)
                    .filter(c -> field.cost[c] <= 1 + 1e-9)
                    .count();
            return (double) covered / cavity.cells.length;
        }
    }

    private InjectionPlan finish(Resin resin, Reach reach, Pattern pattern) {
        Quantiles cavityMm3 = cavityMm3();
        List<Integer> cells = Arrays.stream(pattern.cells).boxed().toList();
        List<Integer> firstVents =
                Vents.cells(pattern.cavity, pattern.places, cells, pattern.field, Slope.of(damage.face()), reach.mm());
        List<Hole> injections = injections(pattern, firstVents, reach, cavityMm3.p50());
        Drilling drilling = settings.drilling();
        Mix mix = Mix.of(cavityMm3.p50(), resin, drilling.wasteFraction());
        List<Batch> batches = Batches.of(region.id(), injections, mix, resin, settings);
        double area = region.likely().getArea();
        FillPlanning.Outcome filled = new FillPlanning(
                        damage.face(),
                        cavity(FillPlanning.cellMm(area)),
                        pattern.cavity,
                        pattern.places,
                        resin,
                        settings)
                .of(injections, batches, firstVents);
        List<Hole> holes = withVents(injections, pattern.cavity, filled.vents());
        return new InjectionPlan(
                region.id(),
                resin.name(),
                cavityMm3,
                reach.mm(),
                reach.governedBy(),
                holes,
                pattern.coveredFraction(),
                (int) Math.ceil(area / (Math.PI * reach.mm() * reach.mm())),
                2 * area / (3 * Math.sqrt(3) * reach.mm() * reach.mm()),
                batches,
                mix.partAG(),
                mix.partBG(),
                Mix.of(cavityMm3.p90(), resin, drilling.wasteFraction()).grossG(),
                Mix.arithmetic(cavityMm3, resin, drilling.wasteFraction()),
                cautions(pattern, holes, resin, reach),
                filled.fill());
    }

    private List<String> cautions(Pattern pattern, List<Hole> holes, Resin resin, Reach reach) {
        Cavity cavity = pattern.cavity;
        Cautions.Facts facts = new Cautions.Facts(
                Arrays.stream(cavity.cells)
                        .mapToDouble(c -> cavity.gapMm[c])
                        .max()
                        .orElse(0),
                holes.stream().mapToDouble(Hole::depthStopMm).max().orElse(0),
                pattern.coveredFraction(),
                (int) Arrays.stream(pattern.cells)
                        .filter(c -> pattern.places.narrow[c])
                        .count(),
                holes.stream().anyMatch(h -> !survey.laminateAt(h.spot()).measured()),
                new Cautions.Lift(
                        Restraint.range(resin, settings.climate().temperatureC(), reach.mm(), middleGapMm(cavity)),
                        MaximumInscribedCircle.getRadiusLine(region.likely(), cavity.cell)
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
        Spot spot = new Spot(region.face(), Math.rint(at.x), Math.rint(at.y)); // a person measures whole millimetres
        double depthMm = Cavity.depthAt(damage.surfaces().voidDepthMm(), spot.xMm(), spot.yMm());
        double stopMm = DepthStop.mm(survey.laminateAt(spot), depthMm, drilling.depthMarginMm());
        return new Hole(
                region.id() + suffix,
                region.id(),
                kind,
                order,
                spot,
                drilling.holeDiameterMm(),
                stopMm,
                reachMm,
                servedMm3);
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

    /** Its void; for a skin that is loose without one at least the area times the height of a loose skin. */
    private Quantiles cavityMm3() {
        Quantiles loose = LOOSE_SPREAD.times(
                region.likely().getArea() * settings.thresholds().looseGapMm());
        Quantiles found = region.voidMm3();
        if (region.condition() == Condition.VOID && found.p50() > 0) {
            return found;
        }
        return new Quantiles(
                Math.max(found.p10(), loose.p10()),
                Math.max(found.p50(), loose.p50()),
                Math.max(found.p90(), loose.p90()));
    }

    private Cavity cavity(double cellMm) {
        return Cavity.of(
                region,
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
        return new Spot(region.face(), at.x, at.y);
    }
}
