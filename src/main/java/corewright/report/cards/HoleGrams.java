package corewright.report.cards;

import corewright.repair.plan.InjectionPlan;
import corewright.repair.work.WorkLog;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Grams into each injection hole as a card shows them: whole grams, or tenths where a hole takes less than ten and a half. The total
 * is the sum of what is shown.
 */
record HoleGrams(Map<String, BigDecimal> ofHole, BigDecimal total) {
    private static final double TENTHS_BELOW_G = 10.5;

    HoleGrams {
        ofHole = Map.copyOf(ofHole);
    }

    static HoleGrams of(InjectionPlan plan, double wasteFraction) {
        Map<String, Double> planned = WorkLog.planned(plan, wasteFraction);
        boolean tenths = planned.values().stream().anyMatch(g -> g < TENTHS_BELOW_G);
        Map<String, BigDecimal> shown = new LinkedHashMap<>();
        BigDecimal total = BigDecimal.ZERO;
        for (Map.Entry<String, Double> hole : planned.entrySet()) {
            BigDecimal grams = BigDecimal.valueOf(hole.getValue()).setScale(tenths ? 1 : 0, RoundingMode.HALF_UP);
            shown.put(hole.getKey(), grams);
            total = total.add(grams);
        }
        return new HoleGrams(shown, total);
    }
}
