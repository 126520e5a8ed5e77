package corewright.repair.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.damage.Quantiles;
import corewright.repair.plan.Amounts;
import corewright.repair.plan.Batch;
import corewright.repair.plan.Hole;
import corewright.survey.Spot;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import corewright.survey.settings.Settings.Climate;
import corewright.survey.settings.Settings.Crew;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MixTest {
    /** One litre overfilled by 1.15: mass = pack V 1160 / X, computed by hand to a gram. */
    @ParameterizedTest
    @CsvSource({"3, 445", "4, 334", "6, 222"})
    void oneLitreTakesPackTimesDensityOverExpansion(double expansion, double grams) {
        assertThat(Mix.of(1e6, foam(expansion, 0.35), 0).netG()).isCloseTo(grams, within(0.5));
    }

    /** A litre of liquid of 1160 kg/m3 is 1160 g, whatever its sheet says of overfilling. */
    @Test
    void aMixThatDoesNotRiseIsNotOverfilled() {
        assertThat(Mix.of(1e6, foam(1, 0.35), 0).netG()).isCloseTo(1160, within(1e-6));
    }

    /** 30 mm in lifts of 12 mm: a third of a deep hole's grams each time, on what is hard; a shallow one all at once, with the last. */
    @Test
    void aHighHoleIsFilledInEqualLiftsEachOnAHardOne() {
        List<Hole> holes = List.of(hole(1, 1, 30), hole(2, 1, 5), hole(3, 2, 25));
        Mix mix = Mix.ofNet(120, foam(4.83, 0.35), 0);
        List<Batch> cups = Batches.of("R1", holes, mix, foam(4.83, 0.35), crew(1), new Lifts(12));
        assertThat(cups.stream().map(Batch::holes).toList())
                .containsExactly(
                        List.of("R1-1", "R1-3"), List.of("R1-1", "R1-3"), List.of("R1-1", "R1-3"), List.of("R1-2"));
        assertThat(cups.stream().map(b -> b.partAG() + b.partBG()).toList())
                .allSatisfy(g -> assertThat(g).isCloseTo(30, within(1e-9)));
        assertThat(cups.get(1).mixAtS()).isEqualTo(cups.get(0).hardAtS());
        assertThat(cups.get(2).mixAtS()).isEqualTo(cups.get(1).hardAtS());
        assertThat(cups.stream().map(c -> Lifts.number(c, cups)).toList()).containsExactly(1, 2, 3, 1);
        assertThat(cups.stream().filter(c -> Lifts.last(c, cups)).toList()).isEqualTo(cups.subList(2, 4));
    }

    /** Thirty square feet at a quarter inch, computed by hand: 17.7 litres (4.68 US gallons). */
    @Test
    void thirtySquareFeetAtAQuarterInchAreEighteenLitres() {
        double cavityMm3 = 30 * 304.8 * 304.8 * 25.4 / 4;
        assertThat(cavityMm3 / 1e6).isCloseTo(17.7, within(0.05));
        assertThat(Amounts.litres(cavityMm3)).isEqualTo("17.7 litres");
        // a mix that does not rise: 17.7 l at 1160 g
        assertThat(Mix.of(cavityMm3, plain(), 0).netG()).isCloseTo(17.698 * 1160, within(1.0));
    }

    /** Computed example, worked beforehand apart from the program: X 4.83, pack 1.15, waste 15 %, 100 : 35, 25 °C, 3 mL/s, 2.4 l (P50), 3.1 l (P90). */
    @Test
    void computedExampleComesOutToTheGramAndSecond() {
        Resin resin = foam(4.83, 0.35);
        Mix mix = Mix.of(2.4e6, resin, 0.15);
        assertThat(mix.netG()).isCloseTo(662.9, within(0.06));
        assertThat(mix.grossG()).isCloseTo(779.8, within(0.06));
        assertThat(mix.partAG()).isCloseTo(577.6, within(0.06));
        assertThat(mix.partBG()).isCloseTo(202.2, within(0.06));
        // the note's 1007.3 g is 1007.30 to two digits of the gross
        assertThat(Mix.of(3.1e6, resin, 0.15).grossG()).isCloseTo(1007.3, within(0.06));

        Settings settings = crew(1);
        Drilling noCap = new Drilling(6.4, 12.5, 1.5, 40, 3, 0.5, 150, 0.15, 60, 1e6, 12, 300, 6, 5);
        assertThat(Batches.largestCupG(resin, noCap, 25)).isCloseTo(933, within(1.0));
        List<Batch> batches = Batches.of("R1", List.of(hole(1, 1), hole(2, 1)), mix, resin, settings);
        assertThat(batches).hasSize(4);
        for (Batch b : batches) {
            assertThat(b.partAG() + b.partBG()).isCloseTo(195.0, within(0.06));
            assertThat(b.workUntilS() - b.mixAtS()).isCloseTo(360, within(0.1));
            assertThat((b.firstRiseS() - b.mixAtS()) / 60).isCloseTo(6, within(0.05));
            assertThat((b.hardAtS() - b.mixAtS()) / 60).isCloseTo(49, within(0.05));
        }
        assertThat(batches.stream().map(Batch::holes).toList())
                .containsExactly(List.of("R1-1"), List.of("R1-1"), List.of("R1-2"), List.of("R1-2"));
        // mix 60 s, pour 195.0 g x 0.85 / 1.16 g/mL / 3 mL/s = 47.6 s, one hole 15 s, clear away 120 s
        assertThat(batches.get(1).mixAtS()).isCloseTo(60 + 47.6 + 15 + 120, within(0.1));
    }

    @Test
    void twoPeopleMixWhileTheyPour() {
        Mix mix = Mix.of(2.4e6, foam(4.83, 0.35), 0.15);
        List<Hole> holes = List.of(hole(1, 1));
        double alone =
                Batches.of("R1", holes, mix, foam(4.83, 0.35), crew(1)).get(1).mixAtS();
        double two =
                Batches.of("R1", holes, mix, foam(4.83, 0.35), crew(2)).get(1).mixAtS();
        assertThat(alone - two).isCloseTo(60, within(1e-9));
    }

    @Test
    void timesDoubleForTenDegreesLess() {
        Resin foam = foam(4.83, 0.35);
        Mix mix = Mix.of(0.2e6, foam, 0.15);
        Batch at25 = Batches.of("R1", List.of(hole(1, 1)), mix, foam, at(25)).get(0);
        Batch at15 = Batches.of("R1", List.of(hole(1, 1)), mix, foam, at(15)).get(0);
        assertThat(at15.workUntilS()).isCloseTo(2 * at25.workUntilS(), within(1e-9));
        assertThat(at15.hardAtS()).isCloseTo(2 * at25.hardAtS(), within(1e-9));
    }

    @Test
    void arithmeticIsWrittenOut() {
        Resin foam = Settings.defaults().resin("epoxy-foam-240");
        assertThat(Mix.arithmetic(new Quantiles(0.65e6, 0.88e6, 1.15e6), foam, 0.15))
                .containsExactly(
                        "Empty space: most likely 0.88 litres; in 8 cases of 10 between 0.65 litres and 1.15 litres.",
                        "0.88 litres × 1.15 / 4.83 × 1160 g per litre = 243 g; with 15 % waste 286 g: "
                                + "212 g resin and 74 g hardener.",
                        "To have at hand: 1.15 litres × 1.15 / 4.83 × 1160 g per litre = 318 g; with 15 % waste 374 g.");
    }

    private static Settings at(double temperatureC) {
        Settings d = Settings.defaults();
        return new Settings(
                d.thresholds(),
                d.drilling(),
                d.resins(),
                d.costs(),
                new Crew(1),
                new Climate(temperatureC, 60),
                d.numerics());
    }

    private static Settings crew(int people) {
        Settings d = at(25);
        return new Settings(
                d.thresholds(), d.drilling(), d.resins(), d.costs(), new Crew(people), d.climate(), d.numerics());
    }

    private static Resin foam(double expansion, double hardenerPerResin) {
        return new Resin(
                "f",
                hardenerPerResin,
                1160,
                expansion,
                1.15,
                3,
                360,
                360,
                1320,
                1500,
                2940,
                25,
                true,
                0,
                0,
                0,
                0,
                "test");
    }

    private static Resin plain() {
        return new Resin("p", 0.3, 1160, 1, 1, 0.4, 1200, 1200, 1200, 2700, 36000, 25, true, 0, 0, 0, 0, "test");
    }

    private static Hole hole(int number, double servedMm3) {
        return hole(number, servedMm3, 0);
    }

    private static Hole hole(int number, double servedMm3, double gapMm) {
        return new Hole(
                "R1-" + number,
                "R1",
                Hole.Kind.INJECTION,
                number,
                new Spot("f", 0, 0),
                6.4,
                6,
                150,
                servedMm3,
                null,
                Hole.Range.NONE,
                gapMm);
    }
}
