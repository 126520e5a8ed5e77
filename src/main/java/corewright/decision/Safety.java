package corewright.decision;

import corewright.repair.plan.Holding;
import corewright.survey.Face.Posture;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * What whoever does the advised work has to look out for: what to do, then why. Common practice of yards and the hazard
 * statements on the tins; a product's own sheet and local rules come first.
 *
 * @param opening a drill or saw goes in
 * @param resin resin is mixed or laminated
 * @param drying heat and air are brought in
 */
public record Safety(boolean opening, boolean resin, boolean drying, Set<Posture> postures) {
    public Safety {
        postures = Set.copyOf(postures);
    }

    /** Of the work on some regions; the posture is that of each region's face. */
    public static Safety of(Collection<RegionDecision> decisions, Function<String, Posture> posture) {
        boolean opening = false;
        boolean resin = false;
        boolean drying = false;
        Set<Posture> postures = EnumSet.noneOf(Posture.class);
        for (RegionDecision decision : decisions) {
            boolean wet = decision.method() == Method.DRY_OUT;
            boolean mixed = decision.method() == Method.INJECT || decision.method() == Method.RECORE;
            if (wet || mixed || decision.firstStep() != null) {
                postures.add(posture.apply(decision.region()));
                opening = true;
            }
            resin |= mixed;
            drying |= wet;
        }
        return new Safety(opening, resin, drying, postures);
    }

    /** Nothing is advised that could hurt. */
    public boolean none() {
        return !opening;
    }

    /** All of it in sentences; empty where there is none. */
    public String full() {
        return String.join(" ", sentences());
    }

    private List<String> sentences() {
        List<String> all = new ArrayList<>();
        if (none()) {
            return all;
        }
        all.add("Before a drill or saw goes in: isolate shore power and batteries, air out fuel vapour and gas, look "
                + sides() + " for wires, tanks and pipes.");
        all.add(
                "Draw off the dust and wear a P3 mask, eye protection and long sleeves: glass dust harms lungs, eyes and skin.");
        if (postures.contains(Posture.OVERHEAD)) {
            all.add("Overhead, goggles that seal and a face shield: dust and mix fall on whoever works there.");
        }
        if (resin) {
            all.add(
                    "Mix and laminate with an A2 filter in moving air: styrene and solvent harm, and their vapour burns. No flame"
                            + " or spark near.");
            all.add(
                    "Nitrile gloves, water at hand for the eyes: hardener burns, and epoxy can make allergic for good.");
        }
        if (drying) {
            all.add("Dry with warm air, never with a flame, from a supply with a residual-current breaker.");
        }
        all.add("Below deck is a confined space: blow air through it and never work there alone.");
        all.add(
                resin
                        ? "Leftovers harden in the open; liquid parts, rags and dust are waste as local rules say."
                        : "Dust and wet core are waste as local rules say.");
        return all;
    }

    private String sides() {
        return postures.stream()
                .sorted()
                .map(p -> Holding.of(p).otherSide())
                .reduce((a, b) -> a + " and " + b)
                .orElse(Holding.DECK.otherSide());
    }

    /** The same in one line; empty where there is none. */
    public String brief() {
        if (none()) {
            return "";
        }
        List<String> parts = new ArrayList<>();
        parts.add("power off and fuel vapour out before a drill goes in");
        parts.add("P3 mask and eye protection against glass dust");
        if (postures.contains(Posture.OVERHEAD)) {
            parts.add("a face shield overhead");
        }
        if (resin) {
            parts.add("gloves against hardener, A2 mask against styrene");
            parts.add("no flame near solvent");
        }
        if (drying) {
            parts.add("no flame for drying");
        }
        parts.add("never alone below deck");
        parts.add("waste by local rules");
        return String.join("; ", parts);
    }
}
