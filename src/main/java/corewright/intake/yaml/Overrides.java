package corewright.intake.yaml;

import corewright.intake.text.Numerals;
import corewright.intake.text.Numerals.Decimal;
import corewright.intake.text.Words;
import corewright.intake.yaml.YamlValue.Shape;
import corewright.survey.Origin;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Replaces components of a settings record by keys of a block. A key is the component's name in snake case and its
 * value is in the component's own unit: {@code hole_diameter_mm} for {@code holeDiameterMm}.
 */
public final class Overrides {
    private final YamlBlock block;
    private final Map<String, String> alsoCalled;

    private Overrides(YamlBlock block, Map<String, String> alsoCalled) {
        this.block = block;
        this.alsoCalled = alsoCalled;
    }

    public static <R extends Record> R apply(R defaults, YamlBlock block) {
        return apply(defaults, block, Map.of());
    }

    /**
     * The record with the block's values; the defaults themselves after a complaint.
     *
     * @param alsoCalled other spellings of keys, folded, to the component's name
     */
    public static <R extends Record> R apply(R defaults, YamlBlock block, Map<String, String> alsoCalled) {
        return block.value().isMissing() ? defaults : new Overrides(block, alsoCalled).apply(defaults);
    }

    /** The components that a block sets. */
    public static Set<String> given(Class<? extends Record> type, YamlBlock block, Map<String, String> alsoCalled) {
        Overrides overrides = new Overrides(block, alsoCalled);
        return overrides.keysByComponent(type).keySet();
    }

    public static List<String> keys(Class<? extends Record> type) {
        return Stream.of(type.getRecordComponents())
                .map(c -> snake(c.getName()))
                .toList();
    }

    public static String snake(String component) {
        return component.replaceAll("(?<=[a-z0-9])(?=[A-Z])", "_").toLowerCase(Locale.ROOT);
    }

    private <R extends Record> R apply(R defaults) {
        @SuppressWarnings("unchecked")
        Class<R> type = (Class<R>) defaults.getClass();
        Map<String, YamlValue> values = keysByComponent(type);
        complainOfOthers(type, values);
        RecordComponent[] components = type.getRecordComponents();
        Object[] arguments = new Object[components.length];
        boolean good = true;
        for (int i = 0; i < components.length; i++) {
            YamlValue value = values.get(components[i].getName());
            Object argument = value == null ? component(defaults, components[i]) : converted(value, components[i]);
            good &= argument != null;
            arguments[i] = argument == null ? component(defaults, components[i]) : argument;
        }
        return good ? construct(type, arguments, values, defaults) : defaults;
    }

    private Map<String, YamlValue> keysByComponent(Class<? extends Record> type) {
        Map<String, YamlValue> values = new HashMap<>();
        Map<String, String> names = new HashMap<>(alsoCalled);
        for (RecordComponent c : type.getRecordComponents()) {
            names.put(folded(c.getName()), c.getName());
        }
        block.value().fields().forEach((key, value) -> {
            String component = names.get(folded(key));
            if (component != null && !value.isMissing()) {
                values.put(component, value);
            }
        });
        return values;
    }

    private void complainOfOthers(Class<? extends Record> type, Map<String, YamlValue> known) {
        block.value().fields().forEach((key, value) -> {
            if (!known.containsValue(value) && !value.isMissing()) {
                String expected = "this key is not known, expected " + Words.or(keys(type));
                block.notes().complain(value.origin(), value.path(), expected);
            }
        });
    }

    private @Nullable Object converted(YamlValue value, RecordComponent component) {
        Class<?> type = component.getType();
        if (type == String.class && value.shape() == Shape.TEXT) {
            return value.text();
        }
        if (type == boolean.class) {
            Boolean answer = value.shape() == Shape.TEXT ? Words.yesNo(value.text()) : null;
            return answer != null ? answer : refuse(value, "yes or no");
        }
        Double number = value.shape() == Shape.TEXT ? Numerals.parse(value.text(), Decimal.DOT) : null;
        if (type == double.class) {
            return number != null ? number : refuse(value, "a number");
        }
        if (type == int.class || type == long.class) {
            if (number == null || number != Math.rint(number)) {
                return refuse(value, "a whole number");
            }
            return type == int.class ? (Object) number.intValue() : (Object) number.longValue();
        }
        return refuse(value, "a text");
    }

    private @Nullable Object refuse(YamlValue value, String expected) {
        block.notes().expected(value.origin(), value.path(), value.found(), expected);
        return null;
    }

    private <R extends Record> R construct(
            Class<R> type, Object[] arguments, Map<String, YamlValue> values, R defaults) {
        try {
            Class<?>[] types = Stream.of(type.getRecordComponents())
                    .map(RecordComponent::getType)
                    .toArray(Class<?>[]::new);
            Constructor<R> canonical = type.getDeclaredConstructor(types);
            return canonical.newInstance(arguments);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof IllegalArgumentException bad) {
                complain(String.valueOf(bad.getMessage()), values);
                return defaults;
            }
            throw new IllegalStateException(e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("settings records are public with public constructors", e);
        }
    }

    /** A record's own check names the component first: the complaint stands at its key, or else at the block. */
    private void complain(String problem, Map<String, YamlValue> values) {
        String component = problem.replaceAll(" .*", "");
        YamlValue at = values.get(component);
        Origin origin = at == null ? block.origin() : at.origin();
        String path = at == null ? block.value().path() : at.path();
        block.notes().complain(origin, path, problem.replaceFirst("^\\S+", snake(component)));
    }

    /** The value of a numeric component. */
    public static double number(Record of, RecordComponent component) {
        return ((Number) component(of, component)).doubleValue();
    }

    private static Object component(Record of, RecordComponent component) {
        try {
            return component.getAccessor().invoke(of);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("settings records are public", e);
        }
    }

    private static String folded(String key) {
        return key.replace("_", "").toLowerCase(Locale.ROOT);
    }
}
