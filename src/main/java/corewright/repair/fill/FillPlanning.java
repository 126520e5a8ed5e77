package corewright.repair.fill;

import corewright.contour.Raster;
import corewright.repair.mix.ReachLaw;
import corewright.repair.pattern.Cavity;
import corewright.repair.pattern.DrillPlaces;
import corewright.repair.pattern.Slope;
import corewright.repair.plan.Batch;
import corewright.repair.plan.Fill;
import corewright.repair.plan.Hole;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Spot;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Runs a plan through {@link FillSimulation} and gives air that stays enclosed a vent, at most three times.
 *
 * <p>The raster is 25 mm above 1 m2, 12.5 mm below, finer in small regions. An access lets air out like a vent.
 */
public final class FillPlanning {
    private static final int ROUNDS = 3;

    /** A smaller pocket is not worth a hole, nor one of a smaller share of the cavity. Practice. */
    private static final double POCKET_MM3 = 2000;

    private static final double POCKET_SHARE = 0.0015;

    /** In a thin cavity a small pocket is a large area: this share is worth a hole whatever its volume. Practice. */
    private static final double THIN_SHARE = 0.01;

    /** No vent nearer to another hole. Practice. */
    private static final double APART_MM = 20;

    private static final double COARSE_FROM_MM2 = 1e6;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Face face;
    private final Cavity cavity;
    private final DrillPlaces places;
    private final Cavity fine;
    private final Resin resin;
    private final Settings settings;

    /**
     * @param cavity on the simulation's raster
     * @param fine the pattern's raster, with the places for holes
     */
    public FillPlanning(Face face, Cavity cavity, Cavity fine, DrillPlaces places, Resin resin, Settings settings) {
        this.face = face;
        this.cavity = cavity;
        this.fine = fine;
        this.places = places;
        this.resin = resin;
        this.settings = settings;
    }

    public static double cellMm(double areaMm2) {
        return areaMm2 > COARSE_FROM_MM2 ? 25 : Math.min(12.5, Math.sqrt(areaMm2) / 16);
    }

    /** Vents, as cells of the pattern's raster, and the fill with them. */
    public record Outcome(List<Integer> vents, Fill fill) {
        public Outcome {
            vents = List.copyOf(vents);
        }
    }

    /** The first vents and those that pockets asked for. */
    public Outcome of(List<Hole> injections, List<Batch> batches, List<Integer> firstVents) {
        if (Arrays.stream(cavity.cells).allMatch(c -> cavity.open[c] == 0)) {
            return new Outcome(firstVents, Fill.NONE);
        }
        List<Integer> vents = new ArrayList<>(firstVents);
        List<FillSimulation.Shot> shots = shots(injections, batches);
        double worthMm3 = Math.max(Math.min(POCKET_MM3, THIN_SHARE * wholeMm3()), POCKET_SHARE * wholeMm3());
        Outcome best = null;
        for (int round = 0; ; round++) {
            FillSimulation.Setting setting = setting(vents);
            FillSimulation.Result result = FillSimulation.run(setting, shots);
            List<FillSimulation.Pocket> pockets = FillSimulation.pockets(setting, result);
            if (best == null || result.emptyShare() < best.fill.emptyShare()) { // a vent can also lead mix astray
                best = new Outcome(vents, fill(result, pockets, shots));
            }
            boolean added = false;
            for (FillSimulation.Pocket pocket : pockets) {
                added |= round < ROUNDS && pocket.mm3() > worthMm3 && vent(pocket, injections, vents);
            }
            if (!added) {
                return best;
            }
        }
    }

    private double wholeMm3() {
        double gap =
                Arrays.stream(cavity.cells).mapToDouble(c -> cavity.gapMm[c]).sum();
        return gap * cavity.cell * cavity.cell;
    }

    private FillSimulation.Setting setting(List<Integer> vents) {
        List<Integer> outlets = new ArrayList<>();
        for (int vent : vents) {
            outlets.add(cellAt(fine.centre(vent)));
        }
        for (Feature.Access access : face.all(Feature.Access.class)) {
            for (int c : cavity.cells) {
                if (access.geometry().distance(FACTORY.createPoint(cavity.centre(c))) <= cavity.cell / 2) {
                    outlets.add(c);
                }
            }
        }
        return new FillSimulation.Setting(
                cavity,
                FillSimulation.Setting.heights(cavity, Slope.of(face), face.tiltDeg()),
                outlets.stream().mapToInt(c -> c).toArray(),
                resin,
                settings.drilling(),
                settings.climate().temperatureC());
    }

    /** The liquid of each hole's share, in equal parts where it has several cups. */
    private List<FillSimulation.Shot> shots(List<Hole> injections, List<Batch> batches) {
        double liquid = wholeMm3() * resin.pack() / resin.expansion();
        double whole = injections.stream().mapToDouble(Hole::servedMm3).sum();
        List<FillSimulation.Shot> shots = new ArrayList<>();
        for (Batch batch : batches) {
            for (Hole hole : injections) {
                if (batch.holes().contains(hole.id())) {
                    long cups = batches.stream()
                            .filter(b -> b.holes().contains(hole.id()))
                            .count();
                    double part = liquid * hole.servedMm3() / whole / cups;
                    double nozzle = hole.drilled() ? 0 : ReachLaw.nozzleResistance(settings.drilling());
                    int cell = cellAt(hole.spot().coordinate());
                    shots.add(new FillSimulation.Shot(hole.id(), cell, part, batch.mixAtS(), nozzle));
                }
            }
        }
        return shots;
    }

    private boolean vent(FillSimulation.Pocket pocket, List<Hole> injections, List<Integer> vents) {
        Coordinate at = cavity.centre(pocket.cell());
        int best = -1;
        double least = 2 * cavity.cell;
        for (int c : fine.cells) {
            double d = places.allowed[c] ? fine.centre(c).distance(at) : least;
            if (d < least && apart(fine.centre(c), injections, vents)) {
                least = d;
                best = c;
            }
        }
        if (best >= 0) {
            vents.add(best);
        }
        return best >= 0;
    }

    private boolean apart(Coordinate at, List<Hole> injections, List<Integer> vents) {
        return injections.stream().allMatch(h -> h.spot().coordinate().distance(at) >= APART_MM)
                && vents.stream().allMatch(v -> fine.centre(v).distance(at) >= APART_MM);
    }

    private Fill fill(
            FillSimulation.Result result, List<FillSimulation.Pocket> pockets, List<FillSimulation.Shot> shots) {
        double[] arrival = new double[cavity.size()];
        Arrays.fill(arrival, Double.NaN);
        for (int c : cavity.cells) {
            arrival[c] = result.arrivalS()[c];
        }
        return new Fill(
                Optional.of(new Raster(cavity.x0, cavity.y0, cavity.cell, cavity.rows, cavity.columns, arrival)),
                result.liquidMm3() / wholeMm3(),
                result.emptyShare(),
                pockets.stream()
                        .map(p -> new Fill.Pocket(spot(cavity.centre(p.cell())), p.mm3()))
                        .toList(),
                filledMm3(result, shots));
    }

    private Map<String, Double> filledMm3(FillSimulation.Result result, List<FillSimulation.Shot> shots) {
        Map<String, Double> filled = new LinkedHashMap<>();
        shots.forEach(s -> filled.put(s.hole(), 0.0));
        for (int c : cavity.cells) {
            if (result.owner()[c] >= 0) {
                double mm3 = cavity.gapMm[c] * cavity.cell * cavity.cell * result.filled()[c];
                filled.merge(shots.get(result.owner()[c]).hole(), mm3, Double::sum);
            }
        }
        return filled;
    }

    private Spot spot(Coordinate at) {
        return new Spot(face.name(), at.x, at.y);
    }

    /** The cell of a place; the nearest one the mix can pass where it lies off the raster. */
    private int cellAt(Coordinate at) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int c : cavity.cells) {
            double d = cavity.open[c] == 0
                    ? Double.POSITIVE_INFINITY
                    : cavity.centre(c).distance(at);
            if (d < least) {
                least = d;
                best = c;
            }
        }
        return best;
    }
}
