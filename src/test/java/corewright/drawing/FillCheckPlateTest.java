package corewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.Assessments;
import corewright.assessment.Assessment;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Shapes;
import corewright.drawing.kit.VoiceGrid;
import corewright.drawing.marks.WarmthMark;
import corewright.drawing.plates.Plate;
import corewright.drawing.plates.PlateKind;
import corewright.drawing.plates.Plates;
import corewright.repair.work.CuredFill;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Side;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.SurfaceTemperature;
import corewright.survey.Survey;
import corewright.survey.Tap;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** The fill check of the invented boat Ronja, whose plans were made by hand; tapped on a grid of 50 mm. */
class FillCheckPlateTest {
    private static final double STEP = 50;

    private static final Assessment RONJA = DrawingFixture.foredeck();

    private static Assessment with(Survey survey) {
        return Assessments.of(
                survey, RONJA.damage(), RONJA.stiffness(), RONJA.plans(), RONJA.decision(), List.of(), List.of());
    }

    private static Polygon space(int plan) {
        return CuredFill.space(RONJA.damage(), RONJA.decision().injections().get(plan));
    }

    /** Taps over one space; hollow within 60 mm of its middle, dull up to 90, sound beyond. */
    private static List<Tap> taps(int plan) {
        Polygon space = space(plan);
        Coordinate middle = space.getInteriorPoint().getCoordinate();
        Envelope box = space.getEnvelopeInternal();
        List<Tap> taps = new ArrayList<>();
        for (double x = STEP * Math.ceil(box.getMinX() / STEP); x < box.getMaxX(); x += STEP) {
            for (double y = STEP * Math.ceil(box.getMinY() / STEP); y < box.getMaxY(); y += STEP) {
                Coordinate at = new Coordinate(x, y);
                if (space.contains(Shapes.FACTORY.createPoint(at))) {
                    double off = at.distance(middle);
                    Sound call = off < 60 ? Sound.HOLLOW : off < 90 ? Sound.DULL : Sound.SOUND;
                    Spot spot = new Spot(DrawingFixture.FACE, x, y);
                    taps.add(new Tap(
                            new Origin("c.csv", taps.size() + 2),
                            plan + "-" + taps.size(),
                            spot,
                            call,
                            null,
                            Side.OUTER));
                }
            }
        }
        return taps;
    }

    private static Assessment tapped(int... plans) {
        List<Tap> taps = new ArrayList<>();
        for (int plan : plans) {
            taps.addAll(taps(plan));
        }
        return with(Part.CURED_TAPS.with(RONJA.survey(), taps));
    }

    private static Assessment felt(Assessment before) {
        Coordinate at = space(0).getInteriorPoint().getCoordinate();
        List<SurfaceTemperature> felt = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            Spot spot = new Spot(DrawingFixture.FACE, at.x + 35 * i - 60, at.y + 40);
            felt.add(new SurfaceTemperature(new Origin("t.csv", i + 2), "W" + i, spot, 1200, null, i == 0));
        }
        return with(Part.TEMPERATURES.with(before.survey(), felt));
    }

    private static Plate plate(Assessment assessment) {
        return Plates.of(assessment).stream()
                .filter(p -> p.kind() == PlateKind.FILL_CHECK)
                .findFirst()
                .orElseThrow();
    }

    private static List<String> words(Plate plate) {
        return Recorder.of(plate::paint).words.stream()
                .map(Recorder.Words::text)
                .toList();
    }

    static Stream<Arguments> plates() {
        return Stream.of(
                Arguments.of("one space", plate(tapped(0))),
                Arguments.of("every space", plate(tapped(0, 1))),
                Arguments.of("taps and warmth", plate(felt(tapped(0, 1)))),
                Arguments.of("warmth alone", plate(felt(RONJA))));
    }

    @Test
    void thereIsOneOnlyWhereSomethingFilledWasChecked() {
        Spot beside = new Spot(DrawingFixture.FACE, 3000, 0);
        Tap outside = new Tap(new Origin("c.csv", 2), "C1", beside, Sound.HOLLOW, null, Side.OUTER);

        assertThat(Plates.of(RONJA)).extracting(Plate::kind).doesNotContain(PlateKind.FILL_CHECK);
        assertThat(Plates.of(with(Part.CURED_TAPS.with(RONJA.survey(), List.of(outside)))))
                .extracting(Plate::kind)
                .doesNotContain(PlateKind.FILL_CHECK);
        assertThat(plate(tapped(0)).name()).isEqualTo("foredeck-fill-check");
        assertThat(plate(tapped(0)).title()).endsWith(" · foredeck · fill check");
    }

    @Test
    void severalSpacesHaveALargerMapEach() {
        List<Plate> checks = Plates.of(tapped(0, 1)).stream()
                .filter(p -> p.kind() == PlateKind.FILL_CHECK)
                .toList();
        String first = RONJA.decision().injections().get(0).region();
        String second = RONJA.decision().injections().get(1).region();

        assertThat(checks)
                .extracting(Plate::name)
                .containsExactly(
                        "foredeck-fill-check", "foredeck-fill-check-" + first, "foredeck-fill-check-" + second);
        assertThat(checks.get(1).scale()).isLessThan(checks.get(0).scale());
        assertThat(words(checks.get(1))).contains(first).doesNotContain(second);
        assertThat(checks.get(1).title()).endsWith("fill check " + first);
    }

    @Test
    void saysWhatIsStillHollowAndHowMuchItTakes() {
        Assessment assessment = tapped(0);
        double mm2 = assessment.work().cured().get(0).hollowMm2();
        List<String> words = words(plate(assessment));

        assertThat(words).contains("S1");
        assertThat(words).anyMatch(w -> w.matches("still hollow, " + Figures.area(mm2) + ", \\S+ to \\S+ g"));
        assertThat(words).anyMatch(w -> w.startsWith("filled, tapped over "));
        assertThat(words).contains("still hollow after cure; grams");
    }

    /** What is filled is the sum of the labels' areas, and the rows above it add up to it. */
    @Test
    void theRowsAddUpToWhatIsFilled() {
        List<String> words = words(plate(tapped(0, 1)));
        int total = words.indexOf("filled");
        double rows = words.subList(words.indexOf("still hollow"), total).stream()
                .filter(w -> w.matches("\\d+\\.\\d\\d"))
                .mapToDouble(Double::parseDouble)
                .sum();
        double labels = Figures.shownArea(space(0).getArea()) + Figures.shownArea(space(1).getArea());

        assertThat(Double.parseDouble(words.get(total + 1)))
                .isCloseTo(rows, within(1e-9)); // exact but for binary rounding
        assertThat(rows).isCloseTo(labels, within(0.005 + 1e-9)); // half the last digit
    }

    @Test
    void explainsWhatIsOnItAndNothingElse() {
        List<String> tapped = words(plate(tapped(0)));
        List<String> felt = words(plate(felt(RONJA)));

        assertThat(tapped).contains("tapped after cure: sound", "line under it: one dull, two hollow");
        assertThat(tapped).noneMatch(w -> w.contains("during cure"));
        assertThat(tapped).doesNotContain("likely: more probable than not", "void: empty space under the skin");
        assertThat(felt).anyMatch(w -> w.contains("during cure"));
        assertThat(felt).noneMatch(w -> w.contains("after cure: "));
    }

    /** One space alone is drawn larger than the deck, and no hollow or dull tap falls to another mark. */
    @Test
    void showsTheTapsThatMatter() {
        Plate plate = plate(tapped(0));
        long loud = taps(0).stream().filter(t -> t.sound() != Sound.SOUND).count();

        assertThat(plate.scale()).isLessThan(20);
        assertThat(plate.layout().readings().stream().filter(r -> r.lines() > 0))
                .hasSize((int) loud);
    }

    @Test
    void lettersAreThoseOfTheWholeDeck() {
        VoiceGrid whole = Plates.of(RONJA).get(0).layout().grid();
        VoiceGrid part = plate(tapped(0)).layout().grid();

        assertThat(part.extent()).isNotEqualTo(whole.extent());
        for (VoiceGrid.Strip column : part.columns()) {
            assertThat(whole.columns())
                    .anyMatch(
                            c -> c.name().equals(column.name()) && c.from() <= column.from() && c.to() >= column.to());
        }
    }

    @Test
    void warmthIsToldByShapeInBlackAndWhite() {
        List<List<String>> calls = Stream.of(WarmthMark.Says.values())
                .map(s -> Recorder.of(g -> new WarmthMark(20, 20, s).paint(new Paper(g))).calls)
                .toList();

        assertThat(calls).doesNotHaveDuplicates();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("plates")
    void wordsStandClearOfEachOtherAndOfTheDeck(String name, Plate plate) {
        Geometry deck = plate.layout()
                .view()
                .onPaper(plate.layout().spec().damage().face().outline());

        assertThat(Recorder.of(plate::paint).clashes()).isEmpty();
        assertThat(plate.unlabelled()).isEmpty();
        assertThat(plate.layout().labels()).allSatisfy(l -> assertThat(deck.intersects(Shapes.rectangle(l.box())))
                .as(l.region())
                .isFalse());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("plates")
    void everythingStaysInsideTheMargins(String name, Plate plate) {
        Recorder recorder = Recorder.of(plate::paint);
        Rectangle2D page = new Rectangle2D.Double(9, 6, 297 - 18, 210 - 12);

        assertThat(recorder.words.stream().filter(w -> !page.contains(w.box()))).isEmpty();
        assertThat(recorder.ink.stream().filter(b -> !page.contains(b))).isEmpty();
    }

    @Test
    void repeatsEveryCall() {
        List<String> first = Recorder.of(plate(felt(tapped(0, 1)))::paint).calls;
        List<String> again = Recorder.of(plate(felt(tapped(0, 1)))::paint).calls;

        assertThat(first).hasSizeGreaterThan(200).isEqualTo(again);
    }
}
