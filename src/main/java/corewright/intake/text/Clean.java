package corewright.intake.text;

/** Text without the characters that upset a terminal, a page or an XML file; each becomes U+FFFD, so that it is seen. */
public final class Clean {
    private static final char SHOWN = '\uFFFD';

    private Clean() {}

    /** The same text where nothing is wrong with it; line feeds and tabs stay. */
    public static String of(String text) {
        int first = firstHarmful(text);
        if (first < 0) {
            return text;
        }
        StringBuilder clean = new StringBuilder(text);
        for (int i = first; i < clean.length(); i++) {
            if (isHarmful(clean, i)) {
                clean.setCharAt(i, SHOWN);
            }
        }
        return clean.toString();
    }

    /** A text for one line of a message, cut where it is longer than anybody reads. */
    public static String line(String text, int longest) {
        String cut = text.length() > longest ? text.substring(0, longest - 3) + "..." : text;
        return of(cut.replace('\n', SHOWN).replace('\t', ' '));
    }

    /** Where the first such character stands, or -1. */
    public static int firstHarmful(CharSequence text) {
        for (int i = 0; i < text.length(); i++) {
            if (isHarmful(text, i)) {
                return i;
            }
        }
        return -1;
    }

    /** Control characters, halves of pairs, code points that are no characters, and marks that reorder or end lines. */
    private static boolean isHarmful(CharSequence text, int i) {
        char c = text.charAt(i);
        if (c < 0x80) {
            return (c < ' ' && c != '\n' && c != '\t') || c == 0x7F;
        }
        if (Character.isHighSurrogate(c)) {
            return i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
        }
        if (Character.isLowSurrogate(c)) {
            return i == 0 || !Character.isHighSurrogate(text.charAt(i - 1));
        }
        return c < 0xA0 || (c >= '\u2028' && c <= '\u202E') || (c >= '\u2066' && c <= '\u2069') || c >= 0xFFFE;
    }
}
