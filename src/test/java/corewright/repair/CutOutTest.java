package corewright.repair;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.reuse.Memory;
import corewright.survey.Laminate;
import org.junit.jupiter.api.Test;

/** The figures of a cut's card, by hand. */
class CutOutTest {
    private static CutOut cut(Deck deck) {
        var region = deck.damage().regions().get(0);
        var plan = RepairPlanner.plan(deck.survey(), deck.damage(), new Memory())
                .recore(region.id())
                .orElseThrow();
        return CutOut.of(deck.survey(), region, plan);
    }

    private static Deck inTheMiddle() {
        return deck(rectangle(0, -500, 2500, 900))
                .region(Condition.WET_DELAMINATED, rectangle(1000, 0, 1600, 400), 0, 0.9);
    }

    /** 12 to 1 of 3 mm; the cut is 25 mm wider all round, its corners of 25 mm radius. */
    @Test
    void theScarfIsTwelveToOneAndLiesOnSkin() {
        CutOut cut = cut(inTheMiddle());
        assertThat(cut.scarfMm()).isEqualTo(36);
        assertThat(cut.scarfShort()).isCloseTo(0, within(1e-9));
        double around = 2 * (650 + 450) - 8 * 25 + 2 * Math.PI * 25;
        // a ring of 36 mm: round its length and, at the corners, a full circle; arcs as eighths are 0.5 % short
        assertThat(cut.scarf().getArea()).isCloseTo(around * 36 + Math.PI * 36 * 36, within(0.01 * around * 36));
    }

    @Test
    void atTheEdgeOfTheDeckTheScarfIsShort() {
        CutOut cut = cut(deck(rectangle(0, -500, 2500, 900))
                .region(Condition.WET_DELAMINATED, rectangle(1000, 500, 1600, 900), 0, 0.9));
        assertThat(cut.scarfShort()).isBetween(0.2, 0.4); // one side in about 2200 mm of 650
        assertThat(cut.scarf().getEnvelopeInternal().getMaxY()).isLessThanOrEqualTo(900);
    }

    /** 600 g/m2 of glass at 2.56 g/cm3 and a third of it glass make 0.710 mm, 160 g/m2 0.189: four and one make 3.03. */
    @Test
    void thePliesMakeUpTheSkin() {
        CutOut cut = cut(inTheMiddle());
        assertThat(cut.plies()).hasSize(5);
        double thick = cut.plies().stream()
                .mapToDouble(p -> CutOut.thicknessMm(p.clothGM2()))
                .sum();
        assertThat(thick).isCloseTo(3.03, within(0.005));
        assertThat(cut.plies().get(3).alongMm()).isCloseTo(650 + 72, within(1.0));
        assertThat(cut.plies().get(0).alongMm()).isCloseTo(650 + 18, within(1.0));
    }

    @Test
    void cupsHoldTheEpoxyAndNoneIsTooLarge() {
        CutOut cut = cut(inTheMiddle());
        double plies = cut.plies().stream().mapToDouble(CutOut.Ply::epoxyG).sum();
        assertThat(cut.epoxyG()).isCloseTo(cut.plan().epoxyG() + plies, within(1e-6));
        assertThat(cut.cups())
                .allSatisfy(c -> assertThat(c.partAG() + c.partBG()).isLessThanOrEqualTo(200 + 1e-6));
        assertThat(cut.columns() * cut.rows()).isEqualTo(3 * 2); // 650 in three, 450 in two of at most 320 mm
    }

    @Test
    void aSkinOfUnknownClothHasNoSchedule() {
        Deck carbon = inTheMiddle().with(new Laminate("deck", 2, 12.5, 2, "carbon-epoxy", "balsa-150", true));
        assertThat(cut(carbon).plies()).isEmpty();
    }
}
