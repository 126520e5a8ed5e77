package corewright.desktop.decide;

import corewright.assessment.Assessment;
import corewright.damage.Region;
import corewright.decision.DeckSteps;
import corewright.decision.DeckSteps.Step;
import corewright.decision.Method;
import corewright.desktop.state.Workbench;
import corewright.drawing.kit.Figures;
import corewright.survey.Edit;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
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
            steps = DeckSteps.of(found.decision().weighing().options(), found.stiffness());
        }
        return steps;
    }

    public void ask(boolean forBudget) {
        byBudget = forBudget;
    }

    public boolean byBudget() {
        return byBudget;
    }

    /** Ends of the control: parts of as built, or money. */
    public double low() {
        return byBudget ? 0 : 0.2;
    }

    public double high() {
        return byBudget ? steps().stream().mapToDouble(Step::costHigh).max().orElse(1) : 1;
    }

    /** What is asked for, in the control's terms. */
    public double asked() {
        return byBudget ? (Double.isNaN(budget) ? high() / 2 : budget) : stiffness;
    }

    public void ask(double value) {
        if (byBudget) {
            budget = value;
        } else {
            stiffness = value;
        }
    }

    /** The cheapest step that is stiff enough, or the stiffest that the sum pays for at its high figure. */
    public Optional<Step> chosen() {
        List<Step> all = steps();
        if (byBudget) {
            return all.stream().filter(s -> s.costHigh() <= asked()).reduce((a, b) -> b);
        }
        return all.stream().filter(s -> s.share() >= asked()).findFirst();
    }

    /** What is asked for, as a sentence. */
    public String question() {
        return byBudget
                ? "At most " + money(asked()) + ", at the high figure."
                : "At least " + Figures.fixed(100 * asked(), 0) + " of 100 at the softest place of the weakest panel.";
    }

    String money(double sum) {
        return bench.survey().map(s -> s.settings().costs().currency()).orElse("") + " " + Figures.fixed(sum, 0);
    }

    /** What the step costs and gives; what is missing where none is found. */
    public String answer() {
        return chosen().map(s -> money(s.costLow()) + " to " + Figures.fixed(s.costHigh(), 0) + ", "
                        + DecideModel.range(s.hoursLow(), s.hoursHigh(), 0) + " hours, about "
                        + Figures.fixed(100 * s.share(), 0) + " of 100 stiff; visits are not counted.")
                .orElse(
                        byBudget
                                ? "Nothing that is offered costs so little."
                                : "Nothing that is offered comes to that.");
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
        return "One step up: " + Figures.fixed(100 * (next.share() - now.share()), 0) + " more for "
                + money(next.cost() - now.cost()) + ".";
    }

    /** Regions that are decided otherwise now. */
    public List<String> differing() {
        Assessment found = bench.found().orElse(null);
        return found == null
                ? List.of()
                : chosen().map(s -> s.methods().entrySet().stream()
                                .filter(e -> found.decision().on(e.getKey()).method() != e.getValue())
                                .map(Map.Entry::getKey)
                                .sorted(BY_NUMBER)
                                .toList())
                        .orElse(List.of());
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
