package corewright.report;

import corewright.Assessments;
import corewright.assessment.Assessment;
import corewright.contour.Raster;
import corewright.decision.Decision;
import corewright.repair.plan.Batch;
import corewright.repair.plan.Fill;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.Outlook;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** The sample boat with other injections: few or many holes and cups, with and without a simulated fill. */
public final class CardSamples {
    /** What a plan says at its longest. */
    private static final List<String> CAUTIONS = List.of(
            "Drill a pilot hole by hand first and note where the drill drops in: the skin's thickness is not measured on"
                    + " this boat.",
            "Set the collar before each hole and never drill past 6.5 mm: the inner skin begins at 15.5 mm.",
            "Look from below before drilling: wires, tanks, pipes and steel.",
            "Wear gloves and change them often: epoxy on the skin can make you allergic for good.",
            "Mix no more than 200 g at once and pour it out of the pot: 100 g left standing can pass 200 °C.",
            "Fill in 3 lifts where the space is higher than 12 mm: a hole gets an equal part of its grams from the cups of each."
                    + " The next lift waits until the one before is hard and no longer warm; clear the holes with a wire before"
                    + " it. Log a hole when its last lift is in.",
            "Keep every vent open until the mix rises out of it, and hold the skin with a plate: sealed in, this mix can"
                    + " push with up to 20 kPa, 2033 kg on a square metre, more than weights can hold.",
            "With every vent open it pushes with 0.1 to 4.9 kPa; weights cannot hold the most of it: open more vents,"
                    + " fill in lifts or screw a plate on. Over a free circle of 160 mm radius, 2.6 kPa lift this skin by 1"
                    + " mm.",
            "2.8 % of the empty space lies out of reach of every hole that may be drilled. Tap there after cure.",
            "10 holes stand nearer to the region's edge than 12.5 mm, on its middle line: the region is too narrow"
                    + " there.",
            "Do not put polyurethane foam in its place: it gives off isocyanate and carries no load.",
            "Ask a naval architect or surveyor before work on the structure: they, the yard and local rules come first.");

    private CardSamples() {}

    /** Three lines as long as they get. */
    private static final List<String> ARITHMETIC = List.of(
            "Empty space: most likely 12.88 litres; in 8 cases of 10 between 10.70 litres and 21.09 litres.",
            "12.88 litres × 1.15 / 4.83 × 1160 g per litre = 3557 g; with 15 % waste 4185 g: 3100 g resin and 1085 g"
                    + " hardener.",
            "To have at hand: 21.09 litres × 1.15 / 4.83 × 1160 g per litre = 5825 g; with 15 % waste 6853 g.");

    /**
     * A region with this many injection holes, a third as many vents, and these cups; where there are enough holes and the
     * seed is a multiple of three, the first two are filled by nozzle.
     */
    public static Assessment injecting(int holes, int cups, long seed) {
        int nozzles = holes > 4 && seed % 3 == 0 ? 2 : 0;
        Assessment sample = SampleAssessment.damaged();
        InjectionPlan plan = sample.decision().injections().get(0);
        Random random = new Random(seed);
        List<Hole> places = new ArrayList<>();
        for (int i = 1; i <= holes + Math.max(1, holes / 3); i++) {
            places.add(hole(i, i <= holes ? fills(i, nozzles) : "-V" + (i - holes), places, random));
        }
        List<Batch> batches = new ArrayList<>();
        for (int i = 0; i < cups; i++) {
            List<String> into = new ArrayList<>();
            for (int h = holes * i / cups; h < Math.max(holes * i / cups + 1, holes * (i + 1) / cups); h++) {
                into.add("R1" + fills(h + 1, nozzles));
            }
            double at = 184.0 * i;
            batches.add(new Batch(
                    i + 1, "R1", into, 33.3 + i / 7.0, 0.35 * (33.3 + i / 7.0), at, at + 509, at + 509, at + 4158));
        }
        return with(sample, of(plan, places, batches, seed % 2 == 0 ? fill() : Fill.NONE));
    }

    private static String fills(int order, int nozzles) {
        return order <= nozzles ? "-N" + order : "-" + (order - nozzles);
    }

    private static Hole hole(int order, String suffix, List<Hole> before, Random random) {
        boolean nozzle = suffix.startsWith("-N");
        Hole.Kind kind = suffix.startsWith("-V") ? Hole.Kind.VENT : nozzle ? Hole.Kind.NOZZLE : Hole.Kind.INJECTION;
        double x;
        double y;
        do {
            x = 2215 + random.nextInt(520);
            y = 465 + random.nextInt(280);
        } while (near(before, x, y));
        return new Hole(
                "R1" + suffix,
                "R1",
                kind,
                order,
                SampleAssessment.spot(x, y),
                6.4,
                nozzle ? 0 : 4.5 + random.nextInt(60) / 10.0,
                kind == Hole.Kind.VENT ? 0 : 120,
                kind == Hole.Kind.VENT ? 0 : 1000 + random.nextInt(90_000),
                nozzle ? new Hole.Nozzle("old hole", SampleAssessment.spot(2475, 460), 1 + random.nextInt(299)) : null,
                Hole.Range.NONE,
                0);
    }

    /** Nobody drills two holes nearer than 30 mm. */
    private static boolean near(List<Hole> before, double x, double y) {
        return before.stream()
                .anyMatch(h -> Math.hypot(h.spot().xMm() - x, h.spot().yMm() - y) < 30);
    }

    private static InjectionPlan of(InjectionPlan plan, List<Hole> holes, List<Batch> batches, Fill fill) {
        return new InjectionPlan(
                plan.region(),
                plan.parts(),
                plan.resin(),
                plan.cavityMm3(),
                plan.reachMm(),
                plan.reachGovernedBy(),
                holes,
                plan.coveredFraction(),
                batches,
                batches.stream().mapToDouble(Batch::partAG).sum(),
                batches.stream().mapToDouble(Batch::partBG).sum(),
                plan.buyG(),
                ARITHMETIC,
                CAUTIONS,
                fill,
                Outlook.NONE);
    }

    /** A front from the low corner, 20 mm a minute. */
    private static Fill fill() {
        int columns = 56;
        int rows = 32;
        double[] seconds = new double[rows * columns];
        for (int k = 0; k < seconds.length; k++) {
            seconds[k] = 3 * Math.hypot(10.0 * (k % columns), 10.0 * (k / columns));
        }
        return new Fill(Optional.of(new Raster(2195, 445, 10, rows, columns, seconds)), 0.3, 0.01, List.of(), Map.of());
    }

    private static Assessment with(Assessment a, InjectionPlan plan) {
        Decision d = a.decision();
        return Assessments.of(
                a.survey(),
                a.damage(),
                a.stiffness(),
                a.plans(),
                new Decision(d.regions(), List.of(plan), d.recores(), d.choices(), d.buying(), d.findings()),
                a.findings(),
                a.next());
    }
}
