package corewright.repair;

import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Plans what a repair of each region would take. */
public final class RepairPlanner {
    private RepairPlanner() {}

    /** An injection for each loose region and a cut for each region. */
    public static RepairOptions plan(Survey survey, DamageMap damage) {
        List<InjectionPlan> injections = new ArrayList<>();
        List<RecorePlan> recores = new ArrayList<>();
        Map<String, String> refused = new LinkedHashMap<>();
        for (FaceDamage face : damage.faces()) {
            for (Region region : face.regions()) {
                if (region.condition().loose()) {
                    InjectionPlanner.Outcome outcome = InjectionPlanner.plan(survey, face, region);
                    if (outcome.plan() != null) {
                        injections.add(outcome.plan());
                    } else {
                        refused.put(region.id(), outcome.refusal());
                    }
                }
                recores.add(RecorePlanner.plan(survey, face, region));
            }
        }
        return new RepairOptions(injections, recores, refused);
    }
}
