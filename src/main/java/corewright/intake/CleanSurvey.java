package corewright.intake;

import corewright.intake.text.Clean;
import corewright.intake.text.Notes;
import corewright.intake.yaml.Overrides;
import corewright.survey.Origin;
import corewright.survey.Subject;
import corewright.survey.Survey;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Every text of a survey that was not read from plain files, cleaned as those are: see {@link Clean}. */
final class CleanSurvey {
    /** Texts that may have several lines and how long each may be; every other text is a name, of one line. */
    private static final Map<String, Integer> TEXTS = Map.ofEntries(
            Map.entry("note", 100_000),
            Map.entry("caption", 100_000),
            Map.entry("vessel", 5000),
            Map.entry("client", 5000),
            Map.entry("surveyor", 5000),
            Map.entry("weather", 5000),
            Map.entry("notes", 5000),
            Map.entry("reason", 5000),
            Map.entry("holes", 5000),
            Map.entry("source", 5000),
            Map.entry("currency", 5000),
            Map.entry("loadCase", 5000),
            Map.entry("file", 1000));

    private static final int LONGEST_NAME = 200;

    private record Shape(Constructor<?> constructor, List<RecordComponent> components, List<Method> accessors) {}

    private final Notes notes;
    private final Map<Class<?>, Shape> shapes = new HashMap<>();
    private int cleaned;
    private String first = "";

    private CleanSurvey(Notes notes) {
        this.notes = notes;
    }

    /** The same survey where nothing is wrong with its texts. */
    static Survey of(Survey survey, Notes notes) {
        CleanSurvey clean = new CleanSurvey(notes);
        Survey result = (Survey) Objects.requireNonNull(clean.value(survey, "survey", new Origin("survey", 0)));
        if (clean.cleaned > 0) {
            notes.doubt(
                    new Origin("survey", 0),
                    Subject.CONTROL_CHARACTERS,
                    "Texts hold control characters or marks that turn the writing direction, the first in "
                            + clean.first + " (" + clean.cleaned + " in all).",
                    "Each such character is shown as \uFFFD.");
        }
        return result;
    }

    private @Nullable Object value(@Nullable Object value, String name, Origin origin) {
        if (value instanceof String text) {
            return text(text, name, origin);
        }
        if (value instanceof Record record) {
            return record(record, origin);
        }
        if (value instanceof List<?> list) {
            List<Object> clean = new ArrayList<>(list.size());
            list.forEach(item -> clean.add(Objects.requireNonNull(value(item, name, origin))));
            return clean;
        }
        if (value instanceof Map<?, ?> map) {
            Map<Object, Object> clean = new LinkedHashMap<>();
            map.forEach((key, item) -> clean.put(
                    Objects.requireNonNull(value(key, name, origin)),
                    Objects.requireNonNull(value(item, name, origin))));
            return clean;
        }
        return value;
    }

    private String text(String text, String name, Origin origin) {
        Integer longest = TEXTS.get(name);
        String clean = Clean.of(text);
        if (longest == null) {
            clean = clean.replace('\n', '\uFFFD').replace('\t', ' ');
        }
        if (!clean.equals(text)) {
            cleaned++;
            first = first.isEmpty() ? Overrides.snake(name) + " of " + Clean.line(origin.toString(), 100) : first;
        }
        int most = longest == null ? LONGEST_NAME : longest;
        if (clean.length() > most) {
            String problem = "has " + clean.length() + " characters, expected at most " + most;
            notes.complain(clean(origin), Overrides.snake(name), problem);
        }
        return clean;
    }

    private static Origin clean(Origin origin) {
        return new Origin(Clean.line(origin.file(), LONGEST_NAME), origin.line());
    }

    private Record record(Record record, Origin outer) {
        Shape shape = shapes.computeIfAbsent(record.getClass(), CleanSurvey::shape);
        @Nullable Object[] values = new @Nullable Object[shape.accessors().size()];
        boolean same = true;
        Origin origin = outer;
        try {
            for (int i = 0; i < values.length; i++) {
                Object value = shape.accessors().get(i).invoke(record);
                origin = value instanceof Origin own ? own : origin;
                values[i] = value(value, shape.components().get(i).getName(), origin);
                same &= Objects.equals(value, values[i]);
            }
            return same ? record : (Record) shape.constructor().newInstance(values);
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("a record refuses its own values without control characters", e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("records of a survey are public", e);
        }
    }

    private static Shape shape(Class<?> type) {
        List<RecordComponent> components = List.of(type.getRecordComponents());
        try {
            Class<?>[] types = components.stream().map(RecordComponent::getType).toArray(Class<?>[]::new);
            List<Method> accessors = Stream.of(type.getRecordComponents())
                    .map(RecordComponent::getAccessor)
                    .toList();
            return new Shape(type.getDeclaredConstructor(types), components, accessors);
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("a record has its canonical constructor", e);
        }
    }
}
