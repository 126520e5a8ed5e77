package corewright.drawing;

import corewright.damage.Region;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

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
    private static final double LONGEST_RUN = 90;
    private static final double WORD_CLEAR = 0.8;
    private static final double LINE_CLEAR = 0.6;

    /** What saying less, or not reaching the outside at all, is worth in millimetres of leader. */
    private static final double BRIEF_COST = 150;

    private static final double INSIDE_COST = 2000;

    /** A level leg is read along with its words, an upright one crosses readings: it may be the longer. */
    private static final double LEVEL_COST = 0.6;

    private record Site(Region region, List<String> full, List<String> brief, List<Leads.Lead> leads, double x) {}

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
     * @param leads ways out of each region, as {@link Leads} finds them
     */
    static Result place(MapSpec spec, PlanView view, Ground ground, Obstacles fixed, Leads leads) {
        RegionWords words = new RegionWords(spec);
        List<Site> sites = new ArrayList<>();
        for (Region region : spec.damage().regions()) {
            Polygon area = view.onPaper(region.likely());
            sites.add(new Site(
                    region,
                    words.full(region),
                    words.brief(region),
                    leads.of(Pattern.drawn(area)),
                    view.x(region.label().getX())));
        }
        return new LabelPlacer(ground, fixed).best(sites, view);
    }

    private Result best(List<Site> sites, PlanView view) {
        List<Site> byX = new ArrayList<>(sites);
        byX.sort(Comparator.comparingDouble(Site::x)
                .thenComparing(s -> s.region().id()));
        List<Site> reversed = new ArrayList<>(byX);
        Collections.reverse(reversed);
        List<Site> byNeed = new ArrayList<>(byX);
        byNeed.sort(Comparator.comparingDouble(
                (Site s) -> s.leads().isEmpty() ? 0 : -s.leads().get(0).cost()));
        Map<String, Placed> best = Map.of();
        for (List<Site> order : List.of(byX, reversed, byNeed, sites)) {
            Map<String, Placed> placed = new HashMap<>();
            for (Site site : order) {
                placed.put(site.region().id(), place(site, placed, view));
            }
            for (Site site : order) {
                placed.remove(site.region().id());
                placed.put(site.region().id(), place(site, placed, view));
            }
            if (best.isEmpty() || cost(placed) < cost(best)) {
                best = placed;
            }
        }
        Map<String, Placed> found = best;
        List<RegionLabel> labels = sites.stream()
                .map(s -> Objects.requireNonNull(found.get(s.region().id())).label())
                .toList();
        return new Result(labels, cost(best));
    }

    private static double cost(Map<String, Placed> placed) {
        return placed.values().stream().mapToDouble(Placed::cost).sum();
    }

    private Placed place(Site site, Map<String, Placed> others, PlanView view) {
        Obstacles taken = fixed.copy();
        for (Placed other : others.values()) {
            other.label().claim(taken, WORD_CLEAR, LINE_CLEAR);
        }
        Placed full = outside(site, site.full(), taken);
        if (full != null) {
            return full;
        }
        Placed brief = outside(site, site.brief(), taken);
        if (brief != null) {
            return new Placed(brief.label(), brief.cost() + BRIEF_COST);
        }
        Coordinate at = view.onPaper(site.region().label()).getCoordinate();
        return new Placed(RegionLabel.inside(site.region().id(), site.brief(), at.x, at.y), INSIDE_COST);
    }

    private @Nullable Placed outside(Site site, List<String> lines, Obstacles taken) {
        String id = site.region().id();
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
        for (double out = 2; lead.cost() + out < limit; out += BEND_STEP) {
            double leadY = lead.edgeY() + sign * out;
            if (!ground.holdsY(leadY)
                    || !taken.free(
                            Box.between(lead.x(), lead.dotY(), lead.x(), leadY).grown(0.3))) {
                break;
            }
            for (double run = LEAST_RUN; run <= LONGEST_RUN; run += RUN_STEP) {
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

    private boolean fits(RegionLabel label, Obstacles taken) {
        Box leg = label.levelLeg().grown(0.3);
        return ground.free(label.box())
                && ground.free(leg)
                && taken.free(label.box().grown(WORD_CLEAR))
                && taken.free(leg);
    }
}
