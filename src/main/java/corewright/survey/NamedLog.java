package corewright.survey;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The work log under the names of a plan: a hole may have been written by its name or by the number on its card, in any case
 * of the letters.
 *
 * @param entries that are understood, each once, in the order of the log
 * @param slips what is not, and why
 * @param taken lines of which the number alone tells several holes, taken for that of the card worked on before
 */
public record NamedLog(List<WorkEntry> entries, List<Slip> slips, List<Slip> taken) {
    public NamedLog {
        entries = List.copyOf(entries);
        slips = List.copyOf(slips);
        taken = List.copyOf(taken);
    }

    /**
     * A line that is not counted.
     *
     * @param problem a sentence
     * @param remedy another
     */
    public record Slip(WorkEntry entry, String problem, String remedy) {}

    /** @param names of every hole of the plan */
    public static NamedLog of(List<WorkEntry> log, Collection<String> names) {
        List<WorkEntry> entries = new ArrayList<>();
        List<Slip> slips = new ArrayList<>();
        List<Slip> taken = new ArrayList<>();
        Set<List<Object>> seen = new HashSet<>();
        String before = "";
        for (WorkEntry entry : log) {
            List<String> several = meant(entry.hole(), names);
            List<String> found = ofCard(before, several);
            if (several.size() > 1 && found.size() == 1) {
                taken.add(new Slip(
                        entry,
                        entry.hole() + " is taken for " + found.get(0) + ", as the line before is of that card.",
                        "Write the whole name where it is another: " + String.join(" or ", several) + "."));
            }
            before = found.size() == 1 ? found.get(0) : before;
            if (found.size() != 1) {
                slips.add(
                        found.isEmpty()
                                ? new Slip(
                                        entry,
                                        entry.hole() + " is no hole of the plan.",
                                        "What went into it is not counted: write the name or the number on the card.")
                                : new Slip(
                                        entry,
                                        entry.hole() + " may be " + String.join(" or ", found) + ".",
                                        "It is not counted: write the whole name."));
            } else if (!seen.add(List.of(found.get(0), entry.afterS(), entry.grams()))) {
                slips.add(new Slip(
                        entry,
                        found.get(0) + " stands here a second time, with the same minute and grams.",
                        "It is counted once."));
            } else {
                entries.add(entry.named(
                        found.get(0),
                        place(entry.oozeAt(), found.get(0), names),
                        place(entry.ventShown(), found.get(0), names)));
            }
        }
        return new NamedLog(entries, slips, taken);
    }

    /** Of several holes that one whose region is that of the hole written before; all where none or several are. */
    private static List<String> ofCard(String before, List<String> several) {
        if (several.size() < 2 || before.isEmpty()) {
            return several;
        }
        List<String> same =
                several.stream().filter(n -> region(n).equals(region(before))).toList();
        return same.size() == 1 ? same : several;
    }

    private static String region(String name) {
        return name.substring(0, Math.max(0, name.indexOf('-')));
    }

    /** The name where it is a hole's, else as written: mix may show anywhere. */
    private static @Nullable String place(@Nullable String written, String from, Collection<String> names) {
        if (written == null) {
            return null;
        }
        List<String> found = ofCard(from, meant(written, names));
        return found.size() == 1 ? found.get(0) : written;
    }

    /** The hole of a plan that a person means; empty where none or several may be meant. */
    public static Optional<String> name(String written, Collection<String> names) {
        List<String> found = meant(written, names);
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    private static List<String> meant(String written, Collection<String> names) {
        String folded = folded(written);
        List<String> whole =
                names.stream().filter(n -> folded(n).equals(folded)).distinct().toList();
        return whole.isEmpty()
                ? names.stream()
                        .filter(n -> n.indexOf('-') >= 0
                                && folded(n.substring(n.indexOf('-') + 1)).equals(folded))
                        .distinct()
                        .toList()
                : whole;
    }

    /** Every name and number in a log, folded: a new hole that had one of them would change what the log says. */
    public static Set<String> written(List<WorkEntry> log) {
        Set<String> written = new HashSet<>();
        for (WorkEntry entry : log) {
            written.add(folded(entry.hole()));
            Optional.ofNullable(entry.oozeAt()).ifPresent(w -> written.add(folded(w)));
            Optional.ofNullable(entry.ventShown()).ifPresent(w -> written.add(folded(w)));
        }
        return written;
    }

    /** {@code r1 - 3}, {@code R1/3} and {@code hole R1_3} are R1-3. */
    public static String folded(String name) {
        return name.toUpperCase(Locale.ROOT)
                .replaceFirst("^(HOLE|NO\\.?|#)\\s*", "")
                .strip()
                .replaceAll("\\s*[-\u2010-\u2015\u2212/_.]\\s*|\\s+", "-");
    }
}
