package corewright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.bench.InventedTruth.Kind;
import corewright.comparison.ChangedArea;
import corewright.comparison.Comparer;
import corewright.comparison.Comparison;
import corewright.comparison.FaceComparison;
import corewright.comparison.RegionChange.Fate;
import corewright.comparison.Side;
import corewright.damage.Damage;
import corewright.reuse.Memory;
import corewright.survey.Face;
import corewright.survey.Meter;
import corewright.survey.Readings;
import corewright.survey.Survey;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** The comparison of two surveys of invented decks, whose truth is known. How often it errs, {@link ResurveyBenchmark} counts. */
class ResurveyTest {
    private static final double RADIUS = Math.sqrt(100_000 / Math.PI);

    private final InventedDeck deck = new InventedDeck(Kind.NONE, 5);
    private final InventedTruth damaged =
            deck.truth.with(new Coordinate(deck.lengthMm() / 2, deck.widthMm() / 2), RADIUS, true, true, new Random(6));

    private static Comparison compare(Survey before, Survey after) {
        return Comparer.compare(side(before), side(after));
    }

    private static Side side(Survey survey) {
        return Side.mapped(survey, Damage.fit(survey, new Memory()));
    }

    private Survey wet(long seed) {
        return deck.again(damaged, seed, true).survey();
    }

    private Survey dry(long seed) {
        return deck.again(deck.truth, seed, true).survey();
    }

    @Test
    void theSameSurveyTwiceHasNotChanged() {
        Comparison comparison = compare(wet(1), wet(1));
        assertThat(comparison.faces().get(0).regions()).isNotEmpty();
        assertThat(comparison.claims()).isFalse();
        assertThat(comparison.figures()).allMatch(c -> c.difference() == 0 || Double.isNaN(c.difference()));
    }

    @Test
    void whatWasMendedIsFoundAndWhatCameIsNew() {
        FaceComparison mended = compare(wet(1), dry(2)).faces().get(0);
        assertThat(mended.regions()).anyMatch(r -> r.fate() == Fate.MENDED);
        assertThat(mended.news()).noneMatch(n -> n.figure().proven());
        FaceComparison come = compare(dry(2), wet(1)).faces().get(0);
        assertThat(come.news()).anyMatch(n -> n.fate() == Fate.NEW);
        assertThat(ChangedArea.of(come)).anyMatch(a -> a.kind() == ChangedArea.Kind.NEW);
        assertThat(come.totals().get(0).rose()).isTrue();
    }

    /** Mended, left and unproven parts of a region are that region, but for slivers. */
    @Test
    void theMapOfChangeHoldsEveryRegion() {
        FaceComparison face = compare(wet(1), wet(2)).faces().get(0);
        double was = face.regions().stream()
                .mapToDouble(r -> r.region().likely().getArea())
                .sum();
        double drawn = ChangedArea.of(face).stream()
                .filter(a -> face.news().stream().noneMatch(n -> n.area().equals(a.area())))
                .mapToDouble(a -> a.area().getArea())
                .sum();
        assertThat(drawn).isBetween(0.9 * was, was + 1e-6);
    }

    @Test
    void aPlaceThatWasNotReadAgainIsNotMended() {
        Survey after = dry(2);
        Polygon place = (Polygon) after.faces()
                .get(0)
                .outline()
                .getFactory()
                .createPoint(new Coordinate(deck.lengthMm() / 2, deck.widthMm() / 2))
                .buffer(RADIUS + 300);
        Readings r = after.readings();
        Readings fewer = new Readings(
                r.moisture().stream()
                        .filter(m -> !place.covers(
                                place.getFactory().createPoint(m.spot().coordinate())))
                        .toList(),
                r.taps().stream()
                        .filter(t -> !place.covers(
                                place.getFactory().createPoint(t.spot().coordinate())))
                        .toList(),
                r.probes(),
                r.feelers(),
                r.plugs(),
                r.temperatures());
        FaceComparison face = compare(wet(1), after.with(fewer)).faces().get(0);
        assertThat(face.regions()).isNotEmpty().allMatch(x -> x.fate() == Fate.NOT_READ);
    }

    @Test
    void aMovedDatumAnotherOutlineAndAnotherNameAreSaid() {
        Survey survey = dry(1);
        AffineTransformation move = AffineTransformation.translationInstance(120, -40);
        assertThat(whyNot(survey, outline(survey, p -> (Polygon) move.transform(p))))
                .isEqualTo(
                        "Its datum has moved: the same outline lies 120 mm along and -40 mm across from where it was.");
        AffineTransformation stretch = AffineTransformation.scaleInstance(1.1, 1);
        assertThat(whyNot(survey, outline(survey, p -> (Polygon) stretch.transform(p))))
                .isEqualTo("Its outline is not the same in both surveys.");
        Face f = survey.faces().get(0);
        Face named = new Face("other", f.tiltDeg(), f.uphillDeg(), f.outline(), f.edge(), f.laminate(), f.features());
        Comparison apart = compare(survey, with(survey, List.of(named), survey.meters()));
        assertThat(apart.faces())
                .extracting(FaceComparison::whyNot)
                .containsExactly("Only the earlier survey has it.", "Only the later survey has it.");
        assertThat(apart.totals()).isEmpty();
    }

    @Test
    void waterIsNotComparedWithoutACommonScale() {
        Survey before = wet(1);
        Survey after = dry(2);
        List<Meter> unsaid = after.meters().stream()
                .map(m -> new Meter(m.name(), m.kind(), m.fullScale(), null, null))
                .toList();
        FaceComparison face =
                compare(before, with(after, after.faces(), unsaid)).faces().get(0);
        assertThat(face.notes()).anyMatch(n -> n.contains("water cannot be compared"));
        assertThat(face.totals().get(0).limits()).isNull();
        assertThat(face.totals()).anyMatch(c -> c.quantity().word().equals("loose") && c.fell());
    }

    private static String whyNot(Survey before, Survey after) {
        return compare(before, after).faces().get(0).whyNot();
    }

    private static Survey outline(Survey s, UnaryOperator<Polygon> change) {
        Face f = s.faces().get(0);
        Face face = new Face(
                f.name(), f.tiltDeg(), f.uphillDeg(), change.apply(f.outline()), f.edge(), f.laminate(), f.features());
        return with(s, List.of(face), s.meters());
    }

    private static Survey with(Survey s, List<Face> faces, List<Meter> meters) {
        return new Survey(
                s.heading(),
                faces,
                meters,
                s.laminates(),
                s.materials(),
                s.readings(),
                s.settings(),
                s.log(),
                s.photos(),
                s.judgements(),
                s.loads(),
                s.repairPlan());
    }
}
