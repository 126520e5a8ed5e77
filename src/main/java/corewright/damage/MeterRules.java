package corewright.damage;

import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.Finding.Severity;
import corewright.survey.Meter;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Subject;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What a moisture meter cannot tell: one table of rules, asked of every reading before anything is made of it. */
final class MeterRules {
    /** What a rule makes of a reading. */
    enum Effect {
        /** It says nothing. */
        SET_ASIDE("set aside: the map rests on what else was read there; read from the other side, or drill"),
        /** It may be high for another reason; a low one counts in full. */
        FALSELY_HIGH("kept, but a raised one may stand for anything down to dry; low ones are trusted in full"),
        /** A low one says nothing; a high one counts in full. */
        LOW_SAYS_NOTHING("raised ones are kept; low ones are set aside, as they do not show dry core"),
        /** Kept as a relative figure. */
        KEPT("kept as a relative reading; it is no percentage of this core, and only a plug proves it dry");

        private final String words;

        Effect(String words) {
            this.words = words;
        }
    }

    /** Everything that is asked about one reading. */
    private record Asked(Moisture reading, Meter meter, String skin, String core) {
        boolean noted(Pattern words) {
            return words.matcher(reading.note()).find();
        }
    }

    private interface Question {
        boolean of(Asked asked);
    }

    private static final Pattern CARBON = words("carbon");
    private static final Pattern METAL_SKIN = words("alumini?um|metal|steel");
    private static final Pattern FOAM = words("foam|pvc|san|pet|honeycomb|aramid");
    private static final Pattern WET_SURFACE =
            words("(wet|damp|salty) (surface|skin|paint|deck|non-skid|teak)|dew|rain|salt|condensation|splashed");

    private static Pattern words(String any) {
        return Pattern.compile("\\b(" + any + ")\\b", Pattern.CASE_INSENSITIVE);
    }

    /** The table; the first rule that holds for a reading decides. */
    private enum Rule {
        CARBON_SKIN(
                a -> CARBON.matcher(a.skin).find(),
                "taken through carbon skin, which conducts: a meter reads the skin, not the core",
                Effect.SET_ASIDE,
                "surveyors' pages: unusable, measure from below"),
        METAL_SKIN(
                a -> MeterRules.METAL_SKIN.matcher(a.skin).find(),
                "taken through a metal skin: a meter reads the metal",
                Effect.SET_ASIDE,
                "common practice"),
        FROST(
                a -> below(a.reading.temperatureC(), 0),
                "taken below freezing: a meter does not see ice",
                Effect.LOW_SAYS_NOTHING,
                "surveyors' pages: wait 72 to 96 hours above freezing"),
        WET_SURFACE(
                a -> a.noted(MeterRules.WET_SURFACE),
                "noted as taken on a wet or salty surface, which raises any reading",
                Effect.FALSELY_HIGH,
                "surveyors' pages: rain, dew and salt read high"),
        PIN_IN_FOAM(
                a -> a.meter.kind() == Meter.Kind.PIN && FOAM.matcher(a.core).find(),
                "taken with a pin meter over foam or honeycomb, while its scale is of wood",
                Effect.KEPT,
                "common practice"),
        RELATIVE_OVER_FOAM(
                a -> FOAM.matcher(a.core).find(),
                "taken over foam or honeycomb, which holds water in joints and cells only: a low mean can hide it",
                Effect.KEPT,
                "common practice");

        private final Question question;
        private final String fact;
        private final Effect effect;
        private final String source;

        Rule(Question question, String fact, Effect effect, String source) {
            this.question = question;
            this.fact = fact;
            this.effect = effect;
            this.source = source;
        }

        private static boolean below(@Nullable Double celsius, double limit) {
            return celsius != null && celsius < limit;
        }
    }

    private final Survey survey;
    private final Judged judged;
    private final Map<Rule, List<Moisture>> hit = new EnumMap<>(Rule.class);

    MeterRules(Judged judged) {
        this.judged = judged;
        survey = judged.survey();
    }

    /** What becomes of a reading; null where no rule speaks, or a person trusts it. */
    @Nullable
    Effect of(Moisture reading, Meter meter) {
        if (judged.trusted(reading)) {
            return null;
        }
        var laminate = survey.laminateAt(reading.spot());
        Asked asked = new Asked(reading, meter, laminate.skin(), laminate.core());
        for (Rule rule : Rule.values()) {
            if (rule.question.of(asked)) {
                hit.computeIfAbsent(rule, r -> new ArrayList<>()).add(reading);
                return rule.effect;
            }
        }
        return null;
    }

    /** One finding a rule and bay, with how many readings it is about. */
    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        hit.forEach((rule, readings) -> {
            Moisture first = readings.get(0);
            boolean one = readings.size() == 1;
            String message = String.format(
                    Locale.ROOT,
                    "%d moisture reading%s of %s, %s: %s %s (%s)",
                    readings.size(),
                    one ? "" : "s",
                    first.spot().face(),
                    one ? first.id() : "first " + first.id(),
                    one ? "it was" : "they were",
                    rule.fact,
                    rule.source);
            Origin origin = one ? first.origin() : new Origin(first.origin().file(), 0);
            About about = one ? About.of(first) : new About.OfFace(first.spot().face());
            findings.add(new Finding(Severity.DOUBT, origin, about, Subject.METER, message, rule.effect.words));
        });
        return findings;
    }
}
