package corewright.decision;

import corewright.survey.RuleOverride;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Asks the rules of the book one after another. The first that holds and advises settles the method; a rule that holds after that still
 * refuses what it refuses, and its reason is kept where it speaks of what was settled. The first refusal of a method is the one told. A
 * rule that a person set aside neither advises nor refuses, but its sentence stays, with who and why.
 */
final class Rules {
    static final String SET_ASIDE = "set aside";

    private static final String LOOK =
            " and look at the core: dry core opens the way to injection, wet core means cutting out.";

    private final Facts facts;
    private final List<String> reasons = new ArrayList<>();
    private final List<String> argued = new ArrayList<>();
    private final List<FiredRule> fired = new ArrayList<>();
    private final Map<Method, String> refused = new EnumMap<>(Method.class);
    private final Map<Method, String> setAside = new EnumMap<>(Method.class);
    private @Nullable Rule instead;
    private @Nullable Method method;
    private @Nullable String first;
    private @Nullable Spot pilot;

    private Rules(Facts facts) {
        this.facts = facts;
    }

    /** The decision, with every rule that held. */
    static RegionDecision decide(Facts facts) {
        return new Rules(facts).decision();
    }

    private RegionDecision decision() {
        for (Rule rule : RuleBook.RULES) {
            boolean late = method != null && rule.advises().isPresent() && !alsoCut(method, rule);
            if (!late && rule.when().test(facts)) {
                facts.aside(rule.name()).ifPresentOrElse(by -> aside(rule, by), () -> holds(rule));
            }
        }
        Method settled = method != null ? method : withoutAdvice();
        refused.remove(settled);
        setAside.keySet().removeAll(refused.keySet());
        reasons.addAll(argued);
        String id = facts.region().id();
        return new RegionDecision(
                id, settled, reasons, first, pilot, refused, facts.underLoad(), fired, setAside, null);
    }

    private void holds(Rule rule) {
        String says = rule.says().apply(facts);
        addReasons(says);
        rule.refuses().forEach((m, why) -> refused.putIfAbsent(m, why.apply(facts)));
        if (method == null && rule.advises().isPresent()) {
            method = rule.advises().get();
            rule.first().ifPresent(this::prove);
        }
        fired.add(told(rule, effects(rule), says));
    }

    /** Its advice and its stop signs have no effect; what it says is told all the same. */
    private void aside(Rule rule, RuleOverride by) {
        boolean stop = !rule.refuses().isEmpty();
        String says = rule.says().apply(facts);
        String who = " set aside by " + Words.whoAndWhy(by) + " ";
        FiredRule told = told(rule, SET_ASIDE, says);
        argued.add((stop ? "Stop sign" : "Rule") + who + told.sentence());
        rule.refuses().forEach((m, why) -> setAside.putIfAbsent(m, "Stop sign" + who + why.apply(facts)));
        fired.add(new FiredRule(told.name(), SET_ASIDE, argued.get(argued.size() - 1), told.source()));
        if (instead == null && rule.advises().isPresent()) {
            instead = rule;
        }
    }

    /**
     * The rule that would have settled it was set aside and no other speaks: its advice stands, but for an injection, in whose place
     * the core is opened.
     */
    private Method withoutAdvice() {
        Rule rule = instead;
        if (rule == null) {
            throw new IllegalStateException(
                    "no rule speaks of " + facts.region().id());
        }
        Method stands = rule.advises().filter(m -> m != Method.INJECT).orElse(Method.RECORE);
        reasons.add(
                0,
                "Rule \"" + rule.name() + "\" is set aside, and no other advises here: it is "
                        + (rule.advises().get() == stands ? "kept to." : "opened."));
        rule.first().ifPresent(this::prove);
        return stands;
    }

    private void prove(Rule.First step) {
        pilot = step.at().apply(facts);
        first = step.drill() + Words.place(facts.evidence().face(), pilot) + LOOK;
    }

    private void addReasons(String says) {
        if (!says.isEmpty()) {
            reasons.addAll(Arrays.asList(says.split("\n", -1)));
        }
    }

    /** Several things at once may call for cutting out; all of them are told. */
    private static boolean alsoCut(Method method, Rule rule) {
        return method == Method.RECORE
                && rule.advises().filter(m -> m == method).isPresent();
    }

    private static String effects(Rule rule) {
        List<String> effects = new ArrayList<>();
        rule.advises().ifPresent(m -> effects.add(m.word()));
        for (Method method : Method.values()) {
            if (rule.refuses().containsKey(method)) {
                effects.add("not " + method.word());
            }
        }
        rule.first().ifPresent(step -> effects.add("prove first"));
        return String.join(", ", effects);
    }

    private FiredRule told(Rule rule, String effect, String says) {
        List<String> sentences = new ArrayList<>();
        if (!says.isEmpty()) {
            sentences.add(says.replace('\n', ' '));
        } else {
            for (Method each : Method.values()) {
                var why = rule.refuses().get(each);
                if (why != null) {
                    sentences.add(why.apply(facts));
                }
            }
        }
        return new FiredRule(rule.name(), effect, String.join(" ", sentences), rule.source());
    }
}
