package corewright.stiffness;

import corewright.damage.FaceDamage;
import corewright.damage.Quantiles;
import corewright.sandwich.FootLoadMap;
import corewright.sandwich.FootLoadMap.Place;
import corewright.sandwich.Load;
import corewright.sandwich.LooseSkin;
import corewright.sandwich.Margin;
import corewright.sandwich.Margins;
import corewright.sandwich.MeshSize;
import corewright.sandwich.PanelModel;
import corewright.sandwich.PanelSpec;
import corewright.sandwich.Response;
import corewright.sandwich.Strengths;
import corewright.survey.Laminate;
import corewright.survey.Materials;
import corewright.survey.Spot;
import corewright.survey.Survey;
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
import java.util.Set;
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

    private final Survey survey;
    private final FaceDamage face;
    private final DeckPanel panel;
    private final Patches patches;
    private final Map<PanelSpec, FootLoadMap> maps = new HashMap<>();
    /** A factored model of a large panel takes hundreds of megabytes: kept as long as there is room, else made again. */
    private final Map<PanelSpec, SoftReference<PanelModel>> models = new HashMap<>();

    private final Map<PanelSpec, Map<String, LoadCase.Answer>> answers = new HashMap<>();
    private final Map<PanelSpec, Double> stiffnesses = new HashMap<>();

    PanelStudy(Survey survey, FaceDamage face, DeckPanel panel) {
        this.survey = survey;
        this.face = face;
        this.panel = panel;
        patches = new Patches(survey, panel, face.regions());
    }

    /**
     * The four states.
     *
     * @param cases the loads on this panel by load case
     */
    PanelStiffness study(Map<String, List<Load>> cases) {
        Treatments standard = new Treatments(survey, face, panel);
        PanelSpec found = patches.with(Outlook.MIDDLE, List.of());
        PanelModel model = model(found);
        FootLoadMap feet = FootLoadMap.of(model, step());
        maps.put(found, feet);
        Coordinate softest = refined(model, feet);
        Response response = model.solve(foot(softest));
        Optional<LooseSkin> loose = response.looseSkin();
        List<Margin> margins = Margins.of(found, response, strengths());
        List<String> notes = new ArrayList<>();
        if (!model.notes().isEmpty()) {
            notes.add(
                    "Some damage is too small or too thin for the elements: the figures follow its edge only roughly.");
        }
        Map<State, List<Treatment>> treatments = new EnumMap<>(State.class);
        treatments.put(State.AS_FOUND, List.of());
        treatments.put(State.AFTER_INJECTION, standard.injection());
        treatments.put(State.AFTER_RECORE, standard.recore());
        double built = stiffness(patches.asBuilt(), softest);
        Map<State, StateStiffness> states = new EnumMap<>(State.class);
        Map<State, Map<String, LoadCase.Answer>> byState = new EnumMap<>(State.class);
        states.put(State.AS_BUILT, state(patches.asBuilt(), softest, new Quantiles(1, 1, 1)));
        byState.put(State.AS_BUILT, answers(patches.asBuilt(), cases));
        treatments.forEach((state, how) -> {
            PanelSpec spec = patches.with(Outlook.MIDDLE, how);
            states.put(state, state(spec, softest, ratios(how, softest, built)));
            byState.put(state, answers(spec, cases));
        });
        Spot spot = new Spot(panel.face(), softest.x, softest.y);
        return new PanelStiffness(
                panel,
                spot,
                patches.damaged(),
                states,
                margins,
                loose,
                OptionalDouble.empty(),
                byCase(cases.keySet(), byState),
                notes);
    }

    private Map<String, LoadCase.Answer> answers(PanelSpec spec, Map<String, List<Load>> cases) {
        Map<String, LoadCase.Answer> known = answers.get(spec);
        if (known != null) {
            return known;
        }
        Map<String, LoadCase.Answer> found = new HashMap<>();
        cases.forEach((name, loads) -> {
            Response response = model(spec).solve(loads);
            Response.Deflection most = response.largest();
            Spot at = new Spot(panel.face(), most.x(), most.y());
            found.put(name, new LoadCase.Answer(most.outerMm(), at, Margins.of(spec, response, strengths())));
        });
        answers.put(spec, found);
        return found;
    }

    private static List<LoadCase> byCase(Set<String> names, Map<State, Map<String, LoadCase.Answer>> answers) {
        return names.stream()
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
     * The panel with what the foot truly sinks as found, where a loose skin under it meets what is below or gives half its
     * thickness. Each iteration factors anew, so only the damage the foot stands on is kept, and elements at its rim are no
     * smaller than elsewhere: some 3 % on the skin over a void.
     */
    PanelStiffness withResting(PanelStiffness known) {
        Optional<LooseSkin> loose = known.looseSkin().filter(l -> l.overstated() || l.linearMm() > l.gapMm());
        if (loose.isEmpty()) {
            return known;
        }
        Coordinate place = known.softest().coordinate();
        Geometry near = panel.area().getFactory().createPoint(place).buffer(FootLoadMap.SIDE_MM);
        PanelSpec found = patches.with(Outlook.MIDDLE, List.of());
        PanelSpec under = found.with(
                found.patches().stream().filter(p -> p.area().intersects(near)).toList());
        return PanelModel.of(under, MeshSize.uniform(MeshSize.automatic(under).generalMm()))
                .solve(foot(place))
                .largeDeflection()
                .flatMap(r -> r.at(place.x, place.y))
                .map(d -> known.resting(
                        d.outerMm(), restingWords(known.in(State.AS_FOUND).deflectionMm(), d.outerMm())))
                .orElse(known);
    }

    /** Stiffness over the one as built at a place, with areas treated. */
    Quantiles ratios(List<Treatment> treatments, Coordinate place, double builtNPerMm) {
        if (!patches.damaged()) {
            return new Quantiles(1, 1, 1);
        }
        double[] ratio = Stream.of(Outlook.worse(face), Outlook.MIDDLE, Outlook.better(face))
                .mapToDouble(outlook -> stiffness(patches.with(outlook, treatments), place) / builtNPerMm)
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
        return stiffnesses.computeIfAbsent(
                spec,
                s -> FootLoadMap.FORCE_N / deflection(model(s), List.of(place)).deflectionMm());
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

    private Strengths strengths() {
        Laminate laminate = panel.laminate();
        Materials.Skin skin = survey.materials().skin(laminate.skin());
        Materials.Core core = survey.materials().core(laminate.core());
        return new Strengths(
                OptionalDouble.of(skin.strengthMPa()),
                OptionalDouble.of(skin.strengthMPa()),
                OptionalDouble.of(core.shearStrengthMPa()),
                OptionalDouble.of(core.crushMPa()));
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
