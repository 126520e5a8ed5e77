package corewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class StageClockTest {
    private final StringWriter told = new StringWriter();

    private StageClock clock(StageClock.Manner manner) {
        return new StageClock(new PrintWriter(told), manner);
    }

    @Test
    void aTerminalSeesEachStageInOneLineThatIsClearedAtTheEnd() {
        try (StageClock clock = clock(StageClock.Manner.TERMINAL)) {
            clock.begin("damage", 0.1);
            clock.part("after", share -> 0.4 + 0.4 * share).begin("damage", 0.5);
        }
        assertThat(told.toString())
                .startsWith("\r 10 of 100  damage")
                .contains("\r 60 of 100  after: damage")
                .endsWith(" \r")
                .doesNotContain("\n");
    }

    @Test
    void aLogGetsALineEveryFewSecondsAndNoneAfterTheEnd() {
        try (StageClock clock = clock(StageClock.Manner.LINES)) {
            clock.begin("stiffness", 0.25);
            clock.sayLine();
            clock.close();
            clock.sayLine();
        }
        assertThat(told.toString()).matches(" 25 of 100 {2}stiffness, \\d+ s since the start\\R");
    }

    @Test
    void whereQuietWasAskedForNothingIsSaidAndTheTimesAreKept() {
        StageClock clock = clock(StageClock.Manner.QUIET);
        clock.begin("damage", 0.1);
        clock.begin("work", 0.9);
        clock.close();
        clock.sayLine();
        assertThat(told.toString()).isEmpty();
        assertThat(clock.timingsMs()).containsOnlyKeys("damage", "work");
    }
}
