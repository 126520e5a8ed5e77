package corewright.survey;

import corewright.survey.settings.Settings;
import java.util.List;

/** A survey taken apart while one part of it is exchanged; lives only inside {@link Part#with}. */
final class Draft {
    Heading heading;
    List<Face> faces;
    List<Meter> meters;
    List<Laminate> laminates;
    Materials materials;
    List<Moisture> moisture;
    List<Tap> taps;
    List<Probe> probes;
    List<Feeler> feelers;
    List<Plug> plugs;
    List<SurfaceTemperature> temperatures;
    List<Tap> curedTaps;
    Settings settings;
    List<WorkEntry> log;
    List<Photo> photos;
    List<MethodOverride> methods;
    List<ReadingOverride> doubts;
    List<MovedHole> holes;
    List<RuleOverride> rules;
    List<DeckLoad> loads;
    List<FrozenPlan.Issue> issue;
    List<FrozenPlan.PlannedRegion> plannedRegions;
    List<FrozenPlan.PlannedHole> plannedHoles;
    List<FrozenPlan.PlannedCut> plannedCuts;
    List<FrozenPlan.PlannedCup> plannedCups;
    List<FrozenPlan.Purchase> purchases;

    Draft(Survey of) {
        heading = of.heading();
        faces = of.faces();
        meters = of.meters();
        laminates = of.laminates();
        materials = of.materials();
        moisture = of.readings().moisture();
        taps = of.readings().taps();
        probes = of.readings().probes();
        feelers = of.readings().feelers();
        plugs = of.readings().plugs();
        temperatures = of.readings().temperatures();
        curedTaps = of.readings().curedTaps();
        settings = of.settings();
        log = of.log();
        photos = of.photos();
        methods = of.judgements().methods();
        doubts = of.judgements().readings();
        holes = of.judgements().holes();
        rules = of.judgements().rules();
        loads = of.loads();
        FrozenPlan plan = of.repairPlan();
        issue = plan.issue();
        plannedRegions = plan.regions();
        plannedHoles = plan.holes();
        plannedCuts = plan.cuts();
        plannedCups = plan.cups();
        purchases = plan.buying();
    }

    Survey survey() {
        return new Survey(
                heading,
                faces,
                meters,
                laminates,
                materials,
                new Readings(moisture, taps, probes, feelers, plugs, temperatures, curedTaps),
                settings,
                log,
                photos,
                new Judgements(methods, doubts, holes, rules),
                loads,
                new FrozenPlan(issue, plannedRegions, plannedHoles, plannedCuts, plannedCups, purchases));
    }
}
