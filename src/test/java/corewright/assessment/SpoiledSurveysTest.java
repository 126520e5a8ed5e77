package corewright.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.damage.Coverage;
import corewright.intake.Intake;
import corewright.intake.SurveyFolder;
import corewright.survey.Finding;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Good surveys spoiled by one slip each, as people make them: every slip is named by the right sentence, once, and no
 * verdict is given on what was not read. The good ones, three trial decks and the demo, raise no alarm.
 */
class SpoiledSurveysTest {
    private static final String DECKS = "src/test/resources/trial-decks/";
    private static final Pattern WKT_NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    /** How much may still be said of the deck. */
    private enum Verdicts {
        /** Nothing at all. */
        NONE,
        /** Not of the whole. */
        PART,
        /** The slip does not touch where it was read. */
        FREE
    }

    private record Slip(String name, String good, Consumer<Copy> spoil, Verdicts verdicts, String sentence) {}

    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path dir;

    @Test
    void goodSurveysRaiseNoAlarm() throws IOException {
        for (String good : List.of("deck00", "deck05", "deck12", "deck14", "quillwort")) {
            Intake intake = SurveyFolder.read(source(good));

            assertThat(plausibility(intake)).as(good).isEmpty();
            assertThat(Verdict.of(intake.survey(), intake.findings()).sentence())
                    .as(good)
                    .isEmpty();
        }
    }

    @TestFactory
    Stream<DynamicTest> eachSlipIsNamed() {
        List<Slip> slips = new ArrayList<>();
        units(slips);
        axes(slips);
        unread(slips);
        figures(slips);
        meters(slips);
        assertThat(slips).hasSizeGreaterThanOrEqualTo(40);
        return slips.stream().map(s -> DynamicTest.dynamicTest(s.name + ", " + s.good, () -> named(s)));
    }

    private void named(Slip slip) throws IOException {
        Copy copy = new Copy(source(slip.good), dir.resolve(slip.name.replace(' ', '-') + '-' + slip.good));
        slip.spoil.accept(copy);

        Intake intake = SurveyFolder.read(copy.folder);
        Verdict verdict = Verdict.of(intake.survey(), intake.findings());

        List<Finding> said = new ArrayList<>(intake.findings());
        verdict.coverage().stream().map(Coverage::findings).forEach(said::addAll);
        assertThat(said.stream().map(Finding::message).filter(m -> m.contains(slip.sentence)))
                .as(
                        "%s; said was %s",
                        slip.sentence,
                        said.stream().map(Finding::message).distinct().limit(8).toList())
                .hasSizeBetween(1, 3);
        assertThat(said.stream().filter(f -> f.subject().equals("outside")))
                .as("readings told one by one")
                .hasSizeLessThan(11);
        switch (slip.verdicts) {
            case NONE -> assertThat(verdict.withheld()).isTrue();
            case PART -> {
                assertThat(verdict.free()).isFalse();
                assertThat(verdict.sentence()).isNotEmpty();
            }
            case FREE -> assertThat(verdict.free()).isTrue();
        }
        if (slip.verdicts != Verdicts.FREE) {
            assertThat(verdict.sentence()).doesNotContain("No damage").isNotEmpty();
        }
    }

    private static List<String> plausibility(Intake intake) {
        return intake.findings().stream()
                .filter(f -> f.subject().equals("plausibility"))
                .map(Finding::message)
                .toList();
    }

    private static void units(List<Slip> to) {
        to.add(all("metres", "deck00", v -> v / 1000, "are they in metres?"));
        to.add(all("feet", "deck05", v -> v / 304.8, "are they in feet?"));
        to.add(all("inches", "deck12", v -> v / 25.4, "are they in inches?"));
        to.add(all("centimetres", "deck00", v -> v / 10, "are they in centimetres?"));
        to.add(all("ten times", "deck00", v -> v * 10, "are they in millimetres, not in centimetres?"));
        to.add(all("taken for inches", "deck05", v -> v * 25.4, "are they in millimetres, not in inches?"));
        to.add(all("taken for feet", "deck12", v -> v * 304.8, "are they in millimetres, not in feet?"));
        to.add(one("moisture in metres", "deck05", "moisture.csv", v -> v / 1000, "are they in metres?"));
        to.add(one("taps in inches", "deck12", "taps.csv", v -> v / 25.4, "are they in inches?"));
        to.add(one(
                "probes too large", "deck12", "probes.csv", v -> v * 25.4, "are they in millimetres, not in inches?"));
        to.add(new Slip(
                "plan in metres",
                "deck12",
                c -> c.plan(v -> v / 1000),
                Verdicts.NONE,
                "is the plan in metres or feet?"));
        to.add(new Slip(
                "all in metres",
                "deck00",
                c -> c.plan(v -> v / 1000).readings(v -> v / 1000),
                Verdicts.NONE,
                "is the plan in metres or feet?"));
        to.add(new Slip(
                "all in feet",
                "deck05",
                c -> c.plan(v -> v / 304.8).readings(v -> v / 304.8),
                Verdicts.NONE,
                "is the plan in metres or feet?"));
        to.add(new Slip(
                "all in inches",
                "deck00",
                c -> c.plan(v -> v / 25.4).readings(v -> v / 25.4),
                Verdicts.NONE,
                "is the plan in centimetres or inches?"));
        to.add(new Slip(
                "all in centimetres",
                "deck00",
                c -> c.plan(v -> v / 10).readings(v -> v / 10),
                Verdicts.NONE,
                "is the plan in centimetres or inches?"));
        to.add(new Slip(
                "said to be centimetres",
                "deck05",
                c -> c.yaml("length: mm", "length: cm"),
                Verdicts.NONE,
                "is the plan in millimetres, and the survey said to be in another unit?"));
    }

    private static void axes(List<Slip> to) {
        to.add(moved("exchanged", "deck00", (x, y) -> y, (x, y) -> x, "are x and y exchanged?"));
        to.add(moved("exchanged on the demo", "quillwort", (x, y) -> y, (x, y) -> x, "are x and y exchanged?"));
        to.add(moved("forward", "deck12", (x, y) -> -x, (x, y) -> y, "is x counted forward instead of aft?"));
        to.add(moved("both signs", "deck05", (x, y) -> -x, (x, y) -> -y, "is x counted forward instead of aft?"));
        to.add(moved("from aft", "deck00", (x, y) -> 3116.5 - x, (x, y) -> y, "is x counted from the other end?"));
        to.add(moved("from aft", "deck05", (x, y) -> 4067 - x, (x, y) -> y, "is x counted from the other end?"));
        to.add(moved("from the port edge", "deck05", (x, y) -> x, (x, y) -> y + 1589, "is their datum another"));
        to.add(moved("from abaft the stem", "deck12", (x, y) -> x - 900, (x, y) -> y, "is their datum another"));
        to.add(moved(
                "from a corner far off", "deck00", (x, y) -> x + 5000, (x, y) -> y + 700, "is their datum another"));
        to.add(new Slip(
                "minus signs lost",
                "deck05",
                c -> c.places((x, y) -> x, (x, y) -> Math.abs(y)),
                Verdicts.PART,
                "was the other half left out, or the sign lost?"));
        to.add(new Slip(
                "taps exchanged",
                "deck05",
                c -> c.places("taps.csv", (x, y) -> y, (x, y) -> x),
                Verdicts.NONE,
                "are x and y exchanged?"));
    }

    private static void unread(List<Slip> to) {
        to.add(kept("one reading", "deck00", r -> r.number == 1, Verdicts.NONE, "Only 1 moisture reading was taken"));
        to.add(kept("three readings", "deck12", r -> r.number <= 3, Verdicts.PART, "15 % lies within 300 mm"));
        to.add(kept("port half", "deck12", r -> r.y > 0, Verdicts.PART, "was the other half left out"));
        to.add(kept("bow only", "deck00", r -> r.x < 900, Verdicts.PART, "was the other half left out"));
        to.add(new Slip(
                "taps to starboard",
                "deck00",
                c -> c.keep("taps.csv", r -> r.y > 0),
                Verdicts.PART,
                "was the other half left out"));
        to.add(new Slip(
                "along a line",
                "deck05",
                c -> c.places((x, y) -> x, (x, y) -> 0),
                Verdicts.PART,
                "lie along one line of equal y"));
        to.add(new Slip(
                "at one place",
                "deck00",
                c -> c.places((x, y) -> 1000, (x, y) -> 100),
                Verdicts.NONE,
                "lie at one place"));
        to.add(new Slip(
                "no taps",
                "deck05",
                c -> c.keep("taps.csv", r -> r.number < 3),
                Verdicts.PART,
                "and 18 % within as much of a tap"));
        to.add(new Slip(
                "one face unread",
                "quillwort",
                c -> c.drop("cabin front"),
                Verdicts.PART,
                "No moisture reading, tap or probe was taken on cabin front"));
        to.add(moved(
                "far off", "deck05", (x, y) -> 1.5 * x + 2500, (x, y) -> 2 * y - x / 2, "lie outside the outline"));
    }

    private static void figures(List<Slip> to) {
        to.add(yaml(
                "thick skin",
                "deck00",
                "outer_skin_mm: 3.0",
                "outer_skin_mm: 50",
                "an outer skin of 50 mm: is it 5 mm?"));
        to.add(yaml(
                "skin in inches", "deck05", "outer_skin_mm: 3.0", "outer_skin_mm: 0.118", "an outer skin of 0.118 mm"));
        to.add(yaml("inner skin", "deck12", "inner_skin_mm: 2.5", "inner_skin_mm: 30", "an inner skin of 30 mm"));
        to.add(yaml(
                "core in inches",
                "deck12",
                "core_mm: 19.0",
                "core_mm: 0.75",
                "has a core of 0.75 mm: is it in inches"));
        to.add(yaml("thick core", "deck12", "core_mm: 19.0", "core_mm: 190", "a core of 190 mm: is it 19 mm?"));
        to.add(new Slip(
                "a century back",
                "deck00",
                c -> c.yaml("surveyed: 2026", "surveyed: 1926"),
                Verdicts.FREE,
                "The survey is dated 1926-04-02."));
        to.add(new Slip(
                "a reading of another year",
                "deck05",
                c -> c.lines("moisture.csv", (n, line) -> line + (n == 0 ? ",taken" : n < 30 ? ",2062-04-02" : ",")),
                Verdicts.FREE,
                "29 readings of moisture.csv are dated years away"));
        to.add(new Slip(
                "ashore for ever",
                "deck12",
                c -> c.yaml("surveyed: 2026-04-02", "surveyed: 2026-04-02\ndays_ashore: 20260"),
                Verdicts.FREE,
                "stand ashore for 20260 days"));
        to.add(new Slip(
                "a file twice",
                "deck00",
                c -> c.yaml("taps: taps.csv", "taps: [taps.csv, again.csv]").copy("taps.csv", "again.csv"),
                Verdicts.FREE,
                "stand there twice"));
        to.add(new Slip(
                "a block twice",
                "deck05",
                c -> c.twice("moisture.csv", 60),
                Verdicts.FREE,
                "60 ids of moisture.csv were used"));
        to.add(new Slip(
                "numbers begun anew",
                "deck12",
                c -> c.lines("taps.csv", (n, line) -> n == 0 ? line : line.replaceFirst("^T[0-9]+", "T" + n % 60)),
                Verdicts.FREE,
                "ids of taps.csv were used before"));
    }

    private static void meters(List<Slip> to) {
        to.add(values("on a scale of a thousand", "deck00", v -> 10 * v, "lie beyond the end of their scale"));
        to.add(values("shares of one", "deck05", v -> v / 100, "are they shares of one, or from another meter?"));
        to.add(yaml(
                "dry read over wet",
                "deck12",
                "dry: 8, wet: 50",
                "dry: 60, wet: 90",
                "well below its dry reading of 60"));
        to.add(yaml(
                "another full scale",
                "deck05",
                "full_scale: 100",
                "full_scale: 20",
                "lie beyond the end of their scale"));
    }

    private static Slip all(String name, String good, DoubleUnaryOperator change, String sentence) {
        return new Slip(name, good, c -> c.readings(change), Verdicts.NONE, sentence);
    }

    private static Slip one(String name, String good, String file, DoubleUnaryOperator change, String sentence) {
        return new Slip(
                name,
                good,
                c -> c.places(file, (x, y) -> change.applyAsDouble(x), (x, y) -> change.applyAsDouble(y)),
                Verdicts.NONE,
                sentence);
    }

    private static Slip moved(String name, String good, Move x, Move y, String sentence) {
        return new Slip(name, good, c -> c.places(x, y), Verdicts.NONE, sentence);
    }

    private static Slip kept(String name, String good, Predicate<Row> which, Verdicts verdicts, String sentence) {
        return new Slip(
                name,
                good,
                c -> c.keep("moisture.csv", which).keep("taps.csv", which).keep("probes.csv", which),
                verdicts,
                sentence);
    }

    private static Slip yaml(String name, String good, String from, String to, String sentence) {
        return new Slip(name, good, c -> c.yaml(from, to), Verdicts.NONE, sentence);
    }

    private static Slip values(String name, String good, DoubleUnaryOperator change, String sentence) {
        return new Slip(
                name,
                good,
                c -> c.lines("moisture.csv", (n, line) -> {
                    String[] cells = line.split(",", -1);
                    if (n > 0) {
                        cells[3] = figure(change.applyAsDouble(Double.parseDouble(cells[3])));
                    }
                    return String.join(",", cells);
                }),
                Verdicts.NONE,
                sentence);
    }

    private static Path source(String good) {
        return Path.of(good.equals("quillwort") ? "demo-data/quillwort" : DECKS + good);
    }

    private static String figure(double value) {
        return String.format(Locale.ROOT, "%.6f", value);
    }

    private interface Move {
        double of(double x, double y);
    }

    private interface Line {
        String of(int number, String line);
    }

    /** A row of readings. */
    private record Row(int number, double x, double y) {}

    /** A copy of a survey folder that can be spoiled. */
    private record Copy(Path folder) {
        Copy(Path good, Path folder) throws IOException {
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

        Copy lines(String file, Line change) {
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

        Copy yaml(String from, String to) {
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

        Copy readings(DoubleUnaryOperator change) {
            return places((x, y) -> change.applyAsDouble(x), (x, y) -> change.applyAsDouble(y));
        }

        Copy places(Move x, Move y) {
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

        Copy places(String file, Move toX, Move toY) {
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

        Copy keep(String file, Predicate<Row> which) {
            int x = xColumn(file);
            return lines(file, (n, line) -> {
                String[] cells = line.split(",", -1);
                return n == 0 || which.test(new Row(n, Double.parseDouble(cells[x]), Double.parseDouble(cells[x + 1])))
                        ? line
                        : "";
            });
        }

        Copy drop(String face) {
            readingFiles().forEach(f -> lines(f, (n, line) -> line.contains(face) ? "" : line));
            return this;
        }

        Copy plan(DoubleUnaryOperator change) {
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

        Copy copy(String from, String to) {
            try {
                Files.copy(folder.resolve(from), folder.resolve(to));
                return this;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        Copy twice(String file, int rows) {
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
}
