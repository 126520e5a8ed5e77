package corewright.repair.pattern;

import corewright.repair.mix.ReachLaw;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.SpaceTask;
import corewright.survey.Spot;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;

/**
 * What injection holes at tried places would reach, while a hand moves one: by the same cavity, reach and ways as the plan, without
 * its search, flow and cups. One call at a time; a call takes some milliseconds.
 */
public final class HoleTrial {
    private final Cavity cavity;
    private final DrillPlaces places;
    private final ReachLaw law;
    private final Travel travel;
    private final double cavityMm3;

    private HoleTrial(Cavity cavity, DrillPlaces places, ReachLaw law, Travel travel, double cavityMm3) {
        this.cavity = cavity;
        this.places = places;
        this.law = law;
        this.travel = travel;
        this.cavityMm3 = cavityMm3;
    }

    /** For the space of a plan. */
    public static HoleTrial of(SpaceTask task, InjectionPlan plan) {
        ReachLaw law = new ReachLaw(
                task.settings().resin(plan.resin()),
                task.settings().drilling(),
                task.settings().climate().temperatureC());
        Cavity cavity =
                Cavity.of(task, task.space().area(), Cavity.cellFor(task.space().area(), plan.reachMm()));
        double[] reachMm = new double[cavity.size()];
        for (int c : cavity.cells) {
            reachMm[c] = law.at(cavity.gapMm[c]).mm();
        }
        DrillPlaces places = DrillPlaces.of(
                cavity,
                task.space().area(),
                task.face(),
                task.settings().drilling().edgeClearanceMm());
        return new HoleTrial(
                cavity,
                places,
                law,
                new Travel(cavity, reachMm),
                plan.cavityMm3().p50());
    }

    /**
     * A place tried.
     *
     * @param reachMm of a nozzle's mouth; 0 for a hole, whose reach follows from the gap about it
     */
    public record Place(Spot spot, double reachMm) {
        /** That of a hole of the plan. */
        public static Place of(Hole hole) {
            return new Place(hole.spot(), hole.drilled() ? 0 : hole.reachMm());
        }
    }

    /**
     * What the places come to.
     *
     * @param covered share of the cavity's cells that the mix gets to
     * @param servedMm3 cavity that falls to each place, in their order; 0 for one off the cavity
     * @param allowed whether a hole may be drilled at each
     * @param out corners of the cells out of reach, survey millimetres, the lower ones
     * @param cellMm side of a cell
     * @param outMm3 cavity out of reach
     * @param outAt well inside the largest patch out of reach; null where all is reached
     */
    public record Result(
            double covered,
            List<Double> servedMm3,
            List<Boolean> allowed,
            List<Coordinate> out,
            double cellMm,
            double outMm3,
            @Nullable Coordinate outAt) {
        public Result {
            servedMm3 = List.copyOf(servedMm3);
            allowed = List.copyOf(allowed);
            out = List.copyOf(out);
        }
    }

    /** Tries places. */
    public synchronized Result at(List<Place> tried) {
        int[] cellOf = tried.stream().mapToInt(p -> cell(p.spot)).toArray();
        int[] sources = Arrays.stream(cellOf).filter(c -> c >= 0).distinct().toArray();
        double[] reachMm = new double[sources.length];
        for (int s = 0; s < sources.length; s++) {
            reachMm[s] = reach(tried, cellOf, sources[s]);
        }
        Travel.Field field = travel.from(sources, reachMm);
        double[] served = new double[sources.length];
        double whole = 0;
        double outGap = 0;
        List<Coordinate> out = new ArrayList<>();
        boolean[] missed = new boolean[cavity.size()];
        for (int c : cavity.cells) {
            whole += cavity.gapMm[c];
            if (field.cost[c] <= 1 + 1e-9) {
                served[field.owner[c]] += cavity.gapMm[c];
            } else {
                missed[c] = true;
                outGap += cavity.gapMm[c];
                out.add(new Coordinate(cavity.x(c) - cavity.cell / 2, cavity.y(c) - cavity.cell / 2));
            }
        }
        List<Double> shares = new ArrayList<>();
        List<Boolean> allowed = new ArrayList<>();
        for (int i = 0; i < cellOf.length; i++) {
            int at = index(sources, cellOf[i]);
            shares.add(at < 0 || whole == 0 ? 0 : served[at] * cavityMm3 / whole);
            allowed.add(tried.get(i).reachMm > 0 || (cellOf[i] >= 0 && places.allowed[cellOf[i]]));
        }
        double covered = cavity.cells.length == 0 ? 1 : 1 - (double) out.size() / cavity.cells.length;
        double outMm3 = whole == 0 ? 0 : outGap * cavityMm3 / whole;
        return new Result(covered, shares, allowed, out, cavity.cell, outMm3, largest(missed));
    }

    /** Whether a hole or vent may be drilled at a place. */
    public boolean allowed(Spot spot) {
        int cell = cell(spot);
        return cell >= 0 && places.allowed[cell];
    }

    private double reach(List<Place> tried, int[] cellOf, int cell) {
        double reachMm = 0;
        for (int i = 0; i < cellOf.length; i++) {
            if (cellOf[i] == cell) {
                double own = tried.get(i).reachMm;
                reachMm = Math.max(
                        reachMm,
                        own > 0
                                ? own
                                : law.at(HolePlacing.gapNear(cavity, cell)).mm());
            }
        }
        return reachMm;
    }

    private static int index(int[] sources, int cell) {
        for (int s = 0; s < sources.length; s++) {
            if (sources[s] == cell) {
                return s;
            }
        }
        return -1;
    }

    private int cell(Spot spot) {
        int column = (int) Math.floor((spot.xMm() - cavity.x0) / cavity.cell);
        int row = (int) Math.floor((spot.yMm() - cavity.y0) / cavity.cell);
        boolean on = column >= 0 && row >= 0 && column < cavity.columns && row < cavity.rows;
        return on && cavity.inside(row * cavity.columns + column) ? row * cavity.columns + column : -1;
    }

    /** The cell that a flood of the largest patch comes to in its middle. */
    private @Nullable Coordinate largest(boolean[] missed) {
        boolean[] seen = new boolean[missed.length];
        List<Integer> best = List.of();
        for (int c : cavity.cells) {
            if (missed[c] && !seen[c]) {
                List<Integer> patch = patch(c, missed, seen);
                best = patch.size() > best.size() ? patch : best;
            }
        }
        if (best.isEmpty()) {
            return null;
        }
        double x = best.stream().mapToDouble(cavity::x).average().orElse(0);
        double y = best.stream().mapToDouble(cavity::y).average().orElse(0);
        int nearest = best.get(0);
        for (int c : best) {
            boolean nearer = Math.hypot(cavity.x(c) - x, cavity.y(c) - y)
                    < Math.hypot(cavity.x(nearest) - x, cavity.y(nearest) - y);
            nearest = nearer ? c : nearest;
        }
        return cavity.centre(nearest);
    }

    private List<Integer> patch(int from, boolean[] missed, boolean[] seen) {
        List<Integer> patch = new ArrayList<>();
        Deque<Integer> open = new ArrayDeque<>(List.of(from));
        seen[from] = true;
        while (!open.isEmpty()) {
            int c = open.pop();
            patch.add(c);
            for (int next : new int[] {c - 1, c + 1, c - cavity.columns, c + cavity.columns}) {
                if (next >= 0 && next < missed.length && missed[next] && !seen[next]) {
                    seen[next] = true;
                    open.push(next);
                }
            }
        }
        return patch;
    }
}
