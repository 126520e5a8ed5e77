package corewright.repair.fill;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.damage.FaceDamage;
import corewright.repair.mix.Lifts;
import corewright.repair.pattern.Cavity;
import corewright.repair.plan.Hole;
import corewright.survey.Spot;
import corewright.survey.settings.Settings;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Thin epoxy in a strip of 900 x 60 mm with holes at 20, 320 and 620 mm and a vent at its end: what goes in is width x gap x way. */
class HoleToHoleTest {
    private static final double WIDTH_MM = 60;
    private static final double GAP_MM = 0.5;
    private static final double LENGTH_MM = 900;
    private static final double CELL_MM = 10;
    private static final double[] HOLES_MM = {20, 320, 620};

    private static double mm3(double gapMm, double lengthMm) {
        return WIDTH_MM * gapMm * lengthMm;
    }

    /** The front stands in the next hole's cell, a step of the front more or less. */
    private static double rounding(double gapMm) {
        return mm3(gapMm, 2 * CELL_MM);
    }

    @Test
    void aHoleIsFilledUntilMixShowsAtTheNext() {
        FillSimulation.Setting strip = strip(GAP_MM);
        double third = mm3(GAP_MM, LENGTH_MM) / 3;
        FillSimulation.Result result = SimulatedFill.shared(strip, shots(strip, third, third, third));
        assertThat(result.placedMm3()[0]).isCloseTo(mm3(GAP_MM, 320), within(rounding(GAP_MM)));
        assertThat(result.placedMm3()[1]).isCloseTo(mm3(GAP_MM, 300), within(rounding(GAP_MM)));
        assertThat(Arrays.stream(result.placedMm3()).sum()).isCloseTo(3 * third, within(0.05 * third));
        assertThat(result.emptyShare()).isLessThan(0.02);
    }

    /** What was planned for a strip half or twice as high: the first hole stops where mix shows, or takes twice its own. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5 * GAP_MM, 2 * GAP_MM})
    void aStripThatIsLowerOrHigherIsFilledByWhatShows(double gapMm) {
        FillSimulation.Setting strip = strip(gapMm);
        double[] planned = {mm3(GAP_MM, 320), mm3(GAP_MM, 300), mm3(GAP_MM, 280)};
        List<FillSimulation.Shot> shots = shots(strip, planned);
        List<FillSimulation.Dose> doses = new ArrayList<>();
        shots.forEach(s -> doses.add(new FillSimulation.Dose(s.cell(), 1.3 * s.liquidMm3(), 0, List.of())));
        doses.add(new FillSimulation.Dose(strip.outlets()[0], 0, 0, List.of("R1-3")));
        FillSimulation.Result result =
                SimulatedFill.run(strip, shots, new FillSimulation.Reserve(doses, mm3(GAP_MM, LENGTH_MM), 1e6, 2));
        assertThat(result.placedMm3()[0]).isCloseTo(mm3(gapMm, 320), within(rounding(gapMm)));
        assertThat(result.emptyShare()).isLessThan(0.02);
        if (gapMm > GAP_MM) {
            assertThat(SimulatedFill.run(strip, shots).emptyShare())
                    .as("with nothing held back")
                    .isCloseTo(0.5, within(0.01));
        }
    }

    /** A dead end of 100 mm: the last of its air would leave at its tip, half a cell from the end. */
    @Test
    void enclosedAirIsVentedWhereItIsFarthestFromTheMix() {
        FillSimulation.Setting strip = strip(GAP_MM);
        Cavity cavity = strip.cavity();
        int size = cavity.size();
        double[] filled = new double[size];
        int[] pocket = new int[size];
        for (int c : cavity.cells) {
            filled[c] = cavity.x(c) < 1800 ? 1 : 0;
            pocket[c] = filled[c] < 1 ? 0 : -1;
        }
        FillSimulation.Result result = new FillSimulation.Result(
                new double[size],
                new int[size],
                filled,
                pocket,
                new double[0],
                0,
                0,
                new double[size],
                new boolean[0],
                0,
                new AirWays());
        List<EnclosedAir.Pocket> pockets = EnclosedAir.of(strip, result);
        assertThat(pockets).hasSize(1);
        assertThat(cavity.x(pockets.get(0).cell())).isCloseTo(1900 - CELL_MM / 2, within(1e-6));
        assertThat(pockets.get(0).mm3()).isCloseTo(mm3(GAP_MM, 100), within(1e-6));
    }

    /** Where nothing goes in before the mix is too old, no hole is left out for taking less than another. */
    @Test
    void holesStayWhereNothingGoesInAnywhere() {
        Spot spot = new Spot("deck", 1000, 0);
        Hole hole =
                new Hole("R1-1", "R1", Hole.Kind.INJECTION, 1, spot, 6, 4, 100, 5000, null, Hole.Range.NONE, GAP_MM);
        Settings settings = Settings.defaults();
        Pouring pouring = Pouring.of("R1", List.of(hole), 5, settings.resin("epoxy-thin"), settings, Lifts.NONE);
        Pouring after = pouring.after(Map.of("R1-1", 0.0), true).after(Map.of("R1-1", 0.0), true);
        assertThat(after.holes()).containsExactlyElementsOf(pouring.holes());
        assertThat(after.netG()).isEqualTo(pouring.netG());
    }

    private static FillSimulation.Setting strip(double gapMm) {
        Deck deck = deck(rectangle(900, -100, 2100, 200))
                .region(Condition.VOID, rectangle(1000, 0, 1000 + LENGTH_MM, WIDTH_MM), gapMm, 0.1);
        FaceDamage damage = deck.damage().faces().get(0);
        Cavity cavity = Cavity.of(
                damage.regions().get(0).likely(), deck.face(), damage.surfaces().voidDepthMm(), CELL_MM, 0.1);
        Settings settings = Settings.defaults();
        return new FillSimulation.Setting(
                cavity,
                new double[cavity.size()],
                new int[] {cell(cavity, LENGTH_MM - CELL_MM / 2)},
                settings.resin("epoxy-thin"),
                settings.drilling(),
                20);
    }

    /** From one cup. */
    private static List<FillSimulation.Shot> shots(FillSimulation.Setting strip, double... mm3) {
        return IntStream.range(0, mm3.length)
                .mapToObj(
                        i -> new FillSimulation.Shot("R1-" + (i + 1), cell(strip.cavity(), HOLES_MM[i]), mm3[i], 0, 0))
                .toList();
    }

    private static int cell(Cavity cavity, double alongMm) {
        int row = (int) Math.floor((WIDTH_MM / 2 - cavity.y0) / cavity.cell);
        return row * cavity.columns + (int) Math.floor((1000 + alongMm - cavity.x0) / cavity.cell);
    }
}
