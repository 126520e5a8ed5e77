package corewright.drawing.placing;

import corewright.drawing.kit.Box;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;

/**
 * Finds places for region labels outside the deck. A leader goes straight up or down from its region, bends once beyond the
 * deck's edge and runs into its words. Each label takes the cheapest place at which neither its words nor its leader touch
 * a label or leader placed before; several orders are tried and the cheapest whole is kept, so the result depends on
 * nothing but the map.
 */
final class LabelPlacer {
    private static final double BEND_STEP = 1;
    private static final double RUN_STEP = 2.5;
    private static final double LEAST_RUN = 3;
    private static final double LONGEST_RUN = 80;
    private static final double FURTHEST = 70;
    private static final double FINE_UNTIL = 16;
    private static final double WORD_CLEAR = 1.2;
    private static final double LINE_CLEAR = 0.6;
    private static final int ROUNDS = 2;

    /** Orders tried beyond the plain ones where a label found no room; the seed is any number, but always the same. */
    private static final int MORE_ORDERS = 8;

    private static final long SEED = 20260402L;

    /** What saying less, or not reaching the outside at all, is worth in millimetres of leader. */
    private static final double BRIEF_COST = 150;

    private static final double INSIDE_COST = 2000;

    /** A level leg is read along with its words, an upright one crosses readings: it may be the longer. */
    private static final double LEVEL_COST = 0.6;

    private record Site(LabelSubject subject, List<Leads.Lead> leads) {
        String id() {
            return subject.id();
        }

        double x() {
            return subject.at().x;
        }
    }

    private record Placed(RegionLabel label, double cost) {}

    /** Labels and what they cost together. */
    record Result(List<RegionLabel> labels, double cost) {}

    private final Ground ground;
    private final Obstacles fixed;

    private LabelPlacer(Ground ground, Obstacles fixed) {
        this.ground = ground;
        this.fixed = fixed;
    }

    /**
     * @param fixed what no label may touch outside the deck
     * @param leads finds the ways out of each subject's area
     */
    static Result place(List<LabelSubject> subjects, Ground ground, Obstacles fixed, Leads leads) {
        List<Site> sites = subjects.stream()
                .map(s -> new Site(s, leads.of(s.area(), s.others())))
                .toList();
        return new LabelPlacer(ground, fixed).best(sites);
    }

    private Result best(List<Site> sites) {
        List<Site> byX = new ArrayList<>(sites);
        byX.sort(Comparator.comparingDouble(Site::x).thenComparing(Site::id));
        List<Site> reversed = new ArrayList<>(byX);
        Collections.reverse(reversed);
        List<Site> byNeed = new ArrayList<>(byX);
        byNeed.sort(Comparator.comparingDouble(
                (Site s) -> s.leads().isEmpty() ? 0 : -s.leads().get(0).cost()));
        List<List<Site>> orders = new ArrayList<>(List.of(byX, reversed, byNeed, sites));
        Random random = new Random(SEED);
        for (int i = 0; i < MORE_ORDERS; i++) {
            List<Site> shuffled = new ArrayList<>(byX);
            Collections.shuffle(shuffled, random);
            orders.add(shuffled);
        }
        Map<String, Placed> best = new HashMap<>();
        for (int i = 0; i < orders.size(); i++) {
            if (i >= orders.size() - MORE_ORDERS && worst(best) < BRIEF_COST) {
                break; // every label is said in full
            }
            Map<String, Placed> placed = inOrder(orders.get(i));
            if (best.isEmpty() || cost(placed) < cost(best)) {
                best = placed;
            }
        }
        Map<String, Placed> found = best;
        for (int round = 0; round < ROUNDS && swap(sites, found); round++) {
            // each round is cheaper than the one before
        }
        List<RegionLabel> labels = sites.stream()
                .map(s -> Objects.requireNonNull(found.get(s.id())).label())
                .toList();
        return new Result(labels, cost(found));
    }

    /** One label after the other, then each once more with all others standing. */
    private Map<String, Placed> inOrder(List<Site> order) {
        Map<String, Placed> placed = new HashMap<>();
        for (int round = 0; round < 2; round++) {
            for (Site site : order) {
                placed.remove(site.id());
                placed.put(site.id(), place(site, placed));
            }
        }
        return placed;
    }

    private static double worst(Map<String, Placed> placed) {
        return placed.values().stream().mapToDouble(Placed::cost).max().orElse(0);
    }

    /** Places every label that says less than it could before one other, and keeps what makes the whole cheaper. */
    private boolean swap(List<Site> order, Map<String, Placed> placed) {
        boolean better = false;
        for (Site site : order) {
            for (Site other : order) {
                if (site == other
                        || Objects.requireNonNull(placed.get(site.id())).cost() < BRIEF_COST) {
                    continue;
                }
                Map<String, Placed> trial = new HashMap<>(placed);
                trial.remove(site.id());
                trial.remove(other.id());
                trial.put(site.id(), place(site, trial));
                trial.put(other.id(), place(other, trial));
                if (cost(trial) < cost(placed) - 1) {
                    placed.putAll(trial);
                    better = true;
                }
            }
        }
        return better;
    }

    private static double cost(Map<String, Placed> placed) {
        return placed.values().stream().mapToDouble(Placed::cost).sum();
    }

    private Placed place(Site site, Map<String, Placed> others) {
        Obstacles taken = fixed.copy();
        for (Placed other : others.values()) {
            other.label().claim(taken, WORD_CLEAR, LINE_CLEAR);
        }
        Placed full = outside(site, site.subject().full(), taken);
        if (full != null) {
            return full;
        }
        Placed brief = outside(site, site.subject().brief(), taken);
        if (brief != null) {
            return new Placed(brief.label(), brief.cost() + BRIEF_COST);
        }
        Coordinate at = site.subject().at();
        return new Placed(RegionLabel.inside(site.id(), site.subject().brief(), at.x, at.y), INSIDE_COST);
    }

    private @Nullable Placed outside(Site site, List<String> lines, Obstacles taken) {
        String id = site.id();
        double width = RegionLabel.width(id, lines);
        double height = RegionLabel.height(lines);
        Placed best = null;
        for (Leads.Lead lead : site.leads()) {
            double bound = best == null ? Double.MAX_VALUE : best.cost();
            if (lead.cost() >= bound) {
                break;
            }
            Placed found = beyond(lead, id, lines, new Box(0, 0, width, height), taken, bound);
            if (found != null) {
                best = found;
            }
        }
        return best;
    }

    /** The cheapest bend and run of one lead, or null where none is under {@code bound}. */
    private @Nullable Placed beyond(
            Leads.Lead lead, String id, List<String> lines, Box size, Obstacles taken, double bound) {
        Placed best = null;
        double limit = bound;
        double sign = lead.up() ? -1 : 1;
        for (double out = 2; out < FURTHEST && lead.cost() + out < limit; out += step(out, BEND_STEP)) {
            double leadY = lead.edgeY() + sign * out;
            if (!ground.holdsY(leadY)
                    || !taken.free(
                            Box.between(lead.x(), lead.dotY(), lead.x(), leadY).grown(0.3))) {
                break;
            }
            for (double run = LEAST_RUN; run <= LONGEST_RUN; run += step(run, RUN_STEP)) {
                double cost = lead.cost() + out + LEVEL_COST * run;
                if (cost >= limit) {
                    break;
                }
                for (boolean toLeft : new boolean[] {true, false}) {
                    RegionLabel label = RegionLabel.beside(id, lines, size, lead, leadY, run, toLeft);
                    if (cost < limit && fits(label, taken)) {
                        best = new Placed(label, cost);
                        limit = cost;
                    }
                }
            }
        }
        return best;
    }

    /** Fine near the region, coarser far out, where a leader's length is judged by eye anyway. */
    private static double step(double at, double least) {
        return at < FINE_UNTIL ? least : 2 * least;
    }

    private boolean fits(RegionLabel label, Obstacles taken) {
        Box leg = label.levelLeg().grown(0.3);
        return ground.free(label.box())
                && ground.free(leg)
                && taken.free(label.box().grown(WORD_CLEAR))
                && taken.free(leg);
    }
}
