package corewright.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NormalTest {
    /**
     * M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, National Bureau of Standards, Applied Mathematics Series
     * 55 (1964), table 26.1, P(x) to 15 decimals; tolerance: half its last digit and as much for our own rounding.
     */
    @ParameterizedTest
    @CsvSource({
        "0.0, 0.500000000000000",
        "0.5, 0.691462461274013",
        "1.0, 0.841344746068543",
        "2.0, 0.977249868051821",
        "3.0, 0.998650101968370",
        "4.0, 0.999968328758167"
    })
    void agreesWithTheHandbookTable(double x, double probability) {
        assertThat(Normal.below(x)).isCloseTo(probability, within(5e-16 + 5e-16));
        assertThat(Normal.below(-x)).isCloseTo(1 - probability, within(1e-15));
    }

    /** Tail values computed with SciPy 1.17, scipy.stats.norm.cdf; relative tolerance: roundings of the continued fraction. */
    @ParameterizedTest
    @CsvSource({"-5, 2.866515718791933e-07", "-8, 6.220960574271786e-16", "-20, 2.753624118606234e-89"})
    void keepsItsDigitsInTheTail(double x, double probability) {
        assertThat(Normal.below(x) / probability).isCloseTo(1, within(1e-9));
        assertThat(Normal.between(-x, -x + 1) / (probability - Normal.below(x - 1)))
                .isCloseTo(1, within(1e-9));
    }
}
