package corewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.SurveyFolders;
import corewright.assessment.Ages;
import corewright.assessment.Assessment;
import corewright.assessment.Assessor;
import corewright.decision.DeckSteps;
import corewright.decision.Method;
import corewright.decision.Methods;
import corewright.decision.Option;
import corewright.desktop.decide.DecideModel;
import corewright.desktop.decide.DeckModel;
import corewright.desktop.find.Finder;
import corewright.desktop.holes.HolesModel;
import corewright.desktop.slip.Slip;
import corewright.desktop.slip.SlipWords;
import corewright.desktop.state.AtOnce;
import corewright.desktop.state.SurveyOpener;
import corewright.desktop.state.Units;
import corewright.desktop.state.Workbench;
import corewright.desktop.stiffness.StiffnessModel;
import corewright.desktop.work.Clock;
import corewright.desktop.work.CupsInRow;
import corewright.desktop.work.WorkModel;
import corewright.repair.RepairPlanner;
import corewright.repair.fill.DrawnCavities;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RepairOptions;
import corewright.reuse.Memory;
import corewright.sandwich.FootLoadMap;
import corewright.stiffness.PanelStiffness;
import corewright.stiffness.State;
import corewright.survey.MovedHole;
import corewright.survey.Part;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The steps after the map without a window, on one assessment of the small test deck. Nothing here changes the survey. */
class SecondHalfTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    static Path folder;

    @SuppressWarnings("NullAway.Init")
    private static Workbench bench;

    @BeforeAll
    static void assess() {
        bench = new Workbench(new AtOnce(), Assessor::assess);
        Path survey = SurveyFolders.minimal(folder).path();
        bench.open("survey", () -> SurveyOpener.open(survey));
        bench.select(bench.found().orElseThrow().plans().injections().get(0).region());
    }

    @AfterAll
    static void close() {
        bench.close();
    }

    /** Rounded one by one they would miss it by a hundredth now and then. */
    @Test
    void areasAddUpToTheirHeading() {
        Assessment found = bench.found().orElseThrow();
        Slip slip = SlipWords.of(found, Units.METRIC, Ages.FRESH).face(bench.face());
        BigDecimal sum = slip.facts().stream()
                .filter(f -> f.value().endsWith(" m²"))
                .map(f -> new BigDecimal(f.value().replace(" m²", "")))
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .setScale(2, RoundingMode.HALF_UP);
        assertThat(slip.aside()).isEqualTo(sum + " m²");
    }

    @Test
    void everyMethodStandsWithItsFiguresOrItsReason() {
        DecideModel model = new DecideModel(bench);
        List<DecideModel.Row> rows = model.rows(model.region().orElseThrow());

        assertThat(rows).extracting(DecideModel.Row::method).containsExactly(Method.values());
        assertThat(rows).filteredOn(DecideModel.Row::offered).allMatch(r -> r.figures()
                .matches(".+ h, .+ days?.*"));
        assertThat(rows).filteredOn(r -> !r.offered()).noneMatch(r -> r.why().isEmpty());
        assertThat(rows).filteredOn(DecideModel.Row::current).hasSize(1);
    }

    @Test
    void anotherMethodWithoutAReasonIsNotTaken() {
        DecideModel model = new DecideModel(bench);
        Method other = model.rows(model.region().orElseThrow()).stream()
                .filter(r -> !r.current())
                .map(DecideModel.Row::method)
                .findFirst()
                .orElseThrow();
        model.want(other);

        assertThat(model.decide(" ", "me")).startsWith("Another method needs one reason");
        assertThat(model.decide("why not", "")).startsWith("Say who decides");
        assertThat(bench.survey().orElseThrow().judgements().methods()).isEmpty();
        model.wantNothing();
    }

    /** By trying all there are: no cheaper choice reaches what a step reaches. */
    @Test
    void stepsOfTheWholeDeckRiseAndEachIsTheCheapestForItsStiffness() {
        DeckModel model = new DeckModel(bench);
        List<DeckSteps.Step> steps = model.steps();

        assertThat(steps).isNotEmpty();
        for (int i = 1; i < steps.size(); i++) {
            assertThat(steps.get(i).share()).isGreaterThan(steps.get(i - 1).share());
            assertThat(steps.get(i).cost())
                    .isGreaterThanOrEqualTo(steps.get(i - 1).cost());
        }
        DeckSteps.Step top = steps.get(steps.size() - 1);
        model.ask(top.share());
        assertThat(model.chosen()).contains(top);
        model.ask(1.5);
        assertThat(model.chosen()).isEmpty();
        assertThat(model.answer()).isEqualTo("Nothing that is offered comes to that.");
        model.ask(true);
        model.ask(steps.get(0).work().costHigh());
        assertThat(model.chosen()).isPresent().hasValueSatisfying(s -> assertThat(
                        s.work().costHigh())
                .isLessThanOrEqualTo(steps.get(0).work().costHigh()));
    }

    /** Costs and hours add up; each region's work is what its row says, so that two places on one screen agree. */
    @Test
    void aStepOfTheWholeDeckComesToTheSumOfItsRegions() {
        List<Option> options = bench.found().orElseThrow().decision().weighing().options();
        for (DeckSteps.Step step : new DeckModel(bench).steps()) {
            List<Option> own = options.stream()
                    .filter(o -> step.methods().containsKey(o.region())
                            && o.method().equals(step.methods().get(o.region()).word()))
                    .toList();
            assertThat(own).hasSameSizeAs(step.methods().keySet());
            assertThat(step.work().costHigh())
                    .isCloseTo(sum(own, o -> o.work().orElseThrow().costHigh()), within(1e-6));
            assertThat(step.netKg()).isCloseTo(sum(own, o -> o.weight().netKg()), within(1e-9));
            double longest = own.stream()
                    .mapToDouble(o -> o.work().orElseThrow().daysHigh())
                    .max()
                    .orElse(0);
            assertThat(step.work().daysHigh())
                    .isBetween(
                            longest - 1e-9, sum(own, o -> o.work().orElseThrow().daysHigh()) + 1e-9);
        }
    }

    private static double sum(List<Option> options, ToDoubleFunction<Option> figure) {
        return options.stream().mapToDouble(figure).sum();
    }

    /** At a place of the foot map the foot gives what the map says there. */
    @Test
    void aFootPressedOnAPlaceOfTheMapGivesWhatTheMapSays() {
        StiffnessModel model = new StiffnessModel(bench);
        PanelStiffness panel = model.panel().orElseThrow();
        for (State state : StiffnessModel.states(panel)) {
            FootLoadMap.Place place = panel.in(state).feet().places().get(3);
            assertThat(model.press(place.x(), place.y())).isTrue();
            assertThat(model.givesMm(panel, state)).isCloseTo(place.deflectionMm(), within(1e-9));
        }
        assertThat(model.press(-5000, 0)).isFalse();
        model.lift();
        assertThat(model.rows(panel).get(0).ofBuilt()).isEqualTo("100");
    }

    @Test
    void aHoleDraggedAwayLeavesSomethingOutOfReachAndPutBackNothingMore() {
        HolesModel model = new HolesModel(bench, () -> {});
        model.follow();
        Hole hole = model.plan().orElseThrow().filling().stream()
                .filter(Hole::drilled)
                .findFirst()
                .orElseThrow();
        double before = model.before().orElseThrow().covered();
        assertThat(model.grasp(hole.spot().xMm(), hole.spot().yMm(), 20)).isTrue();
        model.move(hole.spot().xMm() + 5000, hole.spot().yMm());

        assertThat(model.now().orElseThrow().covered()).isLessThan(before);
        assertThat(model.now().orElseThrow().outMm3()).isPositive();
        assertThat(model.allowed()).isFalse();
        model.putBack();
        assertThat(model.now().orElseThrow().covered()).isEqualTo(before);
        assertThat(model.moved()).isFalse();
    }

    /** Without its search: the same cavity and reach give nearly the share that the plan tells. */
    @Test
    void theTrialAgreesWithThePlan() {
        HolesModel model = new HolesModel(bench, () -> {});
        model.follow();

        // the plan counts cells that the flow fills where a hole was left out; on this deck none is
        assertThat(model.before().orElseThrow().covered())
                .isCloseTo(model.plan().orElseThrow().coveredFraction(), within(0.01));
    }

    @Test
    void theClocksOfACupRunFromWhenItIsMixed() {
        double[] now = {1000};
        String region = bench.region().orElseThrow().id();
        WorkModel model = new WorkModel(bench, region, () -> now[0]);
        if (model.plan().isEmpty()) { // not advised here: the words still stand
            assertThat(model.clocks()).isEmpty();
        }

        assertThat(new Clock("", 280, 0).minutes()).isEqualTo("4:40");
        assertThat(new Clock("", -12, 1).minutes()).isEqualTo("−0:12");
        assertThat(CupsInRow.sum(model).toLowerCase(Locale.ROOT)).startsWith("in: 0 g of ");
        assertThat(Objects.requireNonNull(model.says())).isEmpty();
    }

    private static List<Finder.Found> find(String called) {
        return Finder.find(bench.found().orElseThrow(), "foredeck", called);
    }

    @Test
    void thingsAreFoundByWhatAPersonCallsThem() {
        String region = bench.region().orElseThrow().id();
        Hole hole = bench.found()
                .orElseThrow()
                .plans()
                .injection(region)
                .orElseThrow()
                .filling()
                .get(0);

        assertThat(find(region.toLowerCase(Locale.ROOT)).get(0).region()).isEqualTo(region);
        assertThat(find(hole.id()).get(0).spot()).isEqualTo(hole.spot());
        assertThat(find("hole 1")).extracting(Finder.Found::what).contains("hole 1 of " + region);
        assertThat(find("clea").get(0).spot()).isEqualTo(new Spot("foredeck", 450, 300));
        assertThat(find("foredeck-p1")).extracting(Finder.Found::what).contains("panel foredeck-P1");
        assertThat(find("M8").get(0).what()).isEqualTo("reading M8");
        assertThat(find("A s1").get(0).exact()).isTrue();
        assertThat(find("the mast")).isEmpty();
        assertThat(find(" ")).isEmpty();
    }

    /** What is played of the large cavity ends as the work card says of it, and it is larger than the small one. */
    @Test
    void theSmallAndTheLargeCavityArePlayed() {
        HolesModel model = new HolesModel(bench, () -> {});
        model.follow();
        model.fill().play(DrawnCavities.Size.LARGE);
        double large = model.fill().emptyShare();
        int cells = reached(model);
        model.fill().play(DrawnCavities.Size.SMALL);

        assertThat(reached(model)).isPositive().isLessThan(cells);
        // grams of the plan are rounded on the card, so the doses are not the planner's to the last digit
        assertThat(large).isCloseTo(model.plan().orElseThrow().outlook().emptyLarge(), within(0.02));
    }

    private static int reached(HolesModel model) {
        return (int)
                java.util.Arrays.stream(model.fill().arrivalS().orElseThrow().values())
                        .filter(s -> !Double.isNaN(s))
                        .count();
    }

    /** One space planned at once after a hole is moved comes to what planning the whole deck comes to. */
    @Test
    void aHoleMovedIsPlannedAtOnceAsTheWholeChainPlansIt() {
        Assessment found = bench.found().orElseThrow();
        String region = bench.region().orElseThrow().id();
        InjectionPlan before = found.plans().injection(region).orElseThrow();
        Spot from = before.filling().get(0).spot();
        MovedHole moved = new MovedHole(from, new Spot(from.face(), from.xMm() - 5, from.yMm()));
        Survey survey = Part.HOLES.with(found.survey(), List.of(moved));

        InjectionPlan quick = RepairPlanner.again(survey, found.damage(), before, new Memory())
                .orElseThrow();

        assertThat(quick.holes()).isNotEqualTo(before.holes());
        Memory memory = new Memory();
        RepairOptions options = RepairPlanner.plan(survey, found.damage(), memory);
        Set<String> inject = Methods.of(survey, found.damage(), options).of(Method.INJECT);
        assertThat(RepairPlanner.together(survey, found.damage(), options, inject, memory)
                        .injection(region))
                .contains(quick);
    }
}
