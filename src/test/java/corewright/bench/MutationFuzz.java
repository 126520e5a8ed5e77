package corewright.bench;

import corewright.mutation.Mutants;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The long form of {@code MutationTest}: mutated survey folders and survey files in a heap of 512 MB. A defect is
 * anything thrown but a refusal, more than 2 s of processor time, and a mutant that is read with fewer readings, taps of a
 * sound or drawn things of a kind than the intact input and no finding more. Failing inputs are saved, folders shrunk,
 * under {@code target/mutants/seed-N}. Run: {@code mvn -o -q test-compile exec:exec -Dexec.executable=java
 * -Dexec.classpathScope=test -Dexec.args="-Xmx512m -cp %classpath corewright.bench.MutationFuzz folder 50000 0"};
 * arguments: {@code folder}, {@code survey-file} or {@code all}, how many, first seed.
 */
public final class MutationFuzz {
    private MutationFuzz() {}

    public static void main(String[] args) throws IOException {
        String only = args.length > 0 ? args[0] : "all";
        int count = args.length > 1 ? Integer.parseInt(args[1]) : 20_000;
        long first = args.length > 2 ? Long.parseLong(args[2]) : 0;
        Mutants mutants = new Mutants(
                Files.createTempDirectory("mutants"), Path.of("target", "mutants"), only.equals("all") ? "" : only);
        for (int i = 0; i < count; i++) {
            mutants.read(first + i);
            if ((i + 1) % 1000 == 0) {
                System.out.println((i + 1) + ": " + mutants);
            }
        }
        System.out.println(count + " mutants, heap of " + (Runtime.getRuntime().maxMemory() >> 20) + " MB: " + mutants);
        System.exit(mutants.firstDefect().isEmpty() ? 0 : 1);
    }
}
