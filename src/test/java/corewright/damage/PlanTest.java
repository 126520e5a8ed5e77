package corewright.damage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

class PlanTest {
    @Test
    void cutsTheDeckAtADividerThatCrossesIt() {
        Plan plan = Plan.of(Deck.plain().divider("LINESTRING(800 -50,800 1050)").face(), 0);

        assertThat(plan.bays()).extracting(Bay::name).containsExactly("deck-B1", "deck-B2");
        assertThat(plan.bays().get(0).area().getArea()).isCloseTo(800_000, within(1e-3));
        assertThat(plan.bays().get(1).area().getArea()).isCloseTo(1_200_000, within(1e-3));
        assertThat(plan.findings()).isEmpty();
    }

    @Test
    void keepsOneBayWhereTheDividerEndsInside() {
        Plan plan = Plan.of(Deck.plain().divider("LINESTRING(800 0,800 700)").face(), 0);

        assertThat(plan.bays()).hasSize(1);
        assertThat(plan.findings()).singleElement().satisfies(f -> assertThat(f.message())
                .isEqualTo("the divider strip does not cross the core from edge to edge"));
    }

    @Test
    void aDividerFromTheEdgeToAnOpeningAndOnCuts() {
        Plan plan = Plan.of(
                Deck.plain()
                        .opening("POLYGON((700 400,900 400,900 600,700 600,700 400))")
                        .divider("LINESTRING(800 0,800 1000)")
                        .face(),
                0);

        assertThat(plan.bays()).hasSize(2);
        double area = plan.bays().stream().mapToDouble(b -> b.area().getArea()).sum();
        assertThat(area).isCloseTo(2_000_000 - 40_000, within(1e-3));
    }

    @Test
    void solidLaminateIsNoCore() {
        Plan plan = Plan.of(
                Deck.plain()
                        .solid("POLYGON((900 -10,1000 -10,1000 1010,900 1010,900 -10))")
                        .face(),
                0);

        assertThat(plan.bays()).hasSize(2);
        assertThat(plan.solids()).singleElement().satisfies(p -> assertThat(p.getArea())
                .isCloseTo(100_000, within(1e-3)));
        assertThat(plan.bayAt(Deck.spot(950, 500))).isNull();
        assertThat(plan.offCore(Deck.spot(950, 500)).words())
                .isEqualTo("lies over solid laminate, where there is no core");
        assertThat(plan.offCore(Deck.spot(-50, 500)).words()).isEqualTo("lies outside the outline");
    }

    /** A rectangle of 2000 x 1000 mm with a hatch of 200 x 200: areas by hand. */
    @Test
    void aSolidEdgeRunsAlongTheOutlineAndOpenings() {
        Plan plan = Plan.of(
                Deck.plain()
                        .opening("POLYGON((700 400,900 400,900 600,700 600,700 400))")
                        .face(),
                50);

        double core = 1900 * 900 - 300 * 300;
        assertThat(plan.bays())
                .singleElement()
                .satisfies(b -> assertThat(b.area().getArea()).isCloseTo(core, within(1e-3)));
        assertThat(plan.solids().stream().mapToDouble(Polygon::getArea).sum())
                .isCloseTo(2_000_000 - 40_000 - core, within(1e-3));
        assertThat(plan.offCore(Deck.spot(20, 500)).words())
                .isEqualTo("lies over solid laminate, where there is no core");
        assertThat(plan.bayAt(Deck.spot(60, 500))).isNotNull();
    }
}
