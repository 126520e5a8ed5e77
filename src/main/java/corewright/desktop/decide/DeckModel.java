package corewright.desktop.decide;

import corewright.assessment.Assessment;
import corewright.damage.Region;
import corewright.decision.DeckSteps;
import corewright.decision.DeckSteps.Step;
import corewright.decision.Method;
import corewright.decision.Option;
import corewright.desktop.state.Workbench;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.report.page.Wording;
import corewright.survey.Edit;
import corewright.survey.Survey;
import corewright.survey.settings.Settings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The whole deck at least cost, for a stiffness wanted or a sum at hand. Knows no window. */
public final class DeckModel {
    private final Workbench bench;
    private @Nullable Assessment of;
    private List<Step> steps = List.of();
    private boolean byBudget;
    private double stiffness = 0.8;
    private double budget = Double.NaN;

    public DeckModel(Workbench bench) {
        this.bench = bench;
    }

    /** From the cheapest on; empty while nothing is found, and where no damaged panel was calculated. */
    public List<Step> steps() {
        Assessment found = bench.found().filter(a -> a.ages().freshRest()).orElse(null);
        if (found == null) {
            return List.of();
        }
        if (found != of) {
            of = found;
            Settings settings = found.survey().settings();
            double aDay = settings.costs().hoursPerDay() * settings.crew().people();
            steps = DeckSteps.of(found.decision().weighing().options(), found.stiffness(), aDay);
        }
        return steps;
    }

    /** The sum begins with what the stiffness asked for costs. */
    public void ask(boolean forBudget) {
        Optional<Step> before = chosen();
        byBudget = forBudget;
        if (forBudget && Double.isNaN(budget)) {
            budget = before.map(DeckModel::price).orElse(high());
        }
    }

    public boolean byBudget() {
        return byBudget;
    }

    /** Ends of the control: parts of as built, or money. */
    public double low() {
        double least = steps().stream().mapToDouble(Step::share).min().orElse(0);
        return byBudget ? 0 : Math.max(0, Math.ceil(10 * least - 1e-9) / 10 - 0.1);
    }

    public double high() {
        return byBudget
                ? Math.max(
                        1, steps().stream().mapToDouble(DeckModel::price).max().orElse(1))
                : 1;
    }

    /** The finest the control is set to: a hundredth of as built, or a round sum. */
    double finest() {
        return byBudget ? Math.pow(10, Math.floor(Math.log10(high() / 20))) : 0.01;
    }

    /** What is asked for, in the control's terms. */
    public double asked() {
        return byBudget ? budget : stiffness;
    }

    public void ask(double value) {
        if (byBudget) {
            budget = value;
        } else {
            stiffness = value;
        }
    }

    /** A value of the control: between its ends, and no finer than it is set. */
    double onControl(double value) {
        return Math.max(low(), Math.min(high(), round(value)));
    }

    private double round(double value) {
        return Math.rint(value / finest()) * finest();
    }

    /** Asks for exactly what the next step up or down gives or costs; stays at the ends. */
    void climb(int by) {
        List<Step> all = steps();
        int at = chosen().map(all::indexOf).orElse(byBudget ? -1 : all.size());
        int to = Math.max(0, Math.min(all.size() - 1, at + by));
        Step step = all.get(to);
        // steps are a hundredth apart, so the hundredth below a step is above the one before
        ask(byBudget ? price(step) : Math.floor(step.share() / finest() + 1e-9) * finest());
    }

    /** What a sum must pay for: the high figure. */
    static double price(Step step) {
        return step.work().costHigh();
    }

    /** The cheapest step that is stiff enough, or the stiffest that the sum pays for at its high figure. */
    public Optional<Step> chosen() {
        List<Step> all = steps();
        if (byBudget) {
            return all.stream().filter(s -> price(s) <= asked() + 1e-9).reduce((a, b) -> b);
        }
        return all.stream().filter(s -> s.share() >= asked() - 1e-9).findFirst();
    }

    /** What is asked for, as a sentence. */
    public String question() {
        return byBudget
                ? "At most " + money(asked()) + ", at the high figure."
                : "At least " + hundredths(asked()) + " of 100 at the softest place of the weakest panel.";
    }

    String money(double sum) {
        return Wording.money(currency(), sum, sum);
    }

    private String currency() {
        return bench.survey().map(s -> s.settings().costs().currency()).orElse("");
    }

    static String hundredths(double share) {
        return Figures.fixed(100 * share, 0);
    }

    /** What is told of a step: a figure, and what it is. */
    record Told(String figure, String what) {}

    /** Cost, hours, days, weight and stiffness of the mix; empty where nothing comes to what is asked for. */
    List<Told> told() {
        return chosen().map(this::told).orElse(List.of());
    }

    private List<Told> told(Step step) {
        Option.Work work = step.work();
        Measure measure = bench.sight().units().measure();
        double net = measure.weight(step.netKg());
        String days = Double.isInfinite(work.daysHigh())
                ? Wording.days(work.daysLow(), work.daysLow()) + " or more"
                : Wording.days(work.daysLow(), work.daysHigh());
        return List.of(
                new Told(Wording.money(currency(), work.costLow(), work.costHigh()), "without visits"),
                new Told(DecideModel.range(work.hoursLow(), work.hoursHigh(), 0), "hours"),
                new Told(days, "days"),
                new Told(Double.isNaN(net) ? "?" : Figures.fixed(net, 1), measure.weightUnit() + " stay aboard"),
                new Told("about " + hundredths(step.share()), "of 100 stiff"));
    }

    /** What the step costs and gives, as a sentence; what is missing where none is found. */
    public String answer() {
        return chosen().isEmpty()
                ? byBudget ? "Nothing that is offered costs so little." : "Nothing that is offered comes to that."
                : told().stream().map(t -> t.figure() + " " + t.what()).collect(Collectors.joining(", ")) + ".";
    }

    /** What a step does otherwise than the one before it, or all it does where it is the first: what makes it stiffer. */
    String differs(Step step) {
        int at = steps().indexOf(step);
        Map<String, Method> methods = new TreeMap<>(step.methods());
        if (at > 0) {
            methods.entrySet().removeIf(e -> steps().get(at - 1).methods().get(e.getKey()) == e.getValue());
        }
        return mix(methods).replaceAll("\\.$", "");
    }

    /** The step that is decided now; empty where what is decided is none of them. */
    Optional<Step> decided() {
        return steps().stream().filter(s -> differing(s).isEmpty()).findFirst();
    }

    /** R9 before R10. */
    private static final Comparator<String> BY_NUMBER =
            Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder());

    /** "R1, R4 inject; R3 cut out, recore". */
    public String mix() {
        return chosen().map(s -> mix(s.methods())).orElse("");
    }

    private static String mix(Map<String, Method> methods) {
        Map<Method, List<String>> by = new TreeMap<>();
        methods.forEach((region, method) ->
                by.computeIfAbsent(method, m -> new ArrayList<>()).add(region));
        by.values().forEach(regions -> regions.sort(BY_NUMBER));
        List<String> parts = new ArrayList<>();
        by.forEach((m, regions) ->
                parts.add(String.join(", ", regions) + " " + Methods.name(m).toLowerCase(java.util.Locale.ROOT)));
        return parts.isEmpty() ? "" : String.join("; ", parts) + ".";
    }

    /** What one step more would give and cost; empty at the top. */
    public String up() {
        List<Step> all = steps();
        int at = chosen().map(all::indexOf).orElse(-1);
        if (at < 0 || at == all.size() - 1) {
            return "";
        }
        Step now = all.get(at);
        Step next = all.get(at + 1);
        return "One step up: " + Figures.fixed(100 * (next.share() - now.share()), 0) + " more for about "
                + money(next.cost() - now.cost()) + ".";
    }

    /** Regions that are decided otherwise now. */
    public List<String> differing() {
        return chosen().map(this::differing).orElse(List.of());
    }

    private List<String> differing(Step step) {
        return bench.found().stream()
                .flatMap(a -> step.methods().entrySet().stream()
                        .filter(e -> a.decision().on(e.getKey()).method() != e.getValue()))
                .map(Map.Entry::getKey)
                .sorted(BY_NUMBER)
                .toList();
    }

    /**
     * Decides every region as the step has it.
     *
     * @return what is missing, empty where it is decided
     */
    public String take(String reason, String who) {
        Assessment found = bench.found().orElse(null);
        Step step = chosen().orElse(null);
        if (found == null || step == null || differing().isEmpty()) {
            return "";
        }
        boolean named = !found.survey().heading().surveyor().isBlank();
        if (reason.isBlank()) {
            return "This mix needs one reason in your words; it is printed beside every choice.";
        }
        if (!named && who.isBlank()) {
            return "Say who decides; the survey names no surveyor.";
        }
        List<Region> regions = found.damage().regions().stream()
                .filter(r -> differing().contains(r.id()))
                .toList();
        bench.edit("the mix for the whole deck", s -> all(s, regions, step, who.strip(), reason.strip()));
        return "";
    }

    private static Edit all(Survey survey, List<Region> regions, Step step, String who, String reason) {
        List<Edit> edits = new ArrayList<>();
        Survey now = survey;
        for (Region region : regions) {
            Method method = step.methods().get(region.id());
            if (method != null) {
                Edit edit = DecideModel.put(now, region, method, who, reason);
                edits.add(edit);
                now = edit.apply(now);
            }
        }
        return new Edit.Together(edits);
    }
}
