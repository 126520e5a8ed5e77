package corewright.desktop.work;

import corewright.assessment.Assessment;
import corewright.assessment.Issued;
import corewright.desktop.state.Units;
import corewright.desktop.state.Workbench;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.PlaceNames;
import corewright.survey.FrozenPlan;
import corewright.survey.FrozenPlan.PlannedCup;
import corewright.survey.FrozenPlan.PlannedHole;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** What the next revision of a plan alters in one space, hole by hole, or what the one just issued did. Knows no window. */
public final class WhatChanged {
    /** Two plans of one survey, the earlier first. */
    private record Two(FrozenPlan before, FrozenPlan next) {}

    private final Workbench bench;
    private volatile @Nullable Two taken;
    private @Nullable Assessment of;
    private Runnable told = () -> {};
    private @Nullable Two waiting;

    WhatChanged(Workbench bench) {
        this.bench = bench;
    }

    /** A plan is put down in place of another; may be told on any thread. */
    void took(FrozenPlan before, FrozenPlan next) {
        taken = before.isNone() ? null : new Two(before, next);
    }

    /** The last change of plans, where it was not taken back. */
    private Optional<Two> taken() {
        return Optional.ofNullable(taken).filter(t -> bench.survey()
                .filter(s -> s.repairPlan().equals(t.next))
                .isPresent());
    }

    /** Told when it is known what waits, which is worked out aside. */
    public void listen(Runnable listener) {
        told = listener;
    }

    /** The revision that waits to be issued. */
    private Optional<Two> waiting() {
        Assessment found = bench.found().filter(a -> a.ages().freshRest()).orElse(null);
        if (found != of) {
            of = found;
            waiting = null;
            if (found != null && !found.survey().repairPlan().isNone()) {
                bench.jobs().run(() -> next(found), next -> take(found, next), e -> {});
            }
        }
        return Optional.ofNullable(waiting);
    }

    private static FrozenPlan next(Assessment found) {
        return Issued.of(found.survey(), found.damage(), found.decision()).plan();
    }

    private void take(Assessment found, FrozenPlan next) {
        FrozenPlan before = found.survey().repairPlan();
        if (found == of && !next.equals(before)) {
            waiting = new Two(before, next);
            told.run();
        }
    }

    /** Whether a revision waits to be issued. */
    public boolean waits() {
        return waiting().isPresent();
    }

    /** "Revision 2 waits: the cards still say revision 1." Empty where nothing changed since work began. */
    public String head() {
        return waiting()
                .map(t -> "Revision " + t.next.revision()
                        + " of the plan is ready to be taken; the cards in hand are revision " + t.before.revision()
                        + ".")
                .or(() -> taken().map(t -> "Revision " + t.next.revision() + " is taken: cards of revision "
                        + t.before.revision() + " are out of date."))
                .orElse("");
    }

    /** A sentence each, of the holes of some regions; then which other regions change. */
    public List<String> sentences(Set<String> regions) {
        return waiting()
                .or(this::taken)
                .map(t -> sentences(t.before, t.next, regions))
                .orElse(List.of());
    }

    /** What differs between two plans, in the holes of some regions. */
    List<String> sentences(FrozenPlan before, FrozenPlan next, Set<String> regions) {
        List<String> all = new ArrayList<>();
        Set<String> others = new TreeSet<>();
        for (PlannedHole now : next.holes()) {
            PlannedHole old = before.hole(now.name()).orElse(null);
            String said = old == null || old.dropped() ? fresh(now) : same(old, now);
            if (!said.isEmpty()) {
                if (regions.contains(now.region())) {
                    all.add(said);
                } else {
                    others.add(now.region());
                }
            }
        }
        for (String region : regions) {
            String is = mixed(next, region);
            String was = mixed(before, region);
            if (!is.equals(was)) {
                all.add("To mix for " + region + " in all: " + is + ", was " + was + ".");
            }
        }
        if (!others.isEmpty()) {
            all.add("Other places change too: " + String.join(", ", others) + ".");
        }
        return all;
    }

    private String fresh(PlannedHole hole) {
        if (hole.dropped()) {
            return "";
        }
        List<String> facts = new ArrayList<>();
        bench.survey()
                .map(s -> PlaceNames.of(s.face(hole.spot().face()))
                        .measured(hole.spot().xMm(), hole.spot().yMm(), units()::place))
                .ifPresent(facts::add);
        if (hole.stopMm() > 0) {
            facts.add("depth stop " + units().depth(hole.stopMm()));
        }
        if (hole.fills()) {
            facts.add("takes " + grams(hole.grams()));
        }
        return name(hole) + " is new: " + String.join(", ", facts) + ".";
    }

    private String same(PlannedHole old, PlannedHole now) {
        if (now.dropped()) {
            return name(now) + " is left out: leave the deck closed there.";
        }
        List<String> parts = new ArrayList<>();
        if (!grams(old.grams()).equals(grams(now.grams())) && !(now.grams() > 0 && isLogged(now))) {
            parts.add("takes " + (now.grams() > 0 ? grams(now.grams()) : "no more") + ", was " + grams(old.grams()));
        }
        if (old.stopMm() != now.stopMm()) {
            parts.add("has its depth stop at " + units().depth(now.stopMm()) + ", was " + units().depth(old.stopMm()));
        }
        return parts.isEmpty() ? "" : name(now) + " " + String.join("; it ", parts) + ".";
    }

    /** What is planned for a hole that has its line in the log is a figure to compare with, and asks for nothing. */
    private boolean isLogged(PlannedHole hole) {
        return bench.survey().stream().flatMap(s -> s.log().stream()).anyMatch(e -> e.hole()
                .equals(hole.name()));
    }

    static String name(PlannedHole hole) {
        String kind = hole.kind() == FrozenPlan.Kind.INJECTION ? "Hole " : hole.fills() ? "Nozzle " : "Vent ";
        return kind + Figures.holeNumber(hole.name());
    }

    private Units units() {
        return bench.sight().units();
    }

    private static String mixed(FrozenPlan plan, String region) {
        return grams(plan.cups().stream()
                .filter(c -> c.region().equals(region))
                .mapToDouble(WhatChanged::whole)
                .sum());
    }

    private static double whole(PlannedCup cup) {
        return cup.partAG() + cup.partBG();
    }

    private static String grams(double g) {
        return Figures.fixed(g, 0) + " g";
    }
}
