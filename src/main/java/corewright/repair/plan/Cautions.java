package corewright.repair.plan;

import corewright.survey.Face.Posture;
import corewright.survey.Laminate;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Resin;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What can hurt or spoil an injection: first what to do, then why. */
public final class Cautions {
    public static final String SKIN =
            "Wear gloves and change them often: epoxy on the skin can make you allergic for good.";
    public static final String RULES =
            "Ask a naval architect or surveyor before work on the structure: they, the yard and local rules come first.";

    /** No vent nearer to another opening without a reason. Practice. */
    public static final double VENT_APART_MM = 60;

    /** Above this empty height a fill gets hot (one-dimensional cure model). Practice. */
    private static final double HOT_GAP_MM = 6;

    /** Weights cannot hold more than about this. Practice. */
    private static final double BALLAST_LIMIT_KPA = 3;

    /** A plate on release film begins to slide on paint or gelcoat: friction of some 0.2. From memory, practice. */
    private static final double SLIDES_DEG = 10;

    private static final double G = 9.81;
    private static final double MM_PER_M = 1000;
    private static final double PA_PER_KPA = 1000;

    private Cautions() {}

    /**
     * What of a pattern a person has to know.
     *
     * @param tiltDeg of the face, from level
     * @param columnMm how high liquid mix may stand above itself, on a slope
     */
    public record Facts(
            double deepestGapMm,
            double deepestStopMm,
            double coveredFraction,
            int narrowHoles,
            int lifts,
            boolean pilotFirst,
            Lift lift,
            Posture posture,
            double tiltDeg,
            double columnMm) {}

    /**
     * What the rise does to the skin.
     *
     * @param vented pressure with the vents open, at one reach from an opening, in the middle gap
     * @param freeRadiusMm largest circle inside the loose region
     */
    public record Lift(Restraint.Range vented, double freeRadiusMm) {}

    /**
     * A sentence where vents stand near openings of other plans: a plan knows its own alone.
     *
     * @param all plans of the day
     */
    public static Optional<String> ventsBeside(InjectionPlan plan, List<InjectionPlan> all) {
        List<String> near = new ArrayList<>();
        for (Hole vent : plan.holes()) {
            if (vent.kind() == Hole.Kind.VENT) {
                all.stream()
                        .filter(p -> !p.region().equals(plan.region()))
                        .flatMap(p -> p.holes().stream())
                        .filter(h -> beside(h, vent))
                        .findFirst()
                        .ifPresent(h -> near.add(vent.id().substring(vent.id().lastIndexOf('-') + 1)
                                + (near.isEmpty() ? " stands" : "") + " near " + h.id()));
            }
        }
        return near.isEmpty()
                ? Optional.empty()
                : Optional.of("Vent " + String.join(", ", near) + ", of another plan: each fill lets out its own air.");
    }

    private static boolean beside(Hole hole, Hole vent) {
        return hole.spot().face().equals(vent.spot().face())
                && hole.spot().coordinate().distance(vent.spot().coordinate()) < VENT_APART_MM;
    }

    public static List<String> of(Facts facts, Resin resin, Drilling drilling, Laminate laminate) {
        List<String> cautions = new ArrayList<>();
        if (facts.pilotFirst() && facts.deepestStopMm() > 0) {
            cautions.add("Drill a pilot hole by hand first and note where the drill drops in: the skin's thickness is "
                    + "not measured on this boat.");
        }
        if (facts.deepestStopMm() > 0) { // else a nozzle fills it, and nothing is drilled
            cautions.add(String.format(
                    Locale.ROOT,
                    "Set the collar before each hole and never drill past %.1f mm: the inner skin begins at %.1f mm.",
                    facts.deepestStopMm(),
                    laminate.outerSkinMm() + laminate.coreMm()));
            cautions.add(before("drilling", facts.posture()));
        }
        running(cautions, facts, resin);
        cautions.add(SKIN);
        cautions.add(String.format(
                Locale.ROOT,
                "Mix no more than %.0f g at once and pour it out of the pot: 100 g left standing can pass 200 °C.",
                drilling.largestBatchG()));
        hot(cautions, facts, drilling);
        Holding holding = Holding.of(facts.posture());
        lifting(cautions, resin, holding);
        sliding(cautions, facts, holding);
        vented(cautions, facts, resin, laminate);
        if (facts.coveredFraction() < 0.995) {
            cautions.add(Amounts.percent(1 - facts.coveredFraction())
                    + " of the empty space lies out of reach of every hole that may be drilled. Tap there after cure.");
        }
        if (facts.narrowHoles() > 0) {
            cautions.add(String.format(
                    Locale.ROOT,
                    "%d %s nearer to the region's edge than %.1f mm, on its middle line: the region is too narrow there.",
                    facts.narrowHoles(),
                    facts.narrowHoles() == 1 ? "hole stands" : "holes stand",
                    drilling.edgeClearanceMm()));
        }
        cautions.add("Do not put polyurethane foam in its place: it gives off isocyanate and carries no load.");
        cautions.add(RULES);
        return cautions;
    }

    /** What a high space asks for: lifts, or another mix where liquid does not lie in it. */
    private static void hot(List<String> cautions, Facts facts, Drilling drilling) {
        if (facts.lifts() > 1) {
            cautions.add(
                    "Fill in " + facts.lifts() + " lifts where the space is higher than "
                            + Amounts.plain(drilling.highestFillMm())
                            + " mm: a hole gets an equal part of its grams from the cups of each. The next lift waits until the one before is"
                            + " hard and no longer warm; clear the holes with a wire before it. Log each lift with its number: a hole without one counts as filled.");
        } else if (facts.deepestGapMm() > drilling.highestFillMm()) {
            cautions.add("The space is up to " + Amounts.plain(Math.rint(facts.deepestGapMm()))
                    + " mm high, and what is poured stands as high in places: use a mix whose data sheet allows that in one fill;"
                    + " others overheat.");
        } else if (facts.deepestGapMm() > HOT_GAP_MM) {
            cautions.add(String.format(
                    Locale.ROOT,
                    "Where the space is higher than %.0f mm the mix gets hot as it cures: fill in the cool of the day, shade the"
                            + " skin, and go by the highest fill on the data sheet.",
                    HOT_GAP_MM));
        }
    }

    /** What must be off and looked at before a tool goes in. */
    public static String before(String work, Posture posture) {
        return "Before " + work + ": power and batteries off, fuel vapour and gas aired out; look "
                + Holding.of(posture).otherSide() + " for wires, tanks, pipes and steel.";
    }

    /** Where liquid mix goes that nothing holds. */
    private static void running(List<String> cautions, Facts facts, Resin resin) {
        switch (facts.posture()) {
            case DECK -> {}
            case WALL ->
                cautions.add(String.format(
                        Locale.ROOT,
                        "Fill from the lowest hole up, cup by cup, and plug each hole you leave: liquid mix runs out below, and"
                                + " where it stands %.0f mm high it presses with %.1f kPa at its foot.",
                        facts.columnMm(),
                        G * facts.columnMm() / MM_PER_M * resin.densityKgM3() / PA_PER_KPA));
            case OVERHEAD -> {
                cautions.add("Wear goggles that seal and a face shield: mix and dust fall on you.");
                cautions.add(
                        "Lay a dam of tape round each hole, plug it as the nozzle leaves: mix runs out of every open hole.");
            }
        }
    }

    /** What lies on a slope has to be stopped, and presses with a part of its weight only. */
    private static void sliding(List<String> cautions, Facts facts, Holding holding) {
        if (holding == Holding.DECK && facts.tiltDeg() > SLIDES_DEG) {
            cautions.add(String.format(
                    Locale.ROOT,
                    "On %.0f° weights slide: stop the plate at its low edge with a clamped batten, tie the weights to"
                            + " it, and count on %.0f %% of what they weigh.",
                    facts.tiltDeg(),
                    100 * Math.cos(Math.toRadians(facts.tiltDeg()))));
        }
    }

    /** The range with open vents, what a millimetre of lift takes, and what can hold it. */
    private static void vented(List<String> cautions, Facts facts, Resin resin, Laminate laminate) {
        Lift lift = facts.lift();
        Holding holding = Holding.of(facts.posture());
        double millimetreKPa = 1 / Restraint.liftMm(1, lift.freeRadiusMm(), laminate.outerSkinMm());
        double high = lift.vented().highKPa();
        if (resin.expansion() <= 1 || high <= Math.min(millimetreKPa, 0.1)) {
            return;
        }
        String moved = millimetreKPa > Restraint.trappedKPa(resin)
                ? "" // nothing that the mix does moves it
                : String.format(
                        Locale.ROOT,
                        " Over a free circle of %.0f mm radius, %.1f kPa %s this skin by 1 mm.",
                        lift.freeRadiusMm(),
                        millimetreKPa,
                        holding.moves());
        cautions.add(String.format(
                Locale.ROOT,
                "With every vent open it pushes with %.1f to %.1f kPa; %s.%s",
                lift.vented().lowKPa(),
                high,
                held(high, facts),
                moved));
    }

    private static String held(double highKPa, Facts facts) {
        Holding holding = Holding.of(facts.posture());
        double kgM2 = Restraint.ballastKgM2(highKPa);
        if (holding != Holding.DECK) {
            return String.format(
                    Locale.ROOT,
                    "plate and %s must hold %.0f kg on a square metre",
                    holding == Holding.WALL ? "struts" : "props",
                    kgM2);
        }
        return highKPa > BALLAST_LIMIT_KPA
                ? "weights cannot hold the most of it: open more vents, fill in lifts or screw a plate on"
                : String.format(
                        Locale.ROOT,
                        "%.0f kg on a square metre hold the most of it",
                        kgM2 / Math.cos(Math.toRadians(facts.tiltDeg())));
    }

    private static void lifting(List<String> cautions, Resin resin, Holding holding) {
        double sealed = Restraint.trappedKPa(resin);
        if (sealed <= 0) {
            cautions.add(
                    switch (holding) {
                        case DECK ->
                            "Weigh the skin down when all holes there are plugged; while you fill, watch the straightedge: the"
                                    + " tool's pressure lifts a loose skin.";
                        case WALL ->
                            "Screw or strut a plate over the skin before filling, the holes left free: the tool's pressure pushes"
                                    + " a loose skin off.";
                        case OVERHEAD ->
                            "Prop a plate under the skin before filling, the holes left free: the tool's pressure and the mix's own"
                                    + " mass push a loose skin down.";
                    });
            return;
        }
        String force = String.format(Locale.ROOT, "%.0f kg on a square metre", Restraint.ballastKgM2(sealed));
        boolean tooMuch = holding == Holding.DECK && sealed > BALLAST_LIMIT_KPA;
        cautions.add(String.format(
                Locale.ROOT,
                "Keep every vent open until the mix %s, and %s: sealed in with its air, this mix can push with up to %.0f kPa, %s.",
                holding == Holding.OVERHEAD ? "shows in it, then plug it at once" : "rises out of it",
                holding.hold(),
                sealed,
                force + (tooMuch ? ", more than weights can hold" : "")));
    }
}
