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
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.locationtech.jts.geom.Coordinate;

/** One panel under a foot, in every state and outlook. */
final class PanelStudy {
    /** Feet on a panel: enough to draw lines of equal deflection, few enough to be quick. */
    private static final int FEET = 800;

    private static final double STEP_MM = 25;

    /**
     * Size at rims, in core thicknesses, for figures of which only the ratio is used: it was within 1 % of the usual elements'
     * ratio on the demo at a third of the time.
     */
    private static final double COARSE_RIM = 1.5;

    /** A factored model of a large panel takes hundreds of megabytes; three are in use at a time. */
    private static final int MODELS_KEPT = 3;

    private final Survey survey;
    private final FaceDamage face;
    private final DeckPanel panel;
    private final Patches patches;
    private final Map<PanelSpec, FootLoadMap> maps = new HashMap<>();
    private final Map<PanelSpec, PanelModel> models = new LinkedHashMap<>(8, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<PanelSpec, PanelModel> eldest) {
            return size() > MODELS_KEPT;
        }
    };
    private final Map<PanelSpec, Double> stiffnesses = new HashMap<>();
    private final Map<PanelSpec, Double> roughly = new HashMap<>();

    PanelStudy(Survey survey, FaceDamage face, DeckPanel panel) {
        this.survey = survey;
        this.face = face;
        this.panel = panel;
        patches = new Patches(survey, panel, face.regions());
    }

    /** The four states. */
    PanelStiffness study() {
        Treatments standard = new Treatments(survey, face, panel);
        PanelSpec found = patches.with(Outlook.MIDDLE, List.of());
        PanelModel model = model(found);
        FootLoadMap feet = FootLoadMap.of(model, step());
        maps.put(found, feet);
        Coordinate softest = refined(model, feet);
        Map<State, List<Treatment>> treatments = new EnumMap<>(State.class);
        treatments.put(State.AS_FOUND, List.of());
        treatments.put(State.AFTER_INJECTION, standard.injection());
        treatments.put(State.AFTER_RECORE, standard.recore());
        double built = stiffness(patches.asBuilt(), softest);
        Map<State, StateStiffness> states = new EnumMap<>(State.class);
        states.put(State.AS_BUILT, state(patches.asBuilt(), softest, new Quantiles(1, 1, 1)));
        treatments.forEach((state, how) ->
                states.put(state, state(patches.with(Outlook.MIDDLE, how), softest, ratios(how, softest, built))));
        Response response = model.solve(foot(softest));
        Optional<LooseSkin> loose = response.looseSkin();
        OptionalDouble resting = loose.map(l -> resting(found, l, softest)).orElse(OptionalDouble.empty());
        List<String> notes = new ArrayList<>();
        if (!model.notes().isEmpty()) {
            notes.add(
                    "Some damage is too small or too thin for the elements: the figures follow its edge only roughly.");
        }
        resting.ifPresent(mm -> notes.add(restingWords(FootLoadMap.FORCE_N / stiffness(found, softest), mm)));
        List<Margin> margins = Margins.of(found, response, strengths());
        Spot spot = new Spot(panel.face(), softest.x, softest.y);
        return new PanelStiffness(panel, spot, patches.damaged(), states, margins, loose, resting, notes);
    }

    private static List<Load> foot(Coordinate centre) {
        return List.of(Load.foot(centre, FootLoadMap.SIDE_MM, FootLoadMap.FORCE_N));
    }

    /** Contact and von Karman's strain change the figure where a loose skin meets what is below or gives half its thickness. */
    private OptionalDouble resting(PanelSpec found, LooseSkin loose, Coordinate place) {
        if (!loose.overstated() && loose.linearMm() <= loose.gapMm()) {
            return OptionalDouble.empty();
        }
        // an iteration factors anew, so no finer elements than the panel needs: some 3 % on the skin over a void
        return PanelModel.of(found, MeshSize.uniform(MeshSize.automatic(found).generalMm()))
                .solve(foot(place))
                .largeDeflection()
                .flatMap(r -> r.at(place.x, place.y))
                .map(d -> OptionalDouble.of(d.outerMm()))
                .orElse(OptionalDouble.empty());
    }

    /** Stiffness over the one as built at a place, with areas treated. */
    Quantiles ratios(List<Treatment> treatments, Coordinate place, double builtNPerMm) {
        if (!patches.damaged()) {
            return new Quantiles(1, 1, 1);
        }
        double middle = stiffness(patches.with(Outlook.MIDDLE, treatments), place) / builtNPerMm;
        double roughly = rough(Outlook.MIDDLE, treatments, place);
        double[] ratio = DoubleStream.of(
                        middle * rough(Outlook.worse(face), treatments, place) / roughly,
                        middle,
                        middle * rough(Outlook.better(face), treatments, place) / roughly)
                .sorted() // where the place lies at a rim, more damage elsewhere can make it stiffer
                .toArray();
        return new Quantiles(ratio[0], ratio[1], ratio[2]);
    }

    /** On larger elements: only its ratio to another such figure is used. */
    private double rough(Outlook outlook, List<Treatment> treatments, Coordinate place) {
        return roughly.computeIfAbsent(
                patches.with(outlook, treatments),
                s -> FootLoadMap.FORCE_N / deflection(coarse(s), List.of(place)).deflectionMm());
    }

    private static PanelModel coarse(PanelSpec spec) {
        double rim = COARSE_RIM * spec.core().thicknessMm();
        return PanelModel.of(
                spec, new MeshSize(Math.max(rim, MeshSize.automatic(spec).generalMm()), rim));
    }

    private StateStiffness state(PanelSpec spec, Coordinate place, Quantiles ratio) {
        FootLoadMap feet = maps.computeIfAbsent(spec, s -> FootLoadMap.of(model(s), step()));
        double stiffness = stiffness(spec, place);
        return new StateStiffness(FootLoadMap.FORCE_N / stiffness, stiffness, ratio, feet);
    }

    private PanelModel model(PanelSpec spec) {
        return models.computeIfAbsent(spec, s -> PanelModel.of(s, MeshSize.automatic(s)));
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
