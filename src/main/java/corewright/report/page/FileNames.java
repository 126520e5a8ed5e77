package corewright.report.page;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Names of faces made fit for file names on any system, and kept apart. */
public final class FileNames {
    private static final int LONGEST = 60;

    private FileNames() {}

    /** Name → file name. Letters, digits, dot, hyphen and underscore stay; anything else becomes a hyphen. */
    public static Map<String, String> of(List<String> names) {
        Map<String, String> files = new LinkedHashMap<>();
        Set<String> taken = new HashSet<>();
        for (String name : names) {
            String plain = plain(name);
            String free = plain;
            // lower case, since some systems do not tell Deck from deck
            for (int i = 2; !taken.add(free.toLowerCase(Locale.ROOT)); i++) {
                free = plain + "-" + i;
            }
            files.put(name, free);
        }
        return files;
    }

    private static String plain(String name) {
        StringBuilder safe = new StringBuilder();
        name.codePoints()
                .forEach(c -> safe.appendCodePoint(
                        Character.isLetterOrDigit(c) || c == '.' || c == '-' || c == '_' ? c : '-'));
        String text = safe.toString().replaceAll("-{2,}", "-").replaceAll("^[.-]+|[.-]+$", "");
        String cut = text.length() > LONGEST
                ? text.substring(
                        0, text.offsetByCodePoints(0, Math.min(LONGEST, text.codePointCount(0, text.length()))))
                : text;
        return cut.isEmpty() ? "face" : cut;
    }
}
