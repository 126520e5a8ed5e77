package corewright.repair.fill;

import corewright.repair.mix.Lifts;
import corewright.repair.mix.ReachLaw;
import corewright.repair.pattern.Cavity;
import corewright.repair.pattern.Slope;
import corewright.repair.plan.Batch;
import corewright.repair.plan.Hole;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** One cavity as it may be, and how a plan does in it. An access lets air out like a vent. */
public final class FillTrial {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    final Cavity cavity;
    private final Cavity whole;
    private final Lifts lifts;
    private final Resin resin;
    private final Settings settings;
    private final double[] heights;
    private final List<Integer> accesses = new ArrayList<>();
    private final Map<Asked, Run> known = new HashMap<>();
    private final Map<Coordinate, Integer> cellOf = new HashMap<>();

    public FillTrial(Face face, Cavity cavity, Resin resin, Settings settings) {
        this(face, cavity, cavity, resin, settings);
    }

    /**
     * @param cavity what the last lift is to fill
     * @param whole the same with the layers of earlier lifts
     */
    FillTrial(Face face, Cavity cavity, Cavity whole, Resin resin, Settings settings) {
        this.cavity = cavity;
        this.whole = whole;
        lifts = Lifts.of(face, settings.drilling());
        this.resin = resin;
        this.settings = settings;
        heights = FillSimulation.Setting.heights(cavity, Slope.of(face), face.tiltDeg());
        for (Feature.Access access : face.all(Feature.Access.class)) {
            for (int c : cavity.cells) {
                if (access.geometry().distance(FACTORY.createPoint(cavity.centre(c))) <= cavity.cell / 2) {
                    accesses.add(c);
                }
            }
        }
    }

    /** Whether mix can move in it at all. */
    boolean passable() {
        for (int c : cavity.cells) {
            if (cavity.open[c] != 0) {
                return true;
            }
        }
        return false;
    }

    /**
     * What is done.
     *
     * @param holes that are filled, in working order
     * @param liquidMm3 into each hole, by its id, in equal parts where it has several cups
     */
    public record Work(List<Hole> holes, List<Batch> batches, Map<String, Double> liquidMm3, List<Coordinate> vents) {
        public Work {
            holes = List.copyOf(holes);
            batches = List.copyOf(batches);
            liquidMm3 = Map.copyOf(liquidMm3);
            vents = List.copyOf(vents);
        }
    }

    /**
     * What is held back for each place, a hole or a vent, at which nothing shows.
     *
     * @param largerBy see {@link FillSimulation.Reserve}
     */
    public record Held(List<Dose> doses, double mostMm3, double largerBy) {
        public static final Held NOTHING = new Held(List.of(), 0, 1);

        public Held {
            doses = List.copyOf(doses);
        }
    }

    /**
     * Liquid for a place at which nothing shows.
     *
     * @param dueS when mix is due there by the plan; NaN where it is not
     * @param watched ids of the holes for which it is the next vent
     */
    public record Dose(Coordinate at, double liquidMm3, double dueS, List<String> watched) {
        public Dose {
            watched = List.copyOf(watched);
        }

        /** Whether it is a vent: each is the next one of a hole. */
        boolean vent() {
            return !watched.isEmpty();
        }

        Dose of(double otherMm3) {
            return new Dose(at, otherMm3, dueS, watched);
        }
    }

    /**
     * How it went.
     *
     * @param whole the cavity with the layers of earlier lifts
     * @param shots of the last lift
     * @param partsOf lifts of each hole
     */
    public record Run(
            FillSimulation.Setting setting,
            Cavity whole,
            List<FillSimulation.Shot> shots,
            FillSimulation.Result result,
            Map<String, Integer> partsOf) {
        public Run {
            shots = List.copyOf(shots);
            partsOf = Map.copyOf(partsOf);
        }

        /** Numbers of the places at which nothing shows before anything held back is poured. */
        List<Integer> unshown() {
            return IntStream.range(0, result.shown().length)
                    .filter(p -> !result.shown()[p])
                    .boxed()
                    .toList();
        }

        /** Share of the whole cavity that stays empty. */
        public double emptyShare() {
            double all = whole.mm3();
            return all > 0 ? result.emptyShare() * setting.cavity().mm3() / all : 0;
        }

        /** Liquid that went in at each hole, as much in each of its lifts. */
        Map<String, Double> takenMm3() {
            Map<String, Double> taken = new LinkedHashMap<>();
            for (int i = 0; i < shots.size(); i++) {
                String hole = shots.get(i).hole();
                taken.merge(hole, result.placedMm3()[i] * partsOf.getOrDefault(hole, 1), Double::sum);
            }
            return taken;
        }
    }

    /** What a fill is of. */
    private record Asked(Work work, Held held, boolean shared) {}

    public Run run(Work work, Held held) {
        return ran(new Asked(work, held, false));
    }

    /** A plan is often tried again, or with a vent more or less that makes no difference. */
    private Run ran(Asked asked) {
        Run run = known.get(asked);
        if (run == null) {
            run = same(asked).orElseGet(() -> fill(asked));
            known.put(asked, run);
        }
        return run;
    }

    /** A fill with other vents that is the same to the last digit. */
    private Optional<Run> same(Asked asked) {
        FillSimulation.Setting setting = setting(asked.work.vents);
        List<FillSimulation.Shot> shots = shots(asked.work);
        BitSet open = SimulatedFill.openings(setting, shots);
        return known.entrySet().stream()
                .filter(k -> asked.held.doses.isEmpty() // with some, vents are looked at too
                        && k.getKey().held.equals(asked.held)
                        && k.getKey().shared == asked.shared
                        && k.getValue().shots.equals(shots))
                .map(Map.Entry::getValue)
                .filter(r -> r.result.ways().sameWith(SimulatedFill.openings(r.setting, shots), open))
                .findFirst()
                .map(r -> new Run(setting, whole, shots, r.result, partsOf(asked.work)));
    }

    private Run fill(Asked asked) {
        Work work = asked.work;
        FillSimulation.Setting setting = setting(work.vents);
        List<FillSimulation.Shot> shots = shots(work);
        FillSimulation.Result result = asked.shared
                ? SimulatedFill.shared(setting, shots)
                : SimulatedFill.run(setting, shots, reserve(asked.held));
        return new Run(setting, whole, shots, result, partsOf(work));
    }

    /**
     * A fill without doses, and with those that it asks for.
     *
     * @param with the same as without where something shows at every place
     */
    record Watched(Run without, Held held, Run with) {}

    /** @param doses what is held back, by how it went without */
    Watched watched(Work work, Held watching, Function<Run, Held> doses) {
        if (resin.expansion() <= 1) { // a dose goes in with the rest
            Run without = run(work, watching);
            Held held = doses.apply(without);
            return new Watched(without, held, without.unshown().isEmpty() ? without : run(work, held));
        }
        FillSimulation.Setting setting = setting(work.vents);
        List<FillSimulation.Shot> shots = shots(work);
        List<Held> held = new ArrayList<>();
        Function<FillSimulation.Result, Run> run = r -> new Run(setting, whole, shots, r, partsOf(work));
        List<FillSimulation.Result> results = SimulatedFill.run(setting, shots, reserve(watching), without -> {
            held.add(doses.apply(run.apply(without)));
            return reserve(held.get(0)).doses();
        });
        return new Watched(run.apply(results.get(0)), held.get(0), run.apply(results.get(1)));
    }

    private FillSimulation.Reserve reserve(Held held) {
        Drilling drilling = settings.drilling();
        double cupMm3 = drilling.largestBatchG() * (1 - drilling.wasteFraction()) / (resin.densityKgM3() * 1e-6);
        List<FillSimulation.Dose> doses = held.doses.stream()
                .map(d -> new FillSimulation.Dose(cellAt(d.at), d.liquidMm3, d.dueS, d.watched))
                .toList();
        return new FillSimulation.Reserve(doses, held.mostMm3, cupMm3, held.largerBy);
    }

    private Map<String, Integer> partsOf(Work work) {
        return work.holes.stream().collect(Collectors.toMap(Hole::id, lifts::at));
    }

    /** How much each hole takes of all the liquid: of a mix that does not rise as much as it takes until mix shows at the next one. */
    Run shared(Work work) {
        return ran(new Asked(work, Held.NOTHING, resin.expansion() <= 1));
    }

    private FillSimulation.Setting setting(List<Coordinate> vents) {
        List<Integer> outlets = new ArrayList<>(accesses);
        vents.forEach(v -> outlets.add(cellAt(v)));
        return new FillSimulation.Setting(
                cavity,
                heights,
                outlets.stream().mapToInt(c -> c).toArray(),
                resin,
                settings.drilling(),
                settings.climate().temperatureC());
    }

    /** Of the last lift. */
    private List<FillSimulation.Shot> shots(Work work) {
        List<FillSimulation.Shot> shots = new ArrayList<>();
        for (Batch batch : work.batches) {
            if (!Lifts.last(batch, work.batches)) {
                continue;
            }
            for (Hole hole : work.holes) {
                if (batch.holes().contains(hole.id())) {
                    long cups = work.batches.stream()
                            .filter(b -> b.holes().contains(hole.id()))
                            .count();
                    double part = work.liquidMm3.getOrDefault(hole.id(), 0.0) / cups;
                    double nozzle = hole.drilled() ? 0 : ReachLaw.nozzleResistance(settings.drilling());
                    int cell = cellAt(hole.spot().coordinate());
                    shots.add(new FillSimulation.Shot(hole.id(), cell, part, batch.mixAtS(), nozzle));
                }
            }
        }
        return shots;
    }

    /**
     * The cell of a place; the nearest one the mix can pass where it lies off the raster, or, where it can pass none, as in a small
     * cavity that was drawn, the nearest.
     */
    int cellAt(Coordinate at) {
        return cellOf.computeIfAbsent(at, this::nearest);
    }

    private int nearest(Coordinate at) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        boolean passes = Arrays.stream(cavity.cells).anyMatch(c -> cavity.open[c] > 0);
        for (int c : cavity.cells) {
            double d = passes && cavity.open[c] == 0
                    ? Double.POSITIVE_INFINITY
                    : Math.hypot(cavity.x(c) - at.x, cavity.y(c) - at.y);
            if (best < 0 || d < least) {
                least = d;
                best = c;
            }
        }
        return best;
    }
}
