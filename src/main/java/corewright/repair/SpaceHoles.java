package corewright.repair;

import corewright.repair.pattern.Cavity;
import corewright.repair.pattern.HolePlacing;
import corewright.repair.pattern.PlacedHoles;
import corewright.repair.pattern.Slope;
import corewright.repair.pattern.WorkingOrder;
import corewright.repair.plan.DepthStop;
import corewright.repair.plan.Hole;
import corewright.repair.plan.Reach;
import corewright.repair.plan.SpaceTask;
import corewright.survey.Laminate;
import corewright.survey.Spot;
import corewright.survey.settings.Drilling;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;

/** Makes numbered holes of the places of a pattern: what each is called, how deep it is drilled and what it serves. */
final class SpaceHoles {
    private final SpaceTask task;
    private final PlacedHoles pattern;
    private final Cavity cavity;

    SpaceHoles(SpaceTask task, PlacedHoles pattern) {
        this.task = task;
        this.pattern = pattern;
        cavity = pattern.cavity;
    }

    /**
     * Those that are filled, in working order: the nozzle, then from the far end towards the main vent.
     *
     * @param vents cells, the main one first
     */
    List<Hole> injections(List<Integer> vents, Reach reach, double cavityMm3) {
        List<Coordinate> centres =
                Arrays.stream(pattern.cells).mapToObj(pattern::place).toList();
        Coordinate mainVent = vents.isEmpty() ? null : cavity.centre(vents.get(0));
        double[] served = pattern.served(cavityMm3);
        List<Hole> holes = new ArrayList<>();
        for (Map.Entry<Integer, Hole.Nozzle> nozzle : pattern.nozzles.entrySet()) {
            int i = Arrays.binarySearch(pattern.cells, nozzle.getKey());
            double reachMm = pattern.holeReachMm[nozzle.getKey()];
            holes.add(hole(
                    new Drilled(Hole.Kind.NOZZLE, "-N" + (holes.size() + 1), nozzle.getValue(), gapMm(nozzle.getKey())),
                    holes.size() + 1,
                    centres.get(i),
                    reachMm,
                    served[i]));
        }
        int number = 1;
        for (int i : WorkingOrder.of(centres, Slope.of(task.face()), mainVent, reach.mm())) {
            if (!pattern.nozzles.containsKey(pattern.cells[i])) {
                double reachMm = pattern.holeReachMm[pattern.cells[i]];
                Drilled what = new Drilled(Hole.Kind.INJECTION, "-" + number++, null, gapMm(pattern.cells[i]));
                holes.add(hole(what, holes.size() + 1, centres.get(i), reachMm, served[i]));
            }
        }
        return holes;
    }

    /** What a hole is, and what it is called in its region. */
    private record Drilled(Hole.Kind kind, String suffix, Hole.@Nullable Nozzle nozzle, double gapMm) {}

    private double gapMm(int cell) {
        return HolePlacing.gapNear(cavity, cell);
    }

    List<Hole> withVents(List<Hole> injections, List<Integer> vents) {
        List<Hole> holes = new ArrayList<>(injections);
        int last = injections.stream().mapToInt(Hole::order).max().orElse(0);
        for (int v = 0; v < vents.size(); v++) {
            Coordinate at = pattern.vent(vents.get(v));
            holes.add(hole(new Drilled(Hole.Kind.VENT, "-V" + (v + 1), null, 0), last + v + 1, at, 0, 0));
        }
        return holes;
    }

    private Hole hole(Drilled what, int order, Coordinate at, double reachMm, double servedMm3) {
        Drilling drilling = task.settings().drilling();
        Spot spot =
                new Spot(task.space().face(), Math.rint(at.x), Math.rint(at.y)); // a person measures whole millimetres
        double depthMm = Cavity.depthAt(task.voidDepthMm(), spot.xMm(), spot.yMm());
        double stopMm =
                what.nozzle != null ? 0 : DepthStop.mm(task.laminateAt(spot), depthMm, drilling.depthMarginMm());
        String region = task.space().at(spot.coordinate()).id();
        return new Hole(
                region + what.suffix,
                region,
                what.kind,
                order,
                spot,
                what.nozzle != null ? drilling.nozzleOuterMm() : drilling.holeDiameterMm(),
                stopMm,
                reachMm,
                servedMm3,
                what.nozzle,
                Hole.Range.NONE,
                what.gapMm);
    }

    /** One setting of the collar for all holes where their cavity allows it, else as few as the laminates ask for. */
    List<Hole> collared(List<Hole> holes) {
        Map<Laminate, Double> least = new HashMap<>();
        for (Hole hole : holes) {
            if (hole.drilled()) {
                least.merge(task.laminateAt(hole.spot()), hole.depthStopMm(), Math::min);
            }
        }
        Map<Laminate, Double> settings =
                DepthStop.collarsMm(least, task.settings().drilling().depthMarginMm());
        return holes.stream()
                .map(h -> h.drilled()
                        ? h.stoppedAt(settings.getOrDefault(task.laminateAt(h.spot()), h.depthStopMm()))
                        : h)
                .toList();
    }
}
