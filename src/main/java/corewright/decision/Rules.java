package corewright.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Asks the rules of the book one after another. The first that holds and advises settles the method; a rule that holds after that still
 * refuses what it refuses, and its reason is kept where it speaks of what was settled. The first refusal of a method is the one told.
 */
final class Rules {
    private Rules() {}

    /** The decision, with every rule that held. */
    static RegionDecision decide(Facts facts) {
        List<String> reasons = new ArrayList<>();
        List<FiredRule> fired = new ArrayList<>();
        Map<Method, String> refused = new EnumMap<>(Method.class);
        @Nullable Method method = null;
        @Nullable String first = null;
        for (Rule rule : RuleBook.RULES) {
            boolean late = method != null && rule.advises().isPresent() && !alsoCut(method, rule);
            if (late || !rule.when().test(facts)) {
                continue;
            }
            String says = rule.says().apply(facts);
            if (!says.isEmpty()) {
                reasons.addAll(Arrays.asList(says.split("\n", -1)));
            }
            rule.refuses().forEach((m, why) -> refused.putIfAbsent(m, why.apply(facts)));
            if (method == null && rule.advises().isPresent()) {
                method = rule.advises().get();
                first = rule.first().map(step -> step.apply(facts)).orElse(null);
            }
            fired.add(told(rule, facts, says));
        }
        if (method == null) {
            throw new IllegalStateException(
                    "no rule speaks of " + facts.region().id());
        }
        refused.remove(method);
        facts.options().failed(facts.region().id()).ifPresent(d -> reasons.add(d.sentence()));
        return new RegionDecision(facts.region().id(), method, reasons, first, refused, facts.underLoad(), fired, null);
    }

    /** Several things at once may call for cutting out; all of them are told. */
    private static boolean alsoCut(Method method, Rule rule) {
        return method == Method.RECORE
                && rule.advises().filter(m -> m == method).isPresent();
    }

    private static FiredRule told(Rule rule, Facts facts, String says) {
        List<String> effects = new ArrayList<>();
        rule.advises().ifPresent(m -> effects.add(m.word()));
        List<String> sentences = new ArrayList<>();
        if (!says.isEmpty()) {
            sentences.add(says.replace('\n', ' '));
        }
        for (Method method : Method.values()) {
            var why = rule.refuses().get(method);
            if (why != null) {
                effects.add("not " + method.word());
                if (says.isEmpty()) {
                    sentences.add(why.apply(facts));
                }
            }
        }
        rule.first().ifPresent(step -> effects.add("prove first"));
        return new FiredRule(rule.name(), String.join(", ", effects), String.join(" ", sentences), rule.source());
    }
}
