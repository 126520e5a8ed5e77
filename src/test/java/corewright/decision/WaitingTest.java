package corewright.decision;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.damage.Quantiles;
import corewright.decision.drying.DryingTime;
import corewright.decision.drying.Way;
import corewright.survey.settings.Settings;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class WaitingTest {
    private static Waiting drying(@Nullable Quantiles days) {
        DryingTime time = new DryingTime("deck", "R1", Way.THROUGH_HOLES, 50, 15, days, "");
        return Waiting.of("R1", Method.DRY_OUT, List.of(time), Settings.defaults());
    }

    @Test
    void dryingWaitsAsLongAsTheCoreTakes() {
        assertThat(drying(new Quantiles(60, 120, 230)).low()).isEqualTo(60);
        assertThat(drying(new Quantiles(60, 120, 230)).high()).isEqualTo(230);
    }

    /** Of foam nobody can tell: no figure that a person would plan by. */
    @Test
    void whatCannotBeToldMayTakeAnyTime() {
        assertThat(drying(null).high()).isInfinite();
    }
}
