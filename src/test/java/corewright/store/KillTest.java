package corewright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The short form of {@link KillRun}. */
class KillTest {
    @Test
    void everyAcknowledgedEditIsInTheFileAfterAKill(@TempDir Path dir) throws Exception {
        assertThat(KillRun.run(5, dir, 7, List.of())).startsWith("5 kills: ").doesNotContain(": 0 acknowledged");
    }
}
