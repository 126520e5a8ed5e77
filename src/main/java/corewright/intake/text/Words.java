package corewright.intake.text;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The closed lists of words a cell may hold, and how to name a list in a sentence. */
public final class Words {
    private Words() {}

    /** The constant written {@code text} in any case, with hyphen or underscore; null where there is none. */
    public static <E extends Enum<E>> @Nullable E pick(Class<E> choices, String text) {
        String wanted = text.strip().replace('_', '-').replace(' ', '-');
        for (E choice : choices.getEnumConstants()) {
            if (written(choice).equalsIgnoreCase(wanted)) {
                return choice;
            }
        }
        return null;
    }

    /** {@code sound, dull or hollow}. */
    public static <E extends Enum<E>> String choices(Class<E> choices) {
        return or(Stream.of(choices.getEnumConstants()).map(Words::written).toList());
    }

    public static String or(Collection<String> words) {
        return join(List.copyOf(words), " or ");
    }

    /** Words of a file: a few of them, none of them long. */
    public static String listed(Collection<String> words) {
        if (words.isEmpty()) {
            return "none";
        }
        String some = words.stream().limit(20).map(w -> Clean.line(w, 40)).collect(Collectors.joining(", "));
        return words.size() > 20 ? some + " and " + (words.size() - 20) + " more" : some;
    }

    public static String and(Collection<String> words) {
        return join(List.copyOf(words), " and ");
    }

    /** Yes, no, or null where the text is neither. */
    public static @Nullable Boolean yesNo(String text) {
        return switch (text.strip().toLowerCase(Locale.ROOT)) {
            case "yes", "y", "true", "1", "x" -> true;
            case "", "no", "n", "false", "0" -> false;
            default -> null;
        };
    }

    private static <E extends Enum<E>> String written(E choice) {
        return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static String join(List<String> words, String last) {
        int n = words.size();
        if (n < 2) {
            return String.join("", words);
        }
        return String.join(", ", words.subList(0, n - 1)) + last + words.get(n - 1);
    }
}
