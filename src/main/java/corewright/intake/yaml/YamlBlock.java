package corewright.intake.yaml;

import corewright.intake.text.Notes;
import corewright.intake.text.Numerals;
import corewright.intake.text.Numerals.Decimal;
import corewright.intake.text.Words;
import corewright.intake.yaml.YamlValue.Shape;
import corewright.survey.Origin;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One mapping of a YAML file; every accessor complains at the value's own place and answers null or empty. */
public record YamlBlock(YamlValue value, Notes notes) {
    /** Faces, meters, laminates, files: more of one kind are nobody's survey. */
    private static final int MOST_ITEMS = 100;

    private static final int LONGEST_NAME = 200;
    private static final int LONGEST_TEXT = 5000;

    /** The value as a block of keys; anything else is complained of and read as an empty one. */
    public static YamlBlock of(YamlValue value, Notes notes) {
        if (value.shape() == Shape.TEXT || value.shape() == Shape.LIST) {
            notes.expected(value.origin(), value.path(), value.found(), "a block of keys");
        }
        return new YamlBlock(value, notes);
    }

    public Origin origin() {
        return value.origin();
    }

    public boolean has(String key) {
        return !value.at(key).isMissing();
    }

    public YamlBlock block(String key) {
        return of(value.at(key), notes);
    }

    /** The items of a list; a single value counts as a list of one. */
    public List<YamlValue> list(String key) {
        YamlValue list = value.at(key);
        if (list.items().size() > MOST_ITEMS) {
            notes.complain(
                    list.origin(),
                    list.path(),
                    "found " + list.items().size() + " items, expected at most " + MOST_ITEMS);
        }
        return switch (list.shape()) {
            case MISSING -> List.of();
            case LIST ->
                list.items().subList(0, Math.min(MOST_ITEMS, list.items().size()));
            case TEXT, MAP -> List.of(list);
        };
    }

    public String text(String key) {
        YamlValue text = value.at(key);
        if (text.shape() == Shape.LIST || text.shape() == Shape.MAP) {
            expected(key, "a text");
            return "";
        }
        return within(text, LONGEST_TEXT);
    }

    /** A name that must be there, on one line; empty after a complaint. */
    public String required(String key, String expected) {
        YamlValue text = value.at(key);
        if (text.shape() != Shape.TEXT || text.text().isEmpty()) {
            expected(key, expected);
            return "";
        }
        return line(text);
    }

    /** A name that may be missing: empty then, and after a complaint. */
    public String name(String key) {
        YamlValue text = value.at(key);
        return text.shape() == Shape.TEXT ? line(text) : text(key);
    }

    private String line(YamlValue text) {
        return within(text, LONGEST_NAME).replaceAll("\\s*[\\n\\r\\t]\\s*", " ");
    }

    private String within(YamlValue text, int longest) {
        int length = text.text().length();
        if (length > longest) {
            notes.complain(text.origin(), text.path(), "has " + length + " characters, expected at most " + longest);
            return "";
        }
        return text.text();
    }

    /** Null where missing or, after a complaint, where it is no number from {@code low} to {@code high}. */
    public @Nullable Double number(String key, double low, double high) {
        YamlValue text = value.at(key);
        if (text.isMissing()) {
            return null;
        }
        Double number = number(text);
        if (number == null) {
            expected(key, "a number");
            return null;
        }
        if (number < low || number > high) {
            expected(key, "a number from " + Numerals.plain(low) + " to " + Numerals.plain(high));
            return null;
        }
        return number;
    }

    /** Null where the value is no number. */
    public static @Nullable Double number(YamlValue value) {
        return value.shape() == Shape.TEXT ? Numerals.parse(value.text(), Decimal.DOT) : null;
    }

    public double number(String key, double low, double high, double otherwise) {
        Double number = number(key, low, high);
        return number == null ? otherwise : number;
    }

    public <E extends Enum<E>> @Nullable E word(String key, Class<E> choices) {
        if (!has(key)) {
            return null;
        }
        E choice = Words.pick(choices, text(key));
        if (choice == null) {
            expected(key, Words.choices(choices));
        }
        return choice;
    }

    public void expected(String key, String expected) {
        YamlValue found = value.at(key);
        notes.expected(found.origin(), found.path(), found.found(), expected);
    }

    public void complain(String key, String problem) {
        YamlValue at = value.at(key);
        notes.complain(at.origin(), at.path(), problem);
    }

    /** Complains of every key not among the known ones. */
    public void only(List<String> known) {
        value.fields().forEach((key, at) -> {
            if (!known.contains(key)) {
                notes.complain(at.origin(), at.path(), "this key is not known, expected " + Words.or(known));
            }
        });
    }
}
