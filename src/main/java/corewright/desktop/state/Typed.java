package corewright.desktop.state;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What a person typed does not do; the message is the sentence to show. */
public final class Typed extends Exception {
    private static final long serialVersionUID = 1;

    private static final Pattern PLAIN = Pattern.compile("[0-9]{1,9}([.,][0-9]{0,9})?|[.,][0-9]{1,9}");

    /** As long as a face's name may be. */
    private static final int LONGEST = 60;

    public Typed(String sentence) {
        super(sentence);
    }

    /** The number typed, with point or comma, from {@code least} to {@code most}. */
    public static double number(String what, String text, double least, double most, String expected) throws Typed {
        if (PLAIN.matcher(text.strip()).matches()) {
            double number = Double.parseDouble(text.strip().replace(',', '.'));
            if (number >= least && number <= most) {
                return number;
            }
        }
        throw new Typed(what + " reads \"" + text.strip() + "\"; expected is " + expected + ".");
    }

    /** The same, or null for nothing. */
    public static @Nullable Double numberOrNothing(String what, String text, double least, double most, String expected)
            throws Typed {
        return text.isBlank() ? null : (Double) number(what, text, least, most, expected);
    }

    /** A name nothing else of its kind has. */
    public static String name(String kind, String text, Iterable<String> taken) throws Typed {
        String name = text.strip();
        if (name.isEmpty() || name.length() > LONGEST) {
            throw new Typed("A " + kind + " needs a name of 1 to " + LONGEST + " letters.");
        }
        for (String other : taken) {
            if (other.equals(name)) {
                throw new Typed("Another " + kind + " is called " + name + "; choose a name of its own.");
            }
        }
        return name;
    }
}
