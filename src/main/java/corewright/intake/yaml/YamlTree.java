package corewright.intake.yaml;

import corewright.intake.text.Clean;
import corewright.intake.text.Notes;
import corewright.intake.yaml.YamlValue.Shape;
import corewright.survey.Origin;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * YAML to values with places. Only nodes are composed, never objects: nothing in the file can name a class. Type tags
 * are refused; aliases, nesting and size are bounded.
 */
public final class YamlTree {
    public static final int LARGEST_BYTES = 1 << 20;
    private static final int MOST_ALIASES = 50;
    private static final int DEEPEST = 30;
    private static final int LONGEST_KEY = 200;
    private static final int MOST_VALUES = 50_000;

    private static final Pattern HALF_ESCAPE =
            Pattern.compile("\\\\(?:x(?![0-9a-fA-F]{2})|u(?![0-9a-fA-F]{4})|U(?!00(?:0[0-9a-fA-F]|10)[0-9a-fA-F]{4}))");

    private final String file;
    private final Notes notes;
    private final Set<Node> open = Collections.newSetFromMap(new IdentityHashMap<>());
    private int values;

    private YamlTree(String file, Notes notes) {
        this.file = file;
        this.notes = notes;
    }

    /** The document's top value; null after a complaint. */
    public static @Nullable YamlValue parse(String file, String text, Notes notes) {
        return new YamlTree(file, notes).parse(text);
    }

    private @Nullable YamlValue parse(String text) {
        LoaderOptions limits = new LoaderOptions();
        limits.setMaxAliasesForCollections(MOST_ALIASES);
        limits.setNestingDepthLimit(DEEPEST);
        limits.setCodePointLimit(LARGEST_BYTES);
        try {
            if (hasTags(text, limits)) {
                return null;
            }
            Node root = new Yaml(limits).compose(new StringReader(text));
            return root == null ? YamlValue.missing(new Origin(file, 0), "") : value(root, "");
        } catch (MarkedYAMLException e) {
            Mark mark = e.getProblemMark() != null ? e.getProblemMark() : e.getContextMark();
            Origin origin = new Origin(file, mark == null ? 0 : mark.getLine() + 1);
            notes.complain(origin, "", "this is not YAML: " + String.valueOf(e.getProblem()));
        } catch (YAMLException e) {
            notes.complain(new Origin(file, 0), "", "this YAML is not accepted: " + firstLine(e));
        } catch (IllegalArgumentException e) { // SnakeYAML reads the digits of an escape without looking at them
            Matcher half = HALF_ESCAPE.matcher(text);
            long line = half.find()
                    ? 1
                            + text.substring(0, half.start())
                                    .chars()
                                    .filter(c -> c == '\n')
                                    .count()
                    : 0;
            notes.complain(new Origin(file, line), "", "this is not YAML: an escape such as \\x41 is not whole");
        } catch (TooMuch e) {
            notes.complain(e.origin, "", e.problem);
        }
        return null;
    }

    private static String firstLine(YAMLException e) {
        return String.valueOf(e.getMessage()).lines().findFirst().orElse("");
    }

    private boolean hasTags(String text, LoaderOptions limits) {
        boolean any = false;
        for (Event event : new Yaml(limits).parse(new StringReader(text))) {
            String tag = null;
            if (event instanceof ScalarEvent scalar) {
                tag = scalar.getTag();
            } else if (event instanceof CollectionStartEvent collection) {
                tag = collection.getTag();
            }
            if (tag != null) {
                notes.expected(at(event.getStartMark()), "", tag, "a value without a type tag");
                any = true;
            }
        }
        return any;
    }

    private YamlValue value(Node node, String path) {
        Origin origin = at(node.getStartMark());
        if (++values > MOST_VALUES) {
            throw new TooMuch(origin, "expected at most " + MOST_VALUES + " values, with those repeated by aliases");
        }
        if (!open.add(node)) {
            throw new TooMuch(origin, "an alias stands inside what it repeats");
        }
        YamlValue value = convert(node, origin, path);
        open.remove(node);
        return value;
    }

    private YamlValue convert(Node node, Origin origin, String path) {
        if (node instanceof MappingNode mapping) {
            Map<String, YamlValue> fields = fields(mapping, path);
            return new YamlValue(Shape.MAP, origin, path, "", List.of(), fields);
        }
        if (node instanceof SequenceNode sequence) {
            List<YamlValue> items = new ArrayList<>();
            for (Node item : sequence.getValue()) {
                items.add(value(item, path + "[" + (items.size() + 1) + "]"));
            }
            return new YamlValue(Shape.LIST, origin, path, "", Collections.unmodifiableList(items), Map.of());
        }
        String text = Clean.of(((ScalarNode) node).getValue().strip());
        return node.getTag().equals(Tag.NULL)
                ? YamlValue.missing(origin, path)
                : new YamlValue(Shape.TEXT, origin, path, text, List.of(), Map.of());
    }

    private Map<String, YamlValue> fields(MappingNode mapping, String path) {
        Map<String, YamlValue> fields = new LinkedHashMap<>();
        for (NodeTuple pair : mapping.getValue()) {
            Origin origin = at(pair.getKeyNode().getStartMark());
            if (!(pair.getKeyNode() instanceof ScalarNode key)) {
                notes.complain(origin, path, "found a block as a key, expected a word");
                continue;
            }
            String name = Clean.of(key.getValue().strip());
            if (name.length() > LONGEST_KEY) {
                throw new TooMuch(
                        origin, "the key has " + name.length() + " characters, expected at most " + LONGEST_KEY);
            }
            String below = path.isEmpty() ? name : path + "." + name;
            // A value's place is its key's: that is the line a person looks for.
            YamlValue value = value(pair.getValueNode(), below);
            YamlValue placed = new YamlValue(value.shape(), origin, below, value.text(), value.items(), value.fields());
            if (fields.putIfAbsent(name, placed) != null) {
                notes.complain(origin, below, "the key stands here a second time");
            }
        }
        return Collections.unmodifiableMap(fields);
    }

    private Origin at(Mark mark) {
        return new Origin(file, mark.getLine() + 1);
    }

    /** Ends the conversion of a document that is too large. */
    private static final class TooMuch extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final transient Origin origin;
        private final String problem;

        TooMuch(Origin origin, String problem) {
            super(problem);
            this.origin = origin;
            this.problem = problem;
        }
    }
}
