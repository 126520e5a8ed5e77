package corewright.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A copy of a survey folder that can be spoiled. */
record SurveyCopy(Path folder) {
    private static final Pattern WKT_NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    /** One coordinate after a change, from both. */
    interface Move {
        double of(double x, double y);
    }

    /** A line after a change; empty where it is taken out. */
    interface Line {
        String of(int number, String line);
    }

    /** A row of readings. */
    record Row(int number, double x, double y) {}

    static String figure(double value) {
        return String.format(Locale.ROOT, "%.6f", value);
    }

    SurveyCopy(Path good, Path folder) throws IOException {
        this(Files.createDirectories(folder));
        try (Stream<Path> files = Files.list(good)) {
            for (Path file : files.filter(f -> !f.getFileName().toString().startsWith("truth"))
                    .toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
    }

    private List<String> readingFiles() {
        return Stream.of("moisture.csv", "taps.csv", "probes.csv", "plugs.csv", "feelers.csv")
                .filter(f -> Files.exists(folder.resolve(f)))
                .toList();
    }

    SurveyCopy lines(String file, Line change) {
        try {
            List<String> lines = Files.readAllLines(folder.resolve(file));
            List<String> changed = new ArrayList<>();
            for (int i = 0; i < lines.size(); i++) {
                changed.add(change.of(i, lines.get(i)));
            }
            Files.write(
                    folder.resolve(file),
                    changed.stream().filter(l -> !l.isEmpty()).toList());
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    SurveyCopy yaml(String from, String to) {
        try {
            Path file = folder.resolve("survey.yaml");
            String text = Files.readString(file);
            assertThat(text).contains(from);
            Files.writeString(file, text.replace(from, to));
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    SurveyCopy readings(DoubleUnaryOperator change) {
        return places((x, y) -> change.applyAsDouble(x), (x, y) -> change.applyAsDouble(y));
    }

    SurveyCopy places(Move x, Move y) {
        readingFiles().forEach(f -> places(f, x, y));
        return this;
    }

    /** The column of x, or of the first x of feelers; y stands beside it. */
    private int xColumn(String file) {
        try {
            List<String> names =
                    List.of(Files.readAllLines(folder.resolve(file)).get(0).split(",", -1));
            return Math.max(names.indexOf("x"), names.indexOf("x1"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    SurveyCopy places(String file, Move toX, Move toY) {
        int first = xColumn(file);
        int last = file.startsWith("feelers") ? first + 2 : first;
        return lines(file, (n, line) -> {
            String[] cells = line.split(",", -1);
            for (int at = first; n > 0 && at <= last; at += 2) {
                double x = Double.parseDouble(cells[at]);
                double y = Double.parseDouble(cells[at + 1]);
                cells[at] = figure(toX.of(x, y));
                cells[at + 1] = figure(toY.of(x, y));
            }
            return String.join(",", cells);
        });
    }

    SurveyCopy keep(String file, Predicate<Row> which) {
        int x = xColumn(file);
        return lines(file, (n, line) -> {
            String[] cells = line.split(",", -1);
            return n == 0 || which.test(new Row(n, Double.parseDouble(cells[x]), Double.parseDouble(cells[x + 1])))
                    ? line
                    : "";
        });
    }

    SurveyCopy drop(String face) {
        readingFiles().forEach(f -> lines(f, (n, line) -> line.contains(face) ? "" : line));
        return this;
    }

    SurveyCopy plan(DoubleUnaryOperator change) {
        return lines("plan.csv", (n, line) -> {
            int from = line.indexOf('(');
            int to = line.lastIndexOf(')');
            return from < 0
                    ? line
                    : line.substring(0, from) + changed(line.substring(from, to), change) + line.substring(to);
        });
    }

    private static String changed(String wkt, DoubleUnaryOperator change) {
        Matcher number = WKT_NUMBER.matcher(wkt);
        return number.replaceAll(m -> figure(change.applyAsDouble(Double.parseDouble(m.group()))));
    }

    SurveyCopy copy(String from, String to) {
        try {
            Files.copy(folder.resolve(from), folder.resolve(to));
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    SurveyCopy twice(String file, int rows) {
        List<String> again = new ArrayList<>();
        lines(file, (n, line) -> {
            if (n > 0 && n <= rows) {
                again.add(line);
            }
            return line;
        });
        try {
            Path path = folder.resolve(file);
            Files.writeString(
                    path, Files.readString(path) + again.stream().collect(Collectors.joining("\n", "", "\n")));
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
