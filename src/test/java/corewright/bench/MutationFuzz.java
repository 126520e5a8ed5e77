package corewright.bench;

import corewright.mutation.Mutants;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The long form of {@code MutationTest}: 20 000 mutated survey folders and single files in a heap of 512 MB. Failing
 * inputs are saved, shrunk, under {@code target/mutants/seed-N}. Run: {@code mvn -o -q test-compile exec:exec
 * -Dexec.executable=java -Dexec.classpathScope=test -Dexec.args="-Xmx512m -cp %classpath
 * corewright.bench.MutationFuzz"}; further arguments: how many, first seed.
 */
public final class MutationFuzz {
    private MutationFuzz() {}

    public static void main(String[] args) throws IOException {
        int count = args.length > 0 ? Integer.parseInt(args[0]) : 20_000;
        long first = args.length > 1 ? Long.parseLong(args[1]) : 0;
        Mutants mutants = new Mutants(Files.createTempDirectory("mutants"), Path.of("target", "mutants"));
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
