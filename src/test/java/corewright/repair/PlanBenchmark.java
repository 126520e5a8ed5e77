package corewright.repair;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.ragged;
import static corewright.DamageFixtures.rectangle;

import corewright.DamageFixtures;
import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.repair.pattern.Cavity;
import corewright.repair.pattern.CoverTask;
import corewright.repair.pattern.DrillPlaces;
import corewright.repair.pattern.HolePattern;
import corewright.repair.pattern.Travel;
import corewright.survey.settings.Settings;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import java.util.SplittableRandom;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * Holes, coverage and processor time of the injection planner: rectangles, twenty ragged cavities of its own with fittings,
 * and one of 3 m2. Run: {@code mvn -o -q test-compile exec:java -Dexec.classpathScope=test
 * -Dexec.mainClass=corewright.repair.PlanBenchmark}.
 */
public final class PlanBenchmark {
    private static final Polygon DECK = rectangle(0, -2500, 6000, 2500);

    private PlanBenchmark() {}

    public static void main(String[] args) {
        rectangles();
        ragged(75);
        ragged(100);
        threeSquareMetres();
    }

    private static void rectangles() {
        print("%-24s %6s %6s %6s %8s %8s%n", "rectangle", "reach", "holes", "hex", "covered", "cpu ms");
        double[][] cases = {
            {1000, 1000, 230.64},
            {1000, 1000, 298.73},
            {1000, 1000, 353.56},
            {600, 400, 50},
            {1000, 1000, 75},
            {1000, 1000, 100}
        };
        for (double[] c : cases) {
            Deck deck = deck(DECK)
                    .with(capped(c[2]))
                    .region(Condition.VOID, rectangle(1000, -500, 1000 + c[0], -500 + c[1]), 1.5, 0.1);
            long start = cpu();
            Problem p = Problem.of(deck, c[2]);
            int[] holes = p.holes();
            long ms = (cpu() - start) / 1_000_000;
            print(
                    "%-24s %6.1f %6d %6.1f %8.4f %8d%n",
                    c[0] + " x " + c[1],
                    c[2],
                    holes.length,
                    2 * c[0] * c[1] / (3 * Math.sqrt(3) * c[2] * c[2]),
                    p.covered(holes),
                    ms);
        }
    }

    private static void ragged(double reachMm) {
        print(
                "%-10s %5s %6s %6s %6s %6s %8s %8s%n",
                "ragged", "m2", "greedy", "holes", "hex", "in/R", "covered", "cpu ms");
        int greedySum = 0;
        int sum = 0;
        double hexSum = 0;
        int wide = 0;
        int wideMet = 0;
        double worst = 1;
        for (int seed = 1; seed <= 20; seed++) {
            Deck deck = raggedDeck(seed, reachMm);
            long start = cpu();
            Problem p = Problem.of(deck, reachMm);
            int[] holes = p.holes();
            long ms = (cpu() - start) / 1_000_000;
            double area = p.area.getArea();
            double hex = 2 * area / (3 * Math.sqrt(3) * reachMm * reachMm);
            double inscribed = MaximumInscribedCircle.getRadiusLine(p.area, 5).getLength() / reachMm;
            int greedy = HolePattern.greedy(p.task());
            greedySum += greedy;
            sum += holes.length;
            hexSum += hex;
            wide += inscribed > 2 ? 1 : 0;
            wideMet += inscribed > 2 && holes.length <= 1.25 * hex ? 1 : 0;
            worst = Math.min(worst, p.covered(holes));
            print(
                    "%-10d %5.2f %6d %6d %6.1f %6.2f %8.4f %8d%n",
                    seed, area / 1e6, greedy, holes.length, hex, inscribed, p.covered(holes), ms);
        }
        print(
                "R %.0f: greedy %d, holes %d (%.1f %% fewer), hex %.0f (%.3f), wide %d, of them within 1.25: %d, least covered %.4f%n",
                reachMm,
                greedySum,
                sum,
                100.0 * (greedySum - sum) / greedySum,
                hexSum,
                sum / hexSum,
                wide,
                wideMet,
                worst);
    }

    /** Void 1 to 3 mm, a fitting of 60 mm keep-out in the middle. */
    static Deck raggedDeck(long seed, double reachMm) {
        SplittableRandom random = new SplittableRandom(500 + seed);
        Polygon area = DamageFixtures.ragged(seed, 1000 + 800 * random.nextDouble());
        Deck deck = deck(DECK)
                .with(capped(reachMm))
                .region(Condition.VOID, area, (x, y) -> 2 + Math.sin(x / 170) * Math.cos(y / 130), 0.1);
        Point middle = area.getInteriorPoint();
        return deck.with(DamageFixtures.fitting("cleat", middle.getX() + 40, middle.getY(), false, 60));
    }

    /**
     * A loose skin of some 0.1 to 0.25 m2, 0.3 mm off.
     *
     * @param large P90 of its volume over the middle
     */
    static Deck looseDeck(long seed, double large) {
        Polygon area = DamageFixtures.ragged(seed, 480 + 220 * new SplittableRandom(900 + seed).nextDouble());
        return deck(DECK).region(Condition.DELAMINATED, area, (x, y) -> 0.3, 0.05, large);
    }

    private static void threeSquareMetres() {
        Deck deck = threeDeck();
        for (int run = 0; run < 3; run++) {
            long wall = System.nanoTime();
            long start = cpu();
            Problem p = Problem.of(deck, 150);
            int[] holes = p.holes();
            print(
                    "3 m2, R 150: %d holes, covered %.4f, cpu %d ms, wall %d ms%n",
                    holes.length,
                    p.covered(holes),
                    (cpu() - start) / 1_000_000,
                    (System.nanoTime() - wall) / 1_000_000);
        }
    }

    /** 3 m2, void 2 to 6 mm. */
    static Deck threeDeck() {
        return deck(DECK)
                .slope(3, 90)
                .region(
                        Condition.VOID,
                        rectangle(1000, -750, 3000, 750),
                        (x, y) -> 4 + 2 * Math.sin(x / 170) * Math.cos(y / 130),
                        0.1);
    }

    /** What the pattern search is given. */
    static final class Problem {
        final Polygon area;
        final Cavity cavity;
        final DrillPlaces places;
        final double[] holeReach;
        final double reachMm;

        private Problem(Polygon area, Cavity cavity, DrillPlaces places, double reachMm) {
            this.area = area;
            this.cavity = cavity;
            this.places = places;
            this.reachMm = reachMm;
            holeReach = new double[cavity.size()];
            Arrays.fill(holeReach, reachMm);
        }

        static Problem of(Deck deck, double reachMm) {
            FaceDamage damage = deck.damage().faces().get(0);
            Region region = damage.regions().get(0);
            Cavity cavity = Cavity.of(
                    region.likely(),
                    damage.face(),
                    damage.surfaces().voidDepthMm(),
                    Cavity.cellFor(region.likely(), reachMm),
                    0.3);
            return new Problem(
                    region.likely(), cavity, DrillPlaces.of(cavity, region.likely(), deck.face(), 12.5), reachMm);
        }

        Travel travel() {
            double[] reach = new double[cavity.size()];
            Arrays.fill(reach, reachMm);
            return new Travel(cavity, reach);
        }

        int[] holes() {
            return HolePattern.holes(task(), new int[0]);
        }

        CoverTask task() {
            return new CoverTask(cavity, places, holeReach, reachMm, travel());
        }

        double covered(int[] holes) {
            double[] reach = new double[holes.length];
            Arrays.fill(reach, reachMm);
            Travel.Field field = travel().from(holes, reach);
            return Arrays.stream(cavity.cells)
                            .filter(c -> field.cost[c] <= 1 + 1e-9)
                            .count()
                    / (double) cavity.cells.length;
        }
    }

    static Settings capped(double reachMm) {
        return InjectionPlanTest.capped(reachMm);
    }

    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static void print(String format, Object... args) {
        System.out.print(String.format(Locale.ROOT, format, args));
    }
}
