package corewright.decision;

import corewright.survey.Spot;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * One rule of the book: a condition on what is known of a region, and what follows.
 *
 * @param name by which it is told and argued with
 * @param when its condition
 * @param says its sentences, the reason of the decision; empty where it only refuses
 * @param advises its method, empty where it has none; the first rule that holds and advises settles the method
 * @param refuses methods it rules out, each with its sentence
 * @param first what must be proven first
 * @param source where it comes from, or its mark
 */
record Rule(
        String name,
        Predicate<Facts> when,
        Function<Facts, String> says,
        Optional<Method> advises,
        Map<Method, Function<Facts, String>> refuses,
        Optional<First> first,
        String source) {
    static final String PRACTICE = "common practice";

    /** The words before the place of a hole, and that place. */
    record First(String drill, Function<Facts, Spot> at) {}

    Rule {
        refuses = Map.copyOf(refuses);
    }

    /** A rule that says nothing yet. */
    static Rule when(String name, Predicate<Facts> condition) {
        return new Rule(name, condition, f -> "", Optional.empty(), Map.of(), Optional.empty(), PRACTICE);
    }

    Rule says(Function<Facts, String> reason) {
        return new Rule(name, when, reason, advises, refuses, first, source);
    }

    Rule advises(Method method) {
        return new Rule(name, when, says, Optional.of(method), refuses, first, source);
    }

    Rule refuses(Method method, Function<Facts, String> why) {
        Map<Method, Function<Facts, String>> more = new java.util.EnumMap<>(Method.class);
        more.putAll(refuses);
        more.put(method, why);
        return new Rule(name, when, says, advises, more, first, source);
    }

    Rule refuses(Method method, String why) {
        return refuses(method, f -> why);
    }

    /** A hole that must prove something first, with the words before its place. */
    Rule first(String drill, Function<Facts, Spot> at) {
        return new Rule(name, when, says, advises, refuses, Optional.of(new First(drill, at)), source);
    }

    Rule from(String where) {
        return new Rule(name, when, says, advises, refuses, first, where);
    }
}
