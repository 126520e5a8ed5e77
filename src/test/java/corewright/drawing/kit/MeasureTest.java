package corewright.drawing.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.assessment.Assessment;
import corewright.damage.Condition;
import corewright.damage.Region;
import corewright.drawing.DrawingFixture;
import corewright.drawing.Recorder;
import corewright.drawing.marks.ScaleBar;
import corewright.drawing.placing.Lettering;
import corewright.drawing.placing.MapSpec;
import corewright.drawing.placing.MapWording;
import corewright.drawing.placing.RegionWords;
import corewright.drawing.screen.ScreenLayer;
import corewright.drawing.screen.ScreenLook;
import corewright.drawing.screen.ScreenMap;
import java.awt.geom.AffineTransform;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Figures of a screen's map in metric and in US customary units. */
class MeasureTest {
    private static List<String> words(ScaleBar bar) {
        Recorder recorder = new Recorder();
        bar.paint(new Paper(recorder, Tone.PRINT));
        return recorder.words.stream().map(Recorder.Words::text).toList();
    }

    @ParameterizedTest
    @CsvSource({
        "3, '0|1 in|2 in|4 in', 4",
        "6, '0|3 in|6 in|1 ft', 12",
        "12, '0|6 in|1 ft|2 ft', 24",
        "25, '0|1 ft|2 ft|4 ft', 48",
        "50, '0|2 ft|4 ft|8 ft', 96",
        "120, '0|5 ft|10 ft|20 ft', 240"
    })
    void theScaleBarCountsInFeetAndInches(double scale, String names, double inches) {
        ScaleBar bar = new ScaleBar(0, 0, scale, Measure.US);

        assertThat(words(bar)).isSubsetOf(names.split("\\|")).contains(names.substring(names.lastIndexOf('|') + 1));
        assertThat(bar.length() * scale).isCloseTo(inches * 25.4, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {2, 3, 5, 8, 13, 20, 31, 50, 77, 100, 200, 400})
    void noScaleBarIsLongerThanItsCorner(double scale) {
        for (Measure measure : Measure.values()) {
            assertThat(new ScaleBar(0, 0, scale, measure).length()).isBetween(10.0, 52.0);
        }
    }

    /** A collar set by the inches of a card must not let the drill farther than the millimetres would. */
    @Test
    void aDepthStopInInchesIsNoDeeper() {
        for (int tenths = 30; tenths <= 500; tenths += 5) {
            double mm = tenths / 10.0;
            String stop = Measure.US.stopFigure(mm);

            assertThat(Double.parseDouble(stop) * 25.4).as("%s mm", mm).isBetween(mm - 0.254, mm + 1e-9);
            String sentence = "Set the collar and never drill past " + Measure.METRIC.stopFigure(mm) + " mm: so.";
            assertThat(Measure.US.say(sentence))
                    .as("the sentence and the figure agree")
                    .isEqualTo("Set the collar and never drill past " + stop + " in: so.");
        }
    }

    @Test
    void theMetricScaleBarIsAsItWas() {
        assertThat(words(new ScaleBar(0, 0, 20, Measure.METRIC))).containsExactly("0", "100", "500", "1000 mm");
    }

    /** Factors of NIST SP 811 (2008), appendix B.8: 1 ft² is 9.290 304 E-02 m², 1 US quart 9.463 529 E-04 m³. */
    @Test
    void areasAndVolumesAreConvertedByTheStandardsFactors() {
        assertThat(Measure.US.area(92_903.04)).isEqualTo("1.0 ft²");
        assertThat(Measure.US.volume(9.463529e-4 * 1e9)).isCloseTo(1, within(1e-7));
        assertThat(Measure.US.depthFigure(25.4)).isEqualTo("1.00");
        assertThat(Measure.METRIC.area(170_000)).isEqualTo("0.17 m²");
    }

    private static RegionWords words(Assessment assessment, Lettering lettering) {
        return new RegionWords(
                new MapSpec(assessment, DrawingFixture.FACE, new Box(0, 0, 200, 200), 20, Set.of(), lettering));
    }

    @Test
    void theLabelOfAVoidSpeaksInTheScreensUnitsAndSaysWhenItsLitresAreOld() {
        Assessment ronja = DrawingFixture.foredeck();
        Region hollow = ronja.damage().regions().stream()
                .filter(r -> r.condition() == Condition.VOID)
                .findFirst()
                .orElseThrow();
        String us =
                words(ronja, Lettering.onScreen(Measure.US, false)).full(hollow).get(1);
        String paper = words(ronja, Lettering.onPaper(MapWording.TRADE, Measure.METRIC))
                .full(hollow)
                .get(1);
        String old = words(ronja, Lettering.onScreen(Measure.METRIC, true))
                .full(hollow)
                .get(1);

        assertThat(us).contains(" ft²").contains(" qt (").doesNotContain(" m²").doesNotContain(" L ");
        assertThat(paper).contains(" m²").contains(" L (");
        assertThat(old).isEqualTo(paper.substring(0, paper.indexOf(" L (")) + " L, old");
        assertThat(words(ronja, Lettering.onScreen(Measure.US, false))
                        .full(hollow)
                        .get(2))
                .matches("depth 0\\.\\d\\d in on average, 0\\.\\d\\d at most");
    }

    @Test
    void noMetricFigureStandsOnAPlanInInches() {
        Assessment ronja = DrawingFixture.foredeck();
        Box box = new Box(0, 0, 200, 150);
        ScreenMap map = ScreenMap.layOut(
                ronja,
                new ScreenMap.Seen(
                        DrawingFixture.FACE,
                        box,
                        ScreenMap.fitting(ronja.survey().face(DrawingFixture.FACE), box),
                        Set.of(ScreenLayer.VOID, ScreenLayer.LABELS, ScreenLayer.PROBES, ScreenLayer.STRUCTURE),
                        Lettering.onScreen(Measure.US, false),
                        false));
        Recorder recorder = new Recorder();
        recorder.setTransform(new AffineTransform());
        map.paint(recorder, ScreenLook.DAY, "");

        assertThat(recorder.words)
                .extracting(Recorder.Words::text)
                .anyMatch(w -> w.endsWith(" ft"))
                .noneMatch(w -> w.contains("mm") || w.contains("m²") || w.contains(" L "));
    }
}
