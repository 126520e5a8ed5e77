package corewright.store;

import corewright.survey.FrozenPlan;
import corewright.survey.FrozenPlan.PlannedHole;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.Yaml;

/** repair-plan.yaml of a plan: one thing a line, every number with all its digits, so that it is the same plan when read. */
public final class RepairPlanText {
    public static final String NAME = "repair-plan.yaml";

    private RepairPlanText() {}

    /** @param plan that was issued */
    public static String of(FrozenPlan plan) {
        Map<String, Object> yaml = new LinkedHashMap<>();
        FrozenPlan.Issue issue = plan.issue().get(0);
        yaml.put("format", 1);
        yaml.put("revision", issue.revision());
        yaml.put("surveyed", issue.surveyed().toString());
        yaml.put(
                "readings",
                fields(
                        "mark", issue.mark(),
                        "moisture", issue.moisture(),
                        "taps", issue.taps(),
                        "probes", issue.probes(),
                        "feelers", issue.feelers(),
                        "plugs", issue.plugs()));
        list(yaml, "regions", plan.regions(), RepairPlanText::region);
        list(yaml, "holes", plan.holes(), RepairPlanText::hole);
        list(
                yaml,
                "cuts",
                plan.cuts(),
                c -> fields("region", c.region(), "face", c.face(), "area", EveryDigit.wkt(c.area())));
        list(yaml, "cups", plan.cups(), RepairPlanText::cup);
        list(
                yaml,
                "buying",
                plan.buying(),
                b -> fields("item", b.item(), "plan", b.plan(), "buy", b.buy(), "unit", b.unit()));
        DumperOptions options = new DumperOptions();
        options.setDefaultFlowStyle(DumperOptions.FlowStyle.AUTO); // a collection of plain values stands on one line
        options.setSplitLines(false);
        options.setWidth(Integer.MAX_VALUE);
        return new Yaml(options).dump(yaml);
    }

    private static Map<String, Object> region(FrozenPlan.PlannedRegion r) {
        return fields(
                "name",
                r.name(),
                "face",
                r.label().face(),
                "x",
                r.label().xMm(),
                "y",
                r.label().yMm(),
                "method",
                r.method(),
                "standing",
                Scalar.word(r.standing()));
    }

    private static Map<String, Object> hole(PlannedHole h) {
        Map<String, Object> hole = fields(
                "name",
                h.name(),
                "region",
                h.region(),
                "face",
                h.spot().face(),
                "x",
                h.spot().xMm(),
                "y",
                h.spot().yMm(),
                "kind",
                Scalar.word(h.kind()),
                "diameter_mm",
                h.diameterMm(),
                "stop_mm",
                h.stopMm(),
                "grams",
                h.grams(),
                "standing",
                Scalar.word(h.standing()));
        if (!h.access().isEmpty() || h.pushMm() != 0) {
            hole.put("access", h.access());
            hole.put("push_mm", plain(h.pushMm()));
        }
        return hole;
    }

    /** The holes of a cup in one text: a list in a list would take a line a hole. */
    private static Map<String, Object> cup(FrozenPlan.PlannedCup c) {
        return fields(
                "cup",
                c.cup(),
                "region",
                c.region(),
                "holes",
                c.holes(),
                "part_a_g",
                c.partAG(),
                "part_b_g",
                c.partBG());
    }

    private static <T> void list(
            Map<String, Object> yaml, String key, List<T> items, Function<T, Map<String, Object>> fields) {
        if (!items.isEmpty()) {
            yaml.put(key, items.stream().map(fields).toList());
        }
    }

    private static Map<String, Object> fields(Object... keysAndValues) {
        Map<String, Object> fields = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            Object value = keysAndValues[i + 1];
            fields.put((String) keysAndValues[i], value instanceof Double number ? plain(number) : value);
        }
        return fields;
    }

    /** Whole numbers without a point. */
    private static Number plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15 ? (Number) (long) value : (Number) value;
    }
}
