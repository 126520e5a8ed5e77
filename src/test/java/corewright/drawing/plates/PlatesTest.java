package corewright.drawing.plates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.damage.Region;
import corewright.drawing.DrawingFixture;
import corewright.drawing.Faces;
import corewright.drawing.Recorder;
import corewright.drawing.kit.Pattern;
import corewright.drawing.kit.Shapes;
import corewright.drawing.placing.MapLayout;
import corewright.drawing.placing.RegionLabel;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Geometry;

class PlatesTest {

    @ParameterizedTest(name = "{0}")
    @MethodSource("corewright.drawing.Faces#all")
    void namesEveryRegionWithItsAreaOutsideTheDeck(String name, List<Plate> plates) {
        for (Plate plate : plates) {
            MapLayout layout = plate.layout();
            Geometry deck = layout.view().onPaper(layout.spec().damage().face().outline());
            List<Region> regions = layout.spec().damage().regions();

            assertThat(layout.labels()).as(plate.name()).hasSameSizeAs(regions);
            assertThat(plate.unlabelled()).as(plate.name()).isEmpty();
            for (RegionLabel label : layout.labels()) {
                assertThat(deck.intersects(Shapes.rectangle(label.box())))
                        .as("%s %s stands on the deck", name, label.region())
                        .isFalse();
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("corewright.drawing.Faces#all")
    void leadersStartInTheirRegionAndNeverCross(String name, List<Plate> plates) {
        for (Plate plate : plates) {
            MapLayout layout = plate.layout();
            List<RegionLabel> labels = layout.labels();
            for (int i = 0; i < labels.size(); i++) {
                Region region = layout.spec().damage().regions().get(i);
                Geometry area = Pattern.drawn(layout.view().onPaper(region.likely()));
                assertThat(area.intersects(
                                Shapes.point(labels.get(i).dotX(), labels.get(i).dotY())))
                        .as("%s %s", name, region.id())
                        .isTrue();
                for (int j = 0; j < i; j++) {
                    assertThat(cross(labels.get(i), labels.get(j)))
                            .as("%s and %s of %s", region.id(), labels.get(j).region(), name)
                            .isFalse();
                }
            }
        }
    }

    private static boolean cross(RegionLabel a, RegionLabel b) {
        for (Line2D p : legs(a)) {
            if (legs(b).stream().anyMatch(p::intersectsLine) || b.box().shape().intersectsLine(p)) {
                return true;
            }
        }
        return legs(b).stream().anyMatch(a.box().shape()::intersectsLine);
    }

    private static List<Line2D> legs(RegionLabel label) {
        double end = label.toLeft() ? label.box().right() + 1 : label.box().x() - 1;
        return List.of(
                new Line2D.Double(label.dotX(), label.dotY(), label.dotX(), label.leadY()),
                new Line2D.Double(label.dotX(), label.leadY(), end, label.leadY()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("corewright.drawing.Faces#all")
    void noWordsStandOnOtherWords(String name, List<Plate> plates) {
        for (Plate plate : plates) {
            assertThat(Recorder.of(plate::paint).clashes())
                    .as("%s %s", name, plate.name())
                    .isEmpty();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("corewright.drawing.Faces#all")
    void everythingStaysInsideTheMargins(String name, List<Plate> plates) {
        for (Plate plate : plates) {
            Recorder recorder = Recorder.of(plate::paint);
            Rectangle2D page = new Rectangle2D.Double(9, 6, 297 - 18, 210 - 12);

            assertThat(recorder.words.stream().filter(w -> !page.contains(w.box())))
                    .as(name)
                    .isEmpty();
            assertThat(recorder.ink.stream().filter(b -> !page.contains(b)))
                    .as(name)
                    .isEmpty();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("corewright.drawing.Faces#all")
    void noTypeIsSmallerThanReadingsAre(String name, List<Plate> plates) {
        double least = 6.5 * 25.4 / 72;
        for (Plate plate : plates) {
            assertThat(Recorder.of(plate::paint).words.stream().filter(w -> w.size() < least - 1e-4))
                    .as(name)
                    .isEmpty();
        }
    }

    @Test
    void repeatsEveryCall() {
        List<String> first = new ArrayList<>();
        List<String> again = new ArrayList<>();
        Plates.of(DrawingFixture.foredeck()).forEach(p -> first.addAll(Recorder.of(p::paint).calls));
        Plates.of(DrawingFixture.foredeck()).forEach(p -> again.addAll(Recorder.of(p::paint).calls));

        assertThat(first).hasSizeGreaterThan(500).isEqualTo(again);
    }

    @Test
    void takesTheLargestStandardScaleThatFits() {
        assertThat(Plates.of(DrawingFixture.foredeck()).get(0).scale()).isEqualTo(20);
        assertThat(Plates.of(DrawingFixture.plain(Faces.SMALL, 0, 0, 0, 10))
                        .get(0)
                        .scale())
                .isEqualTo(5);
    }

    @Test
    void theAreasShownAddUpToTheTotalShown() {
        List<String> words = Recorder.of(Plates.of(DrawingFixture.foredeck()).get(0)::paint).words.stream()
                .map(Recorder.Words::text)
                .toList();
        int total = words.indexOf("core of the foredeck");
        int head = words.indexOf("Core by condition");
        double sum = words.subList(head, total).stream()
                .filter(w -> w.matches("\\d+\\.\\d\\d"))
                .mapToDouble(Double::parseDouble)
                .sum();

        // each row is rounded to the second decimal, so the sum is exact but for binary rounding
        assertThat(Double.parseDouble(words.get(total + 1))).isEqualTo(sum, within(1e-9));
        // 6.13 m² of outline less 0.18 and 0.36 m² of openings
        assertThat(sum).isEqualTo(5.61, within(0.02));
    }

    @Test
    void meterReadingsCarryNoPercentSign() {
        List<String> words = Recorder.of(Plates.of(DrawingFixture.foredeck()).get(0)::paint).words.stream()
                .map(Recorder.Words::text)
                .filter(w -> w.contains("%"))
                .toList();

        // the plug's oven-dry moisture is a true percentage; the print check says at what size to print
        assertThat(words)
                .allMatch(
                        w -> w.equals("11 %") || w.equals("plug: water, % of dry mass") || w.startsWith("Print check"));
    }

    @Test
    void saysOnlyWhatTheMapUses() {
        List<String> words =
                Recorder.of(Plates.of(DrawingFixture.plain(Faces.RECTANGLE, 2, 0, 1, 300))
                                .get(0)::paint)
                        .words
                        .stream()
                        .map(Recorder.Words::text)
                        .toList();

        assertThat(words).contains("void: empty space under the skin", "likely: more probable than not");
        assertThat(words).doesNotContain("wet: water in the core", "not decided yet", "probe: void depth, mm");
    }

    @Test
    void aFaceWithoutDamageHasNoRepairPlate() {
        List<Plate> plates = Plates.of(DrawingFixture.plain(Faces.RECTANGLE, 0, 0, 0, 200));

        assertThat(plates).extracting(Plate::name).containsExactly("foredeck-condition");
    }
}
