package corewright.stiffness;

import corewright.damage.Quantiles;
import corewright.sandwich.CellMatrices;
import corewright.sandwich.FootLoadMap;
import corewright.sandwich.FootLoadMap.Place;
import corewright.sandwich.LooseSkin;
import corewright.sandwich.Margin;
import corewright.sandwich.Margins;
import corewright.sandwich.PanelModel;
import corewright.sandwich.Response;
import corewright.sandwich.Theory;
import corewright.sandwich.spec.Load;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Patch;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.locationtech.jts.geom.Coordinate;

/**
 * One panel under a foot and under the survey's loads, in every state. A state's model is made once, asked everything, and let
 * go; it is made anew for the loads, where there are any.
 */
final class PanelStudy {
    /** Feet on a panel: enough to draw lines of equal deflection, few enough to be quick. */
    private static final int FEET = 200;

    private static final double STEP_MM = 50;

    /** How near displacements under the survey's loads are reckoned: margins are told to a hundredth. */
    private static final double SETTLED = 5e-4;

    private static final List<State> WITHOUT_PLAN = List.of(State.AS_FOUND, State.AFTER_INJECTION, State.AFTER_RECORE);

    private static final Quantiles WHOLE = new Quantiles(1, 1, 1);

    private final PanelInput input;
    private final Map<PanelSpec, Figures> figures = new HashMap<>();
    private final Map<Sink, Double> sinks = new HashMap<>();
    private final CellMatrices cells;

    private PanelStudy(PanelInput input) {
        this.input = input;
        cells = new CellMatrices(input.built());
    }

    /** What one model is asked. */
    private record Figures(FootLoadMap feet, Place at, Map<String, LoadCase.Answer> answers) {}

    /** The states that need no plan. */
    static PanelStiffness of(PanelInput input) {
        return new PanelStudy(input).study(WITHOUT_PLAN);
    }

    /** As found alone, with the place where it gives most; for judging the ranges. */
    static PanelStiffness found(PanelInput input) {
        return new PanelStudy(input).study(List.of(State.AS_FOUND));
    }

    private PanelStiffness study(List<State> asked) {
        PanelSpec found = input.found();
        PanelModel model = forDeflections(onOneMesh(found));
        FootLoadMap feet = map(model);
        Coordinate softest = input.damaged() ? at(feet.softest()) : refined(model, feet);
        PanelModel whole = model.forMargins();
        figures.put(found, figures(feet, model, whole, softest));
        Response linear = whole.solve(foot(softest));
        Optional<LooseSkin> loose = linear.looseSkin();
        List<Margin> margins = Margins.of(found, settled(linear), input.strengths());
        List<String> notes = new ArrayList<>();
        if (!whole.notes().isEmpty()) {
            notes.add(
                    "Some damage is too small or too thin for the elements: the figures follow its edge only roughly.");
        }
        Map<State, StateStiffness> states = new EnumMap<>(State.class);
        Map<State, Map<String, LoadCase.Answer>> answers = new EnumMap<>(State.class);
        Figures built = figures(input.built(), softest);
        states.put(State.AS_BUILT, state(built, WHOLE));
        answers.put(State.AS_BUILT, built.answers);
        for (State state : asked) {
            Prospects prospects = input.in(state);
            Figures middle = figures(prospects.middle(), softest);
            states.put(state, state(middle, ratios(prospects, softest, built, middle)));
            answers.put(state, middle.answers);
        }
        Spot spot = new Spot(input.panel().face(), softest.x, softest.y);
        return new PanelStiffness(input.panel(), spot, input.damaged(), states, margins, loose, byCase(answers), notes);
    }

    /**
     * What the figures after the advised plan depend on.
     *
     * @param known the panel in the states that need no plan
     */
    record Planned(PanelInput input, PanelStiffness known, Prospects plan) {}

    /** The panel with the state after the advised plan; a state that is the same as it is not reckoned again. */
    static PanelStiffness planned(Planned asked) {
        PanelStiffness known = asked.known;
        for (State state : WITHOUT_PLAN) {
            if (asked.input.in(state).equals(asked.plan)) {
                return known.planned(known.in(state), c -> c.in(state));
            }
        }
        if (asked.plan.equals(Prospects.all(asked.input.built()))) {
            return known.planned(known.in(State.AS_BUILT), c -> c.in(State.AS_BUILT));
        }
        PanelStudy study = new PanelStudy(asked.input);
        Coordinate softest = known.softest().coordinate();
        Figures middle = study.figures(asked.plan.middle(), softest);
        double built = known.in(State.AS_BUILT).deflectionMm();
        StateStiffness state = state(middle, study.ratios(asked.plan, softest, built, middle.at.deflectionMm()));
        return known.planned(state, c -> Objects.requireNonNull(middle.answers.get(c.name())));
    }

    private Figures figures(PanelSpec spec, Coordinate softest) {
        Figures known = figures.get(spec);
        if (known == null) {
            PanelModel model = forDeflections(onOneMesh(spec));
            known = figures(map(model), model, input.cases().isEmpty() ? model : model.forMargins(), softest);
            figures.put(spec, known);
        }
        return known;
    }

    /** @param whole asked for the loads, whose margins want all that a core does */
    private Figures figures(FootLoadMap feet, PanelModel model, PanelModel whole, Coordinate softest) {
        Place at = feet.places().stream()
                .filter(p -> p.x() == softest.x && p.y() == softest.y && p.theory() == Theory.LARGE)
                .findFirst()
                .orElseGet(() -> place(model, softest));
        return new Figures(feet.with(List.of(at)), at, answers(whole));
    }

    private Map<String, LoadCase.Answer> answers(PanelModel model) {
        Map<String, LoadCase.Answer> found = new HashMap<>();
        input.cases().forEach(loadCase -> {
            Response linear = model.solve(loadCase.loads());
            Response settled = settled(linear);
            Response.Deflection most = settled.largest();
            Spot at = new Spot(input.panel().face(), most.x(), most.y());
            found.put(
                    loadCase.name(),
                    new LoadCase.Answer(
                            most.outerMm(),
                            linear.largest().outerMm(),
                            at,
                            Margins.of(model.panel(), settled, input.strengths())));
        });
        return found;
    }

    /** With contact and the skins' pull; with contact alone where no equilibrium with the pull is found. */
    private static Response settled(Response linear) {
        return linear.largeDeflection(SETTLED).orElseGet(linear::withContact);
    }

    private List<LoadCase> byCase(Map<State, Map<String, LoadCase.Answer>> answers) {
        return input.cases().stream()
                .map(PanelInput.Case::name)
                .map(name -> {
                    Map<State, LoadCase.Answer> states = new EnumMap<>(State.class);
                    answers.forEach((state, byName) -> states.put(state, Objects.requireNonNull(byName.get(name))));
                    return new LoadCase(name, states);
                })
                .toList();
    }

    private static List<Load> foot(Coordinate centre) {
        return List.of(Load.foot(centre, FootLoadMap.SIDE_MM, FootLoadMap.FORCE_N));
    }

    private Quantiles ratios(Prospects state, Coordinate place, Figures built, Figures middle) {
        return input.damaged() ? ratios(state, place, built.at.deflectionMm(), middle.at.deflectionMm()) : WHOLE;
    }

    /**
     * @param builtMm deflection as built
     * @param middleMm as estimated
     */
    private Quantiles ratios(Prospects state, Coordinate place, double builtMm, double middleMm) {
        return Likely.range(
                builtMm / middleMm,
                ends(state, place, middleMm).map(mm -> builtMm / mm).toArray());
    }

    /**
     * Deflections in the better and the worse tenth of cases. Each would take a mesh and a search of its own, and what {@link Likely} adds to them
     * mostly outweighs them: the worse end is taken as far off as the better one, which mostly is the farther.
     */
    private DoubleStream ends(Prospects state, Coordinate place, double middleMm) {
        PanelSpec end = state.better().equals(state.middle()) ? state.worse() : state.better();
        if (end.equals(state.middle())) {
            return DoubleStream.empty();
        }
        double mm = sinks.computeIfAbsent(new Sink(end, place), sink -> sink.mm(cells));
        return DoubleStream.of(mm, middleMm * middleMm / mm);
    }

    private static StateStiffness state(Figures figures, Quantiles ratio) {
        return new StateStiffness(figures.at.deflectionMm(), figures.at.linearMm(), ratio, figures.feet);
    }

    /**
     * The same panel with the rims of the damage as found, whether there is damage or not: all states then have one mesh, and what the
     * mesh does to a figure drops out of their ratios.
     */
    private PanelSpec onOneMesh(PanelSpec spec) {
        if (spec.equals(input.found())) {
            return spec;
        }
        List<Patch> patches = new ArrayList<>();
        input.found()
                .patches()
                .forEach(p -> patches.add(new Patch.Core(p.area(), spec.core().material())));
        patches.addAll(spec.patches());
        return spec.with(patches);
    }

    private PanelModel forDeflections(PanelSpec spec) {
        return PanelModel.forDeflections(spec, StudyMesh.of(spec), cells);
    }

    private FootLoadMap map(PanelModel model) {
        return FootLoadMap.of(model, step(), Theory.LARGE).sure(model);
    }

    private static Place place(PanelModel model, Coordinate place) {
        return FootLoadMap.at(model, List.of(place), Theory.LARGE).softest();
    }

    private static Coordinate at(Place place) {
        return new Coordinate(place.x(), place.y());
    }

    /** Between the grid's places, by halving its step twice; without loose skins feet cost next to nothing. */
    private Coordinate refined(PanelModel model, FootLoadMap feet) {
        Place best = feet.softest();
        for (double step = step() / 2; step > step() / 5; step /= 2) {
            List<Coordinate> around = new ArrayList<>();
            for (int i = -1; i <= 1; i++) {
                for (int j = -1; j <= 1; j++) {
                    around.add(new Coordinate(best.x() + i * step, best.y() + j * step));
                }
            }
            best = FootLoadMap.at(model, around).softest();
        }
        return at(best);
    }

    private double step() {
        return Math.max(STEP_MM, Math.sqrt(input.panel().area().getArea() / FEET));
    }
}
