package corewright.survey;

import corewright.survey.settings.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.BiConsumer;
import java.util.function.Function;

/**
 * One list of like things in a survey, which an {@link Edit} changes at an index. The heading, the materials and the
 * settings are lists of exactly one.
 *
 * @param <T> what the list holds
 */
public final class Part<T> {
    public static final Part<Heading> HEADING =
            new Part<>("heading", Heading.class, s -> List.of(s.heading()), (d, one) -> d.heading = only(one));
    public static final Part<Materials> MATERIALS =
            new Part<>("materials", Materials.class, s -> List.of(s.materials()), (d, one) -> d.materials = only(one));
    public static final Part<Settings> SETTINGS =
            new Part<>("settings", Settings.class, s -> List.of(s.settings()), (d, one) -> d.settings = only(one));
    public static final Part<Face> FACES = new Part<>("faces", Face.class, Survey::faces, (d, list) -> d.faces = list);
    public static final Part<Meter> METERS =
            new Part<>("meters", Meter.class, Survey::meters, (d, list) -> d.meters = list);
    public static final Part<Laminate> LAMINATES =
            new Part<>("laminates", Laminate.class, Survey::laminates, (d, list) -> d.laminates = list);
    public static final Part<Moisture> MOISTURE =
            new Part<>("moisture", Moisture.class, s -> s.readings().moisture(), (d, list) -> d.moisture = list);
    public static final Part<Tap> TAPS =
            new Part<>("taps", Tap.class, s -> s.readings().taps(), (d, list) -> d.taps = list);
    public static final Part<Probe> PROBES =
            new Part<>("probes", Probe.class, s -> s.readings().probes(), (d, list) -> d.probes = list);
    public static final Part<Feeler> FEELERS =
            new Part<>("feelers", Feeler.class, s -> s.readings().feelers(), (d, list) -> d.feelers = list);
    public static final Part<Plug> PLUGS =
            new Part<>("plugs", Plug.class, s -> s.readings().plugs(), (d, list) -> d.plugs = list);
    public static final Part<SurfaceTemperature> TEMPERATURES = new Part<>(
            "temperatures",
            SurfaceTemperature.class,
            s -> s.readings().temperatures(),
            (d, list) -> d.temperatures = list);
    public static final Part<Tap> CURED_TAPS =
            new Part<>("cured_taps", Tap.class, s -> s.readings().curedTaps(), (d, list) -> d.curedTaps = list);
    public static final Part<WorkEntry> LOG =
            new Part<>("work_log", WorkEntry.class, Survey::log, (d, list) -> d.log = list);
    public static final Part<Photo> PHOTOS =
            new Part<>("photos", Photo.class, Survey::photos, (d, list) -> d.photos = list);
    public static final Part<MethodOverride> METHODS = new Part<>(
            "method_overrides", MethodOverride.class, s -> s.judgements().methods(), (d, list) -> d.methods = list);
    public static final Part<ReadingOverride> DOUBTS = new Part<>(
            "reading_overrides", ReadingOverride.class, s -> s.judgements().readings(), (d, list) -> d.doubts = list);
    public static final Part<MovedHole> HOLES =
            new Part<>("moved_holes", MovedHole.class, s -> s.judgements().holes(), (d, list) -> d.holes = list);
    public static final Part<RuleOverride> RULES =
            new Part<>("rule_overrides", RuleOverride.class, s -> s.judgements().rules(), (d, list) -> d.rules = list);
    public static final Part<DeckLoad> LOADS =
            new Part<>("loads", DeckLoad.class, Survey::loads, (d, list) -> d.loads = list);

    public static final Part<FrozenPlan.Issue> ISSUE = new Part<>(
            "repair_plan", FrozenPlan.Issue.class, s -> s.repairPlan().issue(), (d, list) -> d.issue = list);
    public static final Part<FrozenPlan.PlannedRegion> PLANNED_REGIONS = new Part<>(
            "planned_regions",
            FrozenPlan.PlannedRegion.class,
            s -> s.repairPlan().regions(),
            (d, list) -> d.plannedRegions = list);
    public static final Part<FrozenPlan.PlannedHole> PLANNED_HOLES = new Part<>(
            "planned_holes",
            FrozenPlan.PlannedHole.class,
            s -> s.repairPlan().holes(),
            (d, list) -> d.plannedHoles = list);
    public static final Part<FrozenPlan.PlannedCut> PLANNED_CUTS = new Part<>(
            "planned_cuts", FrozenPlan.PlannedCut.class, s -> s.repairPlan().cuts(), (d, list) -> d.plannedCuts = list);
    public static final Part<FrozenPlan.PlannedCup> PLANNED_CUPS = new Part<>(
            "planned_cups", FrozenPlan.PlannedCup.class, s -> s.repairPlan().cups(), (d, list) -> d.plannedCups = list);
    public static final Part<FrozenPlan.Purchase> PURCHASES = new Part<>(
            "planned_purchases",
            FrozenPlan.Purchase.class,
            s -> s.repairPlan().buying(),
            (d, list) -> d.purchases = list);

    private static final String FEATURES = "plan_features";

    private final String name;
    private final String face;
    private final Class<T> type;
    private final Function<Survey, List<T>> items;
    private final BiConsumer<Draft, List<T>> exchange;

    private Part(String name, Class<T> type, Function<Survey, List<T>> items, BiConsumer<Draft, List<T>> exchange) {
        this(name, "", type, items, exchange);
    }

    private Part(
            String name,
            String face,
            Class<T> type,
            Function<Survey, List<T>> items,
            BiConsumer<Draft, List<T>> exchange) {
        this.name = name;
        this.face = face;
        this.type = type;
        this.items = items;
        this.exchange = exchange;
    }

    /** What is drawn on one face. */
    public static Part<Feature> features(String face) {
        return new Part<>(
                FEATURES,
                face,
                Feature.class,
                s -> s.face(face).features(),
                (draft, list) -> draft.faces = draft.faces.stream()
                        .map(f -> f.name().equals(face) ? f.with(list) : f)
                        .toList());
    }

    /** Every part that belongs to no single face, in the order in which they may be read. */
    public static List<Part<?>> all() {
        return List.of(
                HEADING,
                MATERIALS,
                SETTINGS,
                FACES,
                METERS,
                LAMINATES,
                MOISTURE,
                TAPS,
                PROBES,
                FEELERS,
                PLUGS,
                TEMPERATURES,
                CURED_TAPS,
                LOG,
                PHOTOS,
                METHODS,
                DOUBTS,
                HOLES,
                RULES,
                LOADS,
                ISSUE,
                PLANNED_REGIONS,
                PLANNED_HOLES,
                PLANNED_CUTS,
                PLANNED_CUPS,
                PURCHASES);
    }

    /** The part of that name; {@code face} is empty for all but plan features. */
    public static Part<?> of(String name, String face) {
        return name.equals(FEATURES)
                ? features(face)
                : all().stream()
                        .filter(p -> p.name.equals(name))
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException("a survey has no part " + name));
    }

    /** In snake case; unique among the parts of a survey but for the features of several faces. */
    public String name() {
        return name;
    }

    /** The face whose features these are, empty for every other part. */
    public String face() {
        return face;
    }

    public Class<T> type() {
        return type;
    }

    /** The things themselves. */
    public List<T> of(Survey survey) {
        return items.apply(survey);
    }

    /** A copy with other things in this part. */
    public Survey with(Survey survey, List<T> list) {
        Draft draft = new Draft(survey);
        exchange.accept(draft, list);
        return draft.survey();
    }

    /** A copy with the things at {@code at}, {@code removed} of them, exchanged for others. */
    Survey spliced(Survey survey, int at, int removed, List<T> put) {
        List<T> list = new ArrayList<>(of(survey));
        list.subList(at, at + removed).clear();
        list.addAll(at, put);
        return with(survey, list);
    }

    private static <T> T only(List<T> list) {
        if (list.size() != 1) {
            throw new IllegalArgumentException("a survey has exactly one of these, not " + list.size());
        }
        return list.get(0);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Part<?> that && name.equals(that.name) && face.equals(that.face);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, face);
    }

    @Override
    public String toString() {
        return face.isEmpty() ? name : name + " of " + face;
    }
}
