package corewright.desktop.work;

import corewright.drawing.kit.Figures;
import corewright.repair.mix.HeldCups;
import corewright.repair.plan.Batch;
import corewright.repair.plan.CupTarget;
import corewright.repair.plan.Hole;
import corewright.repair.work.LiftsIn;
import corewright.survey.WorkEntry;
import java.util.ArrayList;
import java.util.List;

/** The cups of an injection one after another: done, in hand, to come, held back. Knows no window. */
public final class CupsInRow {
    /** How far a cup is. */
    public enum State {
        DONE,
        IN_HAND,
        TO_COME,
        HELD_BACK
    }

    /**
     * @param title "Cup 2, in hand"
     * @param words grams that are in and to go, or what the scale shows
     */
    public record Cup(int number, State state, String title, String words) {}

    private final WorkModel model;
    private final LiftsIn lifts;

    private CupsInRow(WorkModel model) {
        this.model = model;
        lifts = model.lifts();
    }

    /** In the order of the day, those held back last. */
    public static List<Cup> of(WorkModel model) {
        CupsInRow row = new CupsInRow(model);
        List<Cup> all = new ArrayList<>();
        row.lifts.cups().forEach(c -> all.add(row.cup(c)));
        row.held().forEach(c -> all.add(row.cup(c)));
        return all;
    }

    private Cup cup(Batch cup) {
        State state = state(cup);
        String title = "Cup " + cup.number()
                + switch (state) {
                    case DONE -> ", done";
                    case IN_HAND -> ", in hand";
                    case TO_COME -> "";
                    case HELD_BACK -> ", held back";
                };
        return new Cup(cup.number(), state, title, words(cup, state));
    }

    private State state(Batch cup) {
        if (HeldCups.heldBack(cup)) {
            return State.HELD_BACK;
        }
        if (cup.holes().stream().allMatch(h -> isIn(h, cup))) {
            return State.DONE;
        }
        return model.cup().filter(c -> c.number() == cup.number()).isPresent() ? State.IN_HAND : State.TO_COME;
    }

    /** Whether what a hole takes from a cup is in. */
    private boolean isIn(String hole, Batch cup) {
        return lifts.in(hole) >= lifts.all(hole)
                || lifts.cup(hole).filter(c -> c.number() > cup.number()).isPresent();
    }

    private String words(Batch cup, State state) {
        double in = inFrom(cup);
        if (state == State.DONE) {
            return Figures.fixed(in, 0) + " of " + Figures.fixed(planned(cup), 0) + " g in";
        }
        if (state == State.IN_HAND && in > 0) {
            return Figures.fixed(in, 0) + " g in, " + Figures.fixed(left(cup), 0) + " to go";
        }
        CupTarget target = CupTarget.of(cup);
        return "resin to " + Figures.fixed(target.firstToG(), 0) + ", both to " + Figures.fixed(target.secondToG(), 0)
                + " g";
    }

    private double planned(Batch cup) {
        return holes(cup).stream().mapToDouble(model::plannedG).sum();
    }

    private double left(Batch cup) {
        return holes(cup).stream()
                .filter(h -> !isIn(h.id(), cup))
                .mapToDouble(model::plannedG)
                .sum();
    }

    private List<Hole> holes(Batch cup) {
        return model.holes().stream().filter(h -> cup.holes().contains(h.id())).toList();
    }

    /** Cups that are held back for this space. */
    private List<Batch> held() {
        return model.bench().found().stream()
                .flatMap(a -> HeldCups.of(a.decision().injections(), a.survey().settings()).stream())
                .filter(c ->
                        model.plan().filter(p -> p.region().equals(c.region())).isPresent())
                .toList();
    }

    /** Grams that the log has from a cup; a line that names none counts for the first cup of its hole. */
    private double inFrom(Batch cup) {
        return model.entries().stream()
                .filter(e -> cup.number() == from(e))
                .mapToDouble(WorkEntry::grams)
                .sum();
    }

    private int from(WorkEntry entry) {
        Integer said = entry.cup();
        return said != null
                ? said
                : lifts.cups().stream()
                        .filter(c -> c.holes().contains(entry.hole()))
                        .map(Batch::number)
                        .findFirst()
                        .orElse(-1);
    }

    /** "In: 101 g of 261, 3 of 8 holes. To go: 160 g." What a hole took more than planned is in the sum. */
    public static String sum(WorkModel model) {
        List<Hole> holes = model.holes();
        double in = holes.stream().mapToDouble(h -> model.logged(h).orElse(0.0)).sum();
        List<Hole> open = holes.stream().filter(h -> model.logged(h).isEmpty()).toList();
        double left = open.stream().mapToDouble(model::plannedG).sum();
        return "In: " + Figures.fixed(in, 0) + " g of " + Figures.fixed(in + left, 0) + ", "
                + (holes.size() - open.size()) + " of " + holes.size() + " holes. To go: " + Figures.fixed(left, 0)
                + " g.";
    }
}
