package corewright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.mutation.Mutants;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever happens to files, they are read or refused with complaints, soon, and no row is lost unsaid. */
class MutationTest {
    private static final int MUTANTS = 480;

    @Test
    void onlyComplaintsComeOutAndNoRowIsLost(@TempDir Path dir) {
        Mutants mutants = new Mutants(dir, Path.of("target", "mutants"));

        for (long seed = 0; seed < MUTANTS; seed++) {
            mutants.read(seed);
        }

        assertThat(mutants.firstDefect()).isEmpty();
        // Both outcomes must be common, else the mutations test little.
        assertThat(mutants.refused()).isBetween(MUTANTS / 4, MUTANTS * 19 / 20);
        assertThat(mutants.accepted()).isGreaterThan(MUTANTS / 20);
    }
}
