package corewright.repair.fill;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;

import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.damage.FaceDamage;
import corewright.repair.pattern.Cavity;
import corewright.survey.settings.Settings;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A fill that is said to be the same with other vents is run with them: it is the same to the last digit. */
class AirWaysTest {
    private static final int FILLS = 14;

    private final Deck deck =
            deck(rectangle(0, -500, 2500, 900)).region(Condition.VOID, rectangle(1000, 0, 1500, 300), 1.5, 0.1);
    private final Settings settings = deck.survey().settings();
    private final FaceDamage face = deck.damage().face(Deck.FACE);
    private final Cavity cavity = Cavity.of(
            deck.damage().regions().get(0).likely(),
            face,
            12.5,
            settings.thresholds().looseGapMm());

    @Test
    void whatIsSaidToBeTheSameIs() {
        List<FillSimulation.Shot> shots = List.of(shot(1100, 80, 0), shot(1250, 220, 0), shot(1400, 80, 3600));
        SplittableRandom random = new SplittableRandom(4);
        List<FillSimulation.Setting> settingsTried = new ArrayList<>();
        List<FillSimulation.Result> results = new ArrayList<>();
        for (int i = 0; i < FILLS; i++) {
            int[] vents = random.ints(1 + random.nextInt(4), 0, cavity.cells.length)
                    .map(c -> cavity.cells[c])
                    .toArray();
            settingsTried.add(setting(vents));
            results.add(SimulatedFill.run(settingsTried.get(i), shots));
        }
        int same = 0;
        int unlike = 0;
        for (int i = 0; i < FILLS; i++) {
            BitSet open = SimulatedFill.openings(settingsTried.get(i), shots);
            for (int j = 0; j < FILLS; j++) {
                boolean equal = equal(results.get(i), results.get(j));
                boolean said =
                        results.get(i).ways().sameWith(open, SimulatedFill.openings(settingsTried.get(j), shots));
                assertThat(!said || equal).as(i + " " + j).isTrue();
                same += said && i != j ? 1 : 0;
                unlike += equal ? 0 : 1;
            }
        }
        assertThat(same).as("pairs said to be the same").isPositive();
        assertThat(unlike).as("pairs that are not").isPositive();
    }

    private static boolean equal(FillSimulation.Result a, FillSimulation.Result b) {
        return Arrays.equals(a.arrivalS(), b.arrivalS())
                && Arrays.equals(a.filled(), b.filled())
                && Arrays.equals(a.liquidIn(), b.liquidIn())
                && Arrays.equals(a.pocket(), b.pocket())
                && Arrays.equals(a.owner(), b.owner())
                && Arrays.equals(a.placedMm3(), b.placedMm3());
    }

    /** A third of what fills the cavity. */
    private FillSimulation.Shot shot(double x, double y, double mixAtS) {
        double liquid = cavity.mm3() / settings.resin("epoxy-foam-240").expansion();
        return new FillSimulation.Shot("R1-" + x, cellAt(x, y), liquid / 3, mixAtS, 0);
    }

    private int cellAt(double x, double y) {
        return Arrays.stream(cavity.cells)
                .filter(c -> Math.abs(cavity.x(c) - x) <= 6.25 && Math.abs(cavity.y(c) - y) <= 6.25)
                .findFirst()
                .orElseThrow();
    }

    private FillSimulation.Setting setting(int[] vents) {
        return new FillSimulation.Setting(
                cavity,
                new double[cavity.size()],
                vents,
                settings.resin("epoxy-foam-240"),
                settings.drilling(),
                settings.climate().temperatureC());
    }
}
