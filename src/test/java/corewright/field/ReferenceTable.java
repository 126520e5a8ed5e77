package corewright.field;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;

/** One of the reference files under {@code reference/geostat}; see the README there. */
final class ReferenceTable {
    private final List<String> header;
    private final List<String[]> rows;

    private ReferenceTable(List<String> header, List<String[]> rows) {
        this.header = header;
        this.rows = rows;
    }

    static ReferenceTable of(String name) {
        var stream = Objects.requireNonNull(
                ReferenceTable.class.getResourceAsStream("/reference/geostat/" + name), "missing " + name);
        try (var reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            List<String> lines = reader.lines().filter(l -> !l.isBlank()).toList();
            return new ReferenceTable(
                    Arrays.asList(lines.get(0).split(",", -1)),
                    lines.stream().skip(1).map(l -> l.split(",", -1)).toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    int size() {
        return rows.size();
    }

    String text(String column, int row) {
        return rows.get(row)[header.indexOf(column)];
    }

    double at(String column, int row) {
        return Double.parseDouble(text(column, row));
    }

    double[] column(String column) {
        double[] values = new double[size()];
        Arrays.setAll(values, i -> at(column, i));
        return values;
    }

    Samples samples(String value) {
        return samples(value, v -> v);
    }

    Samples samples(String value, DoubleUnaryOperator changed) {
        double[] values = Arrays.stream(column(value)).map(changed).toArray();
        return Samples.of(column("x"), column("y"), values);
    }
}
