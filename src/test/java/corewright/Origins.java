package corewright;

import corewright.survey.Origin;
import corewright.survey.Survey;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Surveys that differ only in where things were read from, made equal. */
public final class Origins {
    private static final Origin NOWHERE = new Origin("", 0);

    private Origins() {}

    /** The same survey with every origin the same. */
    public static Survey forget(Survey survey) {
        return (Survey) forget((Object) survey);
    }

    private static Object forget(Object value) {
        if (value instanceof Origin) {
            return NOWHERE;
        }
        if (value instanceof List<?> list) {
            return list.stream().map(Origins::forget).toList();
        }
        if (value instanceof Map<?, ?> map) {
            Map<Object, Object> copy = new LinkedHashMap<>();
            map.forEach((key, each) -> copy.put(key, forget(each)));
            return copy;
        }
        return value instanceof Record record ? rebuilt(record) : value;
    }

    private static Record rebuilt(Record record) {
        RecordComponent[] components = record.getClass().getRecordComponents();
        @Nullable Object[] values = new @Nullable Object[components.length];
        try {
            for (int i = 0; i < values.length; i++) {
                Object value = components[i].getAccessor().invoke(record);
                values[i] = value == null ? null : forget(value);
            }
            return (Record) record.getClass()
                    .getDeclaredConstructor(
                            Stream.of(components).map(RecordComponent::getType).toArray(Class<?>[]::new))
                    .newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }
}
