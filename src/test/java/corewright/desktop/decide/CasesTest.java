package corewright.desktop.decide;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CasesTest {
    @Test
    void aChanceIsToldAsCasesThatCanBeCounted() {
        assertThat(Cases.of(0.11).words()).isEqualTo("1 case in 9");
        assertThat(Cases.of(0.3)).isEqualTo(new Cases(3, 10));
        assertThat(Cases.of(0.05).words()).isEqualTo("1 case in 20");
        assertThat(Cases.of(0.04).words()).isEqualTo("less than 1 case in 20");
        assertThat(Cases.of(0)).isEqualTo(new Cases(0, 20));
        assertThat(Cases.of(1).words()).isEqualTo("10 cases in 10");
    }

    /** Never farther from the chance than half a case of those told. */
    @Test
    void whatIsToldIsNearTheChance() {
        for (double p = 0.05; p <= 1; p += 0.001) {
            Cases cases = Cases.of(p);
            double told = (double) cases.hit() / cases.of();
            assertThat(Math.abs(told - p)).as("%.3f", p).isLessThanOrEqualTo(0.5 / cases.of() + 1e-9);
        }
    }
}
