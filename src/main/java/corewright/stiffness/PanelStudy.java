package corewright.stiffness;

import corewright.damage.Quantiles;
import corewright.sandwich.FootLoadMap;
import corewright.sandwich.FootLoadMap.Place;
import corewright.sandwich.LooseSkin;
import corewright.sandwich.Margin;
import corewright.sandwich.Margins;
import corewright.sandwich.MeshSize;
import corewright.sandwich.PanelModel;
import corewright.sandwich.Response;
import corewright.sandwich.spec.Load;
import corewright.sandwich.spec.PanelSpec;
import corewright.survey.Spot;
import java.lang.ref.SoftReference;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** One panel under a foot, in every state and outlook. */
final class PanelStudy {
    /** Feet on a panel: enough to draw lines of equal deflection, few enough to be quick. */
    private static final int FEET = 800;

    private static final double STEP_MM = 25;

    /**
     * Size at rims, in core thicknesses: within 1.5 to 2 % of solid elements over a full void, at a third of the time that
     * half the size takes.
     */
    private static final double RIM = 1.5;

    private static final Quantiles WHOLE = new Quantiles(1, 1, 1);

    private final PanelInput input;
    private final DeckPanel panel;
    private final Map<PanelSpec, FootLoadMap> maps = new HashMap<>();
    /** A factored model of a large panel takes hundreds of megabytes: kept as long as there is room, else made again. */
    private final Map<PanelSpec, SoftReference<PanelModel>> models = new HashMap<>();

    private final Map<PanelSpec, Map<String, LoadCase.Answer>> answers = new HashMap<>();
    private final Map<PanelSpec, Double> stiffnesses = new HashMap<>();

    private PanelStudy(PanelInput input) {
        this.input = input;
        panel = input.panel();
    }

    /** The four states. */
    static PanelStiffness of(PanelInput input) {
        return new PanelStudy(input).study();
    }

    private PanelStiffness study() {
        PanelSpec found = input.found();
        PanelModel model = model(found);
        FootLoadMap feet = FootLoadMap.of(model, step());
        maps.put(found, feet);
        Coordinate softest = refined(model, feet);
        Response response = model.solve(foot(softest));
        Optional<LooseSkin> loose = response.looseSkin();
        List<Margin> margins = Margins.of(found, response, input.strengths());
        List<String> notes = new ArrayList<>();
        if (!model.notes().isEmpty()) {
            notes.add(
                    "Some damage is too small or too thin for the elements: the figures follow its edge only roughly.");
        }
        double built = stiffness(input.built(), softest);
        Map<State, StateStiffness> states = new EnumMap<>(State.class);
        Map<State, Map<String, LoadCase.Answer>> byState = new EnumMap<>(State.class);
        states.put(State.AS_BUILT, state(input.built(), softest, WHOLE));
        byState.put(State.AS_BUILT, answers(input.built()));
        for (State state : List.of(State.AS_FOUND, State.AFTER_INJECTION, State.AFTER_RECORE)) {
            PanelSpec spec = input.in(state).middle();
            Quantiles ratios = input.damaged() ? ratios(input.in(state), softest, built) : WHOLE;
            states.put(state, state(spec, softest, ratios));
            byState.put(state, answers(spec));
        }
        Spot spot = new Spot(panel.face(), softest.x, softest.y);
        return new PanelStiffness(
                panel, spot, input.damaged(), states, margins, loose, OptionalDouble.empty(), byCase(byState), notes);
    }

    private Map<String, LoadCase.Answer> answers(PanelSpec spec) {
        Map<String, LoadCase.Answer> known = answers.get(spec);
        if (known != null) {
            return known;
        }
        Map<String, LoadCase.Answer> found = new HashMap<>();
        input.cases().forEach(loadCase -> {
            Response response = model(spec).solve(loadCase.loads());
            Response.Deflection most = response.largest();
            Spot at = new Spot(panel.face(), most.x(), most.y());
            found.put(
                    loadCase.name(),
                    new LoadCase.Answer(most.outerMm(), at, Margins.of(spec, response, input.strengths())));
        });
        answers.put(spec, found);
        return found;
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

    /**
     * What the sinking under a foot as found depends on.
     *
     * @param known the panel's linear figures
     */
    record Resting(PanelSpec found, PanelStiffness known) {}

    /**
     * The panel with what the foot truly sinks as found, where a loose skin under it meets what is below or gives half its
     * thickness. Each iteration factors anew, so only the damage the foot stands on is kept, and elements at its rim are no
     * smaller than elsewhere: some 3 % on the skin over a void.
     */
    static PanelStiffness resting(Resting input) {
        PanelStiffness known = input.known;
        Optional<LooseSkin> loose = known.looseSkin().filter(l -> l.overstated() || l.linearMm() > l.gapMm());
        if (loose.isEmpty()) {
            return known;
        }
        Coordinate place = known.softest().coordinate();
        Geometry near = known.panel().area().getFactory().createPoint(place).buffer(FootLoadMap.SIDE_MM);
        PanelSpec under = input.found.with(input.found.patches().stream()
                .filter(p -> p.area().intersects(near))
                .toList());
        return PanelModel.of(under, MeshSize.uniform(MeshSize.automatic(under).generalMm()))
                .solve(foot(place))
                .largeDeflection()
                .flatMap(r -> r.at(place.x, place.y))
                .map(d -> known.resting(
                        d.outerMm(), restingWords(known.in(State.AS_FOUND).deflectionMm(), d.outerMm())))
                .orElse(known);
    }

    /**
     * What a panel's stiffness over the one as built depends on, in one state.
     *
     * @param place where it is compared
     */
    record Gain(Prospects state, Coordinate place, double builtNPerMm) {}

    /** Stiffness over the one as built at a place; p10 in the worse tenth of cases, p90 in the better one. */
    static Quantiles gain(Gain input) {
        Map<PanelSpec, Double> known = new HashMap<>();
        return ratios(
                input.state,
                input.builtNPerMm,
                spec -> known.computeIfAbsent(spec, s -> stiffness(meshed(s), input.place)));
    }

    private Quantiles ratios(Prospects state, Coordinate place, double builtNPerMm) {
        return ratios(state, builtNPerMm, spec -> stiffness(spec, place));
    }

    private static Quantiles ratios(Prospects state, double builtNPerMm, ToDoubleFunction<PanelSpec> stiffness) {
        double[] ratio = Stream.of(state.worse(), state.middle(), state.better())
                .mapToDouble(spec -> stiffness.applyAsDouble(spec) / builtNPerMm)
                .sorted() // where the place lies at a rim, more damage elsewhere can make it stiffer
                .toArray();
        return new Quantiles(ratio[0], ratio[1], ratio[2]);
    }

    private StateStiffness state(PanelSpec spec, Coordinate place, Quantiles ratio) {
        FootLoadMap feet = maps.computeIfAbsent(spec, s -> FootLoadMap.of(model(s), step()));
        double stiffness = stiffness(spec, place);
        return new StateStiffness(FootLoadMap.FORCE_N / stiffness, stiffness, ratio, feet);
    }

    private PanelModel model(PanelSpec spec) {
        SoftReference<PanelModel> kept = models.get(spec);
        PanelModel model = kept == null ? null : kept.get();
        if (model == null) {
            model = meshed(spec);
            models.put(spec, new SoftReference<>(model));
        }
        return model;
    }

    private static PanelModel meshed(PanelSpec spec) {
        double rim = RIM * spec.core().thicknessMm();
        return PanelModel.of(
                spec, new MeshSize(Math.max(rim, MeshSize.automatic(spec).generalMm()), rim));
    }

    private double stiffness(PanelSpec spec, Coordinate place) {
        return stiffnesses.computeIfAbsent(spec, s -> stiffness(model(s), place));
    }

    private static double stiffness(PanelModel model, Coordinate place) {
        return FootLoadMap.FORCE_N / deflection(model, List.of(place)).deflectionMm();
    }

    private static Place deflection(PanelModel model, List<Coordinate> places) {
        return FootLoadMap.at(model, places).softest();
    }

    /** Between the grid's places, by halving its step twice. */
    private Coordinate refined(PanelModel model, FootLoadMap feet) {
        Place best = feet.softest();
        for (double step = step() / 2; step > step() / 5; step /= 2) {
            List<Coordinate> around = new ArrayList<>();
            for (int i = -1; i <= 1; i++) {
                for (int j = -1; j <= 1; j++) {
                    around.add(new Coordinate(best.x() + i * step, best.y() + j * step));
                }
            }
            best = deflection(model, around);
        }
        return new Coordinate(best.x(), best.y());
    }

    private double step() {
        return Math.max(STEP_MM, Math.sqrt(panel.area().getArea() / FEET));
    }

    private static String restingWords(double linearMm, double restingMm) {
        return String.format(
                Locale.ROOT,
                "The %.1f mm as found are linear, as the comparison needs. The loose skin comes to rest on what is below, or"
                        + " pulls like a membrane: with both counted the foot sinks about %.1f mm.",
                linearMm,
                restingMm);
    }
}
