package corewright.survey;

import java.util.List;

/** What people decided otherwise than the program would; later ones win over earlier ones at the same place. */
public record Judgements(
        List<MethodOverride> methods, List<ReadingOverride> readings, List<MovedHole> holes, List<RuleOverride> rules) {
    /** Everything as the program proposes. */
    public static final Judgements NONE = new Judgements(List.of(), List.of(), List.of());

    public Judgements {
        methods = List.copyOf(methods);
        readings = List.copyOf(readings);
        holes = List.copyOf(holes);
        rules = List.copyOf(rules);
    }

    /** By all rules. */
    public Judgements(List<MethodOverride> methods, List<ReadingOverride> readings, List<MovedHole> holes) {
        this(methods, readings, holes, List.of());
    }
}
