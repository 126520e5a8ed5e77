package corewright.repair.fill;

import corewright.contour.Raster;
import corewright.repair.pattern.Cavity;
import corewright.repair.plan.Fill;
import corewright.repair.plan.Hole;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;

/** What a plan keeps of a simulated fill. */
final class FillRecord {
    /** Densities nearer to the mean than this share of it count as even. */
    private static final double EVEN = 0.15;

    /** The lightest and the heaviest twentieth are left out of a range. */
    private static final double TAIL = 0.05;

    /** A cell that is filled less is air with some mix in it. */
    private static final double FILLED = 0.5;

    private final FillTrial.Run run;
    private final FillSimulation.Setting setting;
    private final FillSimulation.Result result;
    private final Cavity cavity;

    FillRecord(FillTrial.Run run) {
        this.run = run;
        setting = run.setting();
        result = run.result();
        cavity = setting.cavity();
    }

    /** @param face its name */
    Fill of(String face) {
        double[] arrival = new double[cavity.size()];
        Arrays.fill(arrival, Double.NaN);
        double whole = 0;
        for (int c : cavity.cells) {
            arrival[c] = result.arrivalS()[c];
            whole += volume(c);
        }
        return new Fill(
                Optional.of(raster(arrival)),
                result.liquidMm3() / whole,
                run.emptyShare(),
                EnclosedAir.of(setting, result).stream()
                        .map(p -> new Fill.Pocket(spot(face, p.cell()), p.mm3()))
                        .toList(),
                filledMm3(run.shots()),
                run.takenMm3(),
                density());
    }

    /** With the layers of earlier lifts. */
    private Map<String, Double> filledMm3(List<FillSimulation.Shot> shots) {
        Map<String, Double> filled = new LinkedHashMap<>();
        shots.forEach(s -> filled.put(s.hole(), 0.0));
        for (int c : cavity.cells) {
            if (result.owner()[c] >= 0) {
                filled.merge(
                        shots.get(result.owner()[c]).hole(), volume(c) * result.filled()[c] + layerMm3(c), Double::sum);
            }
        }
        return filled;
    }

    Fill.Density density() {
        double[] map = new double[cavity.size()];
        Arrays.fill(map, Double.NaN);
        double mass = 0;
        double volume = 0;
        List<double[]> byDensity = new ArrayList<>();
        for (int c : cavity.cells) {
            if (result.filled()[c] >= FILLED) {
                double filled = volume(c) * result.filled()[c];
                double kg = result.liquidIn()[c] * setting.resin().densityKgM3();
                map[c] = kg / filled;
                mass += kg;
                volume += filled;
                byDensity.add(new double[] {map[c], filled});
            }
        }
        double mean = volume > 0 ? mass / volume : 0;
        byDensity.sort((a, b) -> Double.compare(a[0], b[0]));
        double even = byDensity.stream()
                .filter(d -> Math.abs(d[0] - mean) <= EVEN * mean)
                .mapToDouble(d -> d[1])
                .sum();
        return new Fill.Density(
                mean,
                at(byDensity, TAIL * volume),
                at(byDensity, (1 - TAIL) * volume),
                volume > 0 ? even / volume : 0,
                Optional.of(raster(map)));
    }

    /** The mean density over that in the cells nearest to each hole. */
    Map<String, Double> thinner(List<Hole> holes) {
        Map<String, double[]> near = new LinkedHashMap<>();
        double[] all = new double[2];
        for (int c : cavity.cells) {
            if (result.filled()[c] >= FILLED) {
                Coordinate at = cavity.centre(c);
                Hole hole = holes.stream()
                        .min(Comparator.comparingDouble(
                                h -> h.spot().coordinate().distance(at)))
                        .orElseThrow();
                double[] sum = near.computeIfAbsent(hole.id(), h -> new double[2]);
                for (double[] s : List.of(sum, all)) {
                    s[0] += result.liquidIn()[c];
                    s[1] += volume(c) * result.filled()[c];
                }
            }
        }
        Map<String, Double> thinner = new LinkedHashMap<>();
        near.forEach((hole, sum) -> thinner.put(hole, all[0] / all[1] / (sum[0] / sum[1])));
        return thinner;
    }

    /** The density below which so much of the volume lies. */
    private static double at(List<double[]> byDensity, double below) {
        double sum = 0;
        for (double[] d : byDensity) {
            sum += d[1];
            if (sum >= below) {
                return d[0];
            }
        }
        return 0;
    }

    private double layerMm3(int cell) {
        return (run.whole().gapMm[cell] - cavity.gapMm[cell]) * cavity.cell * cavity.cell;
    }

    private double volume(int cell) {
        return cavity.gapMm[cell] * cavity.cell * cavity.cell;
    }

    private Raster raster(double[] values) {
        return new Raster(cavity.x0, cavity.y0, cavity.cell, cavity.rows, cavity.columns, values);
    }

    private Spot spot(String face, int cell) {
        return new Spot(face, cavity.x(cell), cavity.y(cell));
    }
}
