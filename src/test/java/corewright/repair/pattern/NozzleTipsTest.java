package corewright.repair.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NozzleTipsTest {
    /**
     * By hand. No skin: sin a = d/D, so that h / tan a = h sqrt(D^2 - d^2) / d. A wire (d 0): tan a = t/D, so h D / t. Both at 45
     * degrees: D = d sqrt 2 + t, then h.
     */
    @ParameterizedTest
    @CsvSource({"10, 6, 0, 6, 8", "25, 0.0001, 5, 6, 30", "11.4853, 6, 3, 7, 7"})
    void theSlantFollowsItsGeometry(double across, double tube, double skin, double gap, double mm) {
        assertThat(NozzleTips.slantMm(across, tube, skin, gap)).isCloseTo(mm, within(0.01));
    }

    @Test
    void aTubeAsThickAsTheHoleGoesNowhere() {
        assertThat(NozzleTips.slantMm(6, 6, 3, 8)).isZero();
    }
}
