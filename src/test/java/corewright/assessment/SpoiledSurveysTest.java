package corewright.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.SurveyFolders;
import corewright.damage.Coverage;
import corewright.damage.FaceDamage;
import corewright.intake.Intake;
import corewright.intake.SurveyFolder;
import corewright.survey.Finding;
import corewright.survey.Subject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
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

    /** How much may still be said of the deck. */
    private enum Verdicts {
        /** Nothing at all. */
        NONE,
        /** Not of the whole. */
        PART,
        /** The slip does not touch where it was read. */
        FREE
    }

    private record Slip(String name, String good, Consumer<SurveyCopy> spoil, Verdicts verdicts, String sentence) {}

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

    /** Odd, but honest: each of these was thought of as a way to raise a false alarm. */
    @TestFactory
    Stream<DynamicTest> honestSurveysRaiseNoAlarm() {
        return Stream.of(
                honest("a test panel", 300, 300, 60, f -> f),
                honest("a narrow side deck", 6000, 250, 100, f -> f),
                honest("a deck of sixty metres", 59_000, 11_000, 500, f -> f),
                honest(
                        "readings on the outline",
                        900,
                        600,
                        150,
                        f -> f.adding("moisture.csv", "E1,0,0,9,A\nE2,900,300,9,A\n")),
                honest("in feet", 900, 600, 150, f -> f.replacing("survey.yaml", "length: mm", "length: ft")
                        .with(
                                "plan.csv",
                                SurveyFolders.PLAN
                                        .replaceAll("900", "30")
                                        .replaceAll("600", "20")
                                        .replace("450 300", "15 10")
                                        .replace("60,,", "0.2,,"))
                        .with("moisture.csv", grid(30, 20, 0.5, ",9,A", "value,meter"))
                        .with("taps.csv", grid(30, 20, 0.5, ",sound", "sound"))
                        .with("probes.csv", "id,x,y,void_depth,core_state\nP1,10,10,0,dry\n")),
                honest("overhead", 900, 600, 150, f -> f.replacing("survey.yaml", "tilt_deg: 3", "tilt_deg: 180")),
                honest(
                        "a dense patch at the datum",
                        4000,
                        3000,
                        300,
                        f -> f.adding(
                                "moisture.csv",
                                grid(300, 300, 50, ",12,A", "")
                                        .lines()
                                        .skip(1)
                                        .map(l -> "D" + l + "\n")
                                        .collect(Collectors.joining()))));
    }

    private DynamicTest honest(String name, int width, int height, double step, UnaryOperator<SurveyFolders> change) {
        return DynamicTest.dynamicTest(name, () -> {
            SurveyFolders folder = SurveyFolders.minimal(Files.createDirectory(dir.resolve(name.replace(' ', '-'))))
                    .with(
                            "plan.csv",
                            String.format(
                                    Locale.ROOT,
                                    "face,kind,name,wkt\nforedeck,outline,,\"POLYGON((0 0,%1$d 0,%1$d %2$d,0 %2$d,0 0))\"\n",
                                    width,
                                    height))
                    .with("moisture.csv", grid(width, height, step, ",9,A", "value,meter"))
                    .with("taps.csv", grid(width, height, step, ",sound", "sound"))
                    .with(
                            "probes.csv",
                            String.format(
                                    Locale.ROOT,
                                    "id,x,y,void_depth,core_state\nP1,%d,%d,0,dry\n",
                                    width / 2,
                                    height / 2));
            Intake intake = SurveyFolder.read(change.apply(folder).path());

            assertThat(plausibility(intake)).isEmpty();
            Verdict verdict = Verdict.of(intake.survey(), intake.findings());
            assertThat(verdict.withheld()).isFalse();
            assertThat(verdict.sentence()).doesNotContain("No verdict");
        });
    }

    /** Rows of readings, half a step from the edges. */
    private static String grid(double width, double height, double step, String end, String columns) {
        StringBuilder text = new StringBuilder("id,x,y," + columns + "\n");
        int n = 1;
        for (double x = step / 2; x < width; x += step) {
            for (double y = step / 2; y < height; y += step) {
                text.append("G" + n++ + "," + x + "," + y + end + "\n");
            }
        }
        return text.toString();
    }

    /** A damaged deck that is believed, then with its readings taken for metres: nothing is planned, nothing told one by one. */
    @Test
    void nothingIsConcludedFromASurveyThatCannotBeSo() throws IOException {
        SurveyFolders folder = SurveyFolders.minimal(Files.createDirectory(dir.resolve("believed")));
        Assessment believed = assess(folder);
        assertThat(believed.damage().regions()).isNotEmpty();
        assertThat(believed.stiffness().panels()).isNotEmpty();

        SurveyCopy copy = new SurveyCopy(folder.path(), dir.resolve("in-metres"));
        for (String file : List.of("moisture.csv", "taps.csv", "probes.csv")) {
            copy.places(file, (x, y) -> x / 1000, (x, y) -> y / 1000);
        }
        Intake intake = SurveyFolder.read(copy.folder());
        Assessment doubted = Assessor.assess(intake.survey(), intake.findings(), Earlier.NONE, Progress.NONE)
                .assessment();

        assertThat(doubted.verdict().withheld()).isTrue();
        assertThat(doubted.damage().regions()).isEmpty();
        assertThat(doubted.stiffness().panels()).isEmpty();
        assertThat(doubted.decision().injections()).isEmpty();
        assertThat(doubted.decision().buying()).isEmpty();
        assertThat(doubted.findings()).allMatch(f -> f.subject() == Subject.PLAUSIBILITY);
        FaceDamage face = doubted.damage().faces().get(0);
        assertThat(face.told()).isFalse();
        assertThat(face.undecidedMm2()).isCloseTo(face.deckMm2(), within(1e-6));
        assertThat(face.deckMm2())
                .as("the deck is as large as ever")
                .isCloseTo(believed.damage().faces().get(0).deckMm2(), within(1e-3));
    }

    private static Assessment assess(SurveyFolders folder) throws IOException {
        Intake intake = SurveyFolder.read(folder.path());
        return Assessor.assess(intake.survey(), intake.findings(), Earlier.NONE, Progress.NONE)
                .assessment();
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
        SurveyCopy copy = new SurveyCopy(source(slip.good), dir.resolve(slip.name.replace(' ', '-') + '-' + slip.good));
        slip.spoil.accept(copy);

        Intake intake = SurveyFolder.read(copy.folder());
        Verdict verdict = Verdict.of(intake.survey(), intake.findings());

        List<Finding> said = new ArrayList<>(intake.findings());
        verdict.coverage().stream().map(Coverage::findings).forEach(said::addAll);
        assertThat(said.stream().map(Finding::message).filter(m -> m.contains(slip.sentence)))
                .as(
                        "%s; said was %s",
                        slip.sentence,
                        said.stream().map(Finding::message).distinct().limit(8).toList())
                .hasSizeBetween(1, 3);
        assertThat(said.stream().filter(f -> f.subject() == Subject.OUTSIDE))
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
                .filter(f -> f.subject() == Subject.PLAUSIBILITY)
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
        to.add(all("metres", "small-deck", v -> v / 1000, "are they in metres?"));
        to.add(all("feet", "small-deck", v -> v / 304.8, "are they in feet?"));
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
        to.add(moved(
                "mirrored", "small-deck", (x, y) -> x, (x, y) -> -y, "is y counted to port instead of starboard?"));
        to.add(moved("exchanged", "small-deck", (x, y) -> y, (x, y) -> x, "are x and y exchanged?"));
        to.add(moved("shifted", "small-deck", (x, y) -> x + 2000, (x, y) -> y, "is their datum another"));
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
        to.add(kept(
                "one reading",
                "deck00",
                r -> r.number() == 1,
                Verdicts.NONE,
                "nothing counts as read for water (fewer than 5 readings lie on it), nothing counts as tapped"));
        to.add(kept("three readings", "deck12", r -> r.number() <= 3, Verdicts.PART, "15 % lies within 300 mm"));
        to.add(kept("port half", "deck12", r -> r.y() > 0, Verdicts.PART, "was the other half left out"));
        to.add(kept("bow only", "deck00", r -> r.x() < 900, Verdicts.PART, "was the other half left out"));
        to.add(new Slip(
                "taps to starboard",
                "deck00",
                c -> c.keep("taps.csv", r -> r.y() > 0),
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
                c -> c.keep("taps.csv", r -> r.number() < 3),
                Verdicts.PART,
                "18 % lies within 300 mm of a tap"));
        to.add(new Slip(
                "one face unread",
                "quillwort",
                c -> c.drop("wheelhouse side"),
                Verdicts.PART,
                "No moisture reading, tap or probe was taken on wheelhouse side"));
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

    private static Slip moved(String name, String good, SurveyCopy.Move x, SurveyCopy.Move y, String sentence) {
        return new Slip(name, good, c -> c.places(x, y), Verdicts.NONE, sentence);
    }

    private static Slip kept(
            String name, String good, Predicate<SurveyCopy.Row> which, Verdicts verdicts, String sentence) {
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
                        cells[3] = SurveyCopy.figure(change.applyAsDouble(Double.parseDouble(cells[3])));
                    }
                    return String.join(",", cells);
                }),
                Verdicts.NONE,
                sentence);
    }

    private static Path source(String good) {
        return Path.of(
                good.equals("quillwort")
                        ? "demo-data/quillwort"
                        : good.equals("small-deck") ? "src/test/resources/corewright/cli/small-deck" : DECKS + good);
    }
}
