package corewright.report.data;

import corewright.survey.Origin;
import corewright.survey.Survey;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;

/**
 * SHA-256 over everything a survey says, so that a reader can prove on which data a document rests. The same survey has the same
 * sum as a folder and as a survey file: where a thing stood in its file is left out. Pictures count by their names.
 */
public final class InputHash {
    private InputHash() {}

    /** 64 hexadecimal digits. */
    public static String of(Survey survey) {
        StringBuilder text = new StringBuilder();
        append(text, survey);
        try {
            MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(sha256.digest(text.toString().getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Records as their names and components, lists in their order, maps by their keys, numbers with all their digits. */
    private static void append(StringBuilder text, @Nullable Object value) {
        if (value instanceof Record record) {
            text.append(record.getClass().getSimpleName()).append('{');
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                if (component.getType() != Origin.class) {
                    text.append(component.getName()).append('=');
                    append(text, read(component, record));
                    text.append(';');
                }
            }
            text.append('}');
        } else if (value instanceof List<?> list) {
            text.append('[');
            list.forEach(each -> {
                append(text, each);
                text.append(',');
            });
            text.append(']');
        } else if (value instanceof Map<?, ?> map) {
            Map<String, Object> sorted = new TreeMap<>();
            map.forEach((key, each) -> sorted.put(String.valueOf(key), each));
            sorted.forEach((key, each) -> {
                text.append(key).append(':');
                append(text, each);
                text.append(',');
            });
        } else if (value instanceof Optional<?> optional) {
            append(text, optional.orElse(null));
        } else if (value instanceof Geometry geometry) {
            text.append(geometry.toText());
        } else if (value instanceof String words) {
            text.append('"')
                    .append(words.replace("\\", "\\\\").replace("\"", "\\\""))
                    .append('"');
        } else {
            text.append(value); // numbers, dates, words of a list: each has one way to be written
        }
    }

    private static @Nullable Object read(RecordComponent component, Record record) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("records of a survey are public", e);
        }
    }
}
