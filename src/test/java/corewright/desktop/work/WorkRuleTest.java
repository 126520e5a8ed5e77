package corewright.desktop.work;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.desktop.state.Units;
import org.junit.jupiter.api.Test;

class WorkRuleTest {
    @Test
    void theRuleIsTheLongestRoundLengthThatFits() {
        assertThat(WorkRule.fitting(1, 120, Units.METRIC)).isEqualTo(new WorkRule(100, "100 mm"));
        assertThat(WorkRule.fitting(5, 120, Units.METRIC)).isEqualTo(new WorkRule(500, "500 mm"));
        assertThat(WorkRule.fitting(1, 120, Units.US)).isEqualTo(new WorkRule(4 * 25.4, "4 in"));
    }
}
