package corewright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import corewright.SurveyFolders;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever happens to a survey's files, it is read or refused with complaints, and soon. */
class MutationTest {
    private static final int MUTANTS = 400;

    private static final List<String> FILES =
            List.of("survey.yaml", "survey.yaml", "plan.csv", "moisture.csv", "taps.csv", "probes.csv");

    /** Pieces that have upset readers of these formats. */
    private static final List<String> NASTY = List.of(
            "\"",
            "'",
            ",",
            ";",
            "\t",
            "\n",
            "\r",
            "\0",
            "\uFEFF",
            "&a",
            "*a",
            "[",
            "]",
            "{",
            "}",
            "!!map ",
            "? ",
            "- ",
            ": ",
            "#",
            "|",
            ">",
            "%",
            "@",
            "`",
            "~",
            "null",
            "NaN",
            "-",
            "1e308",
            "-1e308",
            "1e-320",
            "0x1p3",
            "((((",
            "))))",
            " EMPTY",
            "POINT",
            "GEOMETRYCOLLECTION(",
            ">100",
            "+",
            "3' 4 1/2\"",
            "1/0\"",
            "\u00BD",
            "\u2028",
            "\uD83D\uDE00",
            "../",
            "/",
            "face",
            "x",
            "9".repeat(400),
            "a".repeat(5000),
            "<<: ",
            "...",
            "---",
            "---\n");

    @Test
    void onlyComplaintsComeOut(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir);
        List<byte[]> originals = FILES.stream()
                .map(f -> folder.text(f).getBytes(StandardCharsets.UTF_8))
                .toList();
        int refused = 0;
        Random random = new Random(20260402);
        for (int i = 0; i < MUTANTS; i++) {
            for (int f = 0; f < FILES.size(); f++) {
                folder.with(FILES.get(f), originals.get(f));
            }
            int changed = random.nextInt(FILES.size());
            folder.with(FILES.get(changed), mutated(originals.get(changed), random));
            refused += isRefused(folder, "mutant " + i) ? 1 : 0;
        }

        // Both outcomes must be common, else the mutations test little.
        assertThat(refused).isBetween(MUTANTS / 4, MUTANTS * 19 / 20);
    }

    private static boolean isRefused(SurveyFolders folder, String mutant) {
        return Assertions.assertTimeout(
                Duration.ofSeconds(1),
                () -> {
                    try {
                        assertThat(SurveyFolder.read(folder.path()).survey().faces())
                                .isNotEmpty();
                        return false;
                    } catch (RefusedException refusal) {
                        assertThat(refusal.complaints()).as(mutant).isNotEmpty();
                        return true;
                    } catch (RuntimeException | StackOverflowError defect) {
                        return fail(mutant, defect);
                    }
                },
                mutant);
    }

    private static byte[] mutated(byte[] original, Random random) {
        byte[] bytes = original;
        int times = 1 + random.nextInt(2);
        for (int i = 0; i < times; i++) {
            bytes = mutatedOnce(bytes, random);
        }
        return bytes;
    }

    private static byte[] mutatedOnce(byte[] bytes, Random random) {
        int at = random.nextInt(bytes.length + 1);
        int end = Math.min(bytes.length, at + random.nextInt(30));
        return switch (random.nextInt(6)) {
            case 0 -> Arrays.copyOf(bytes, at);
            case 1 -> joined(bytes, at, new byte[0], end);
            case 2 -> joined(bytes, at, Arrays.copyOfRange(bytes, at, end), at);
            case 3 -> joined(bytes, at, new byte[] {(byte) random.nextInt(256)}, Math.min(bytes.length, at + 1));
            case 4 -> joined(bytes, at, bytes, at);
            default -> {
                String nasty = NASTY.get(random.nextInt(NASTY.size()));
                yield joined(bytes, at, nasty.getBytes(StandardCharsets.UTF_8), random.nextBoolean() ? at : end);
            }
        };
    }

    /** The bytes before {@code at}, then {@code middle}, then those from {@code from} on. */
    private static byte[] joined(byte[] bytes, int at, byte[] middle, int from) {
        byte[] joined = Arrays.copyOf(bytes, at + middle.length + bytes.length - from);
        System.arraycopy(middle, 0, joined, at, middle.length);
        System.arraycopy(bytes, from, joined, at + middle.length, bytes.length - from);
        return joined;
    }
}
