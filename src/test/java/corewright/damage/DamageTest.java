package corewright.damage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.contour.Raster;
import corewright.survey.CoreState;
import corewright.survey.FeelerEnd;
import corewright.survey.Finding;
import corewright.survey.Sound;
import corewright.survey.Subject;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

class DamageTest {
    /** Wet to the left, loose over dry core to the right: two questions, two answers. */
    private static Deck wetHereLooseThere() {
        return Deck.plain().moistureGrid(125, 500, 500, 220, 50).tapGrid(125, 1500, 500, 220);
    }

    @Test
    void findsWetBondedAndDryLooseApart() {
        FaceDamage map = wetHereLooseThere().map();

        assertThat(map.regions()).extracting(Region::condition).containsExactly(Condition.DELAMINATED, Condition.WET);
        double disc = Math.PI * 220 * 220;
        // a rim half a grid step off either way
        assertThat(map.areaMm2(Condition.WET)).isBetween(disc * 0.6, disc * 1.5);
        assertThat(map.areaMm2(Condition.DELAMINATED)).isBetween(disc * 0.6, disc * 1.5);
        assertThat(map.regions().get(0).pWetMean()).isLessThan(0.1);
        assertThat(map.regions().get(0).wet()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void partsTheFaceExactly(long seed) {
        FaceDamage map = randomDeck(seed).map();

        List<Polygon> parts = new ArrayList<>(map.sound());
        map.regions().forEach(r -> parts.add(r.likely()));
        double deck = map.face().outline().getArea() - 150 * 150;
        assertThat(map.deckMm2()).isCloseTo(deck, within(1e-9 * deck));
        for (int i = 0; i < parts.size(); i++) {
            for (int j = 0; j < i; j++) {
                Geometry common = parts.get(i).intersection(parts.get(j));
                assertThat(common.getArea()).as("parts %d and %d", i, j).isLessThan(1e-3);
            }
        }
        for (Region region : map.regions()) {
            assertThat(region.likely().covers(region.label())).isTrue();
            assertThat(region.possible().getArea())
                    .isGreaterThanOrEqualTo(region.likely().getArea() * (1 - 1e-9));
            assertThat(region.likely().difference(region.possible()).getArea()).isLessThan(1e-3);
            Polygon bay = map.bays().stream()
                    .filter(b -> b.name().equals(region.bay()))
                    .findFirst()
                    .orElseThrow()
                    .area();
            assertThat(region.possible().difference(bay).getArea()).isLessThan(1e-3);
        }
    }

    private static Deck randomDeck(long seed) {
        Random random = new Random(seed);
        Deck deck = Deck.plain()
                .divider("LINESTRING(1100 -10,1100 1010)")
                .opening("POLYGON((300 300,450 300,450 450,300 450,300 300))");
        for (int i = 0; i < 80; i++) {
            deck.reads(
                    2000 * random.nextDouble(), 1000 * random.nextDouble(), 8 + 60 * Math.pow(random.nextDouble(), 3));
            Sound sound = Sound.values()[(int) (3 * Math.pow(random.nextDouble(), 2))];
            deck.taps(2000 * random.nextDouble(), 1000 * random.nextDouble(), sound);
        }
        for (int i = 0; i < 6; i++) {
            deck.probes(2000 * random.nextDouble(), 1000 * random.nextDouble(), 15 * random.nextDouble(), null, null);
        }
        return deck;
    }

    @ParameterizedTest
    @ValueSource(longs = {4, 5})
    void neverClaimsMoreVoidThanLooseness(long seed) {
        Surfaces s = randomDeck(seed).map().surfaces();

        for (int i = 0; i < s.pVoid().size(); i++) {
            if (!Double.isNaN(s.pVoid().at(i))) {
                assertThat(s.pVoid().at(i)).isLessThanOrEqualTo(s.pLoose().at(i));
                assertThat(s.voidDepthMm().at(i)).isBetween(0.0, 12.5);
            }
        }
    }

    @Test
    void knowsNothingOfReadingsBeyondADivider() {
        Deck dry = Deck.plain().divider("LINESTRING(1000 -10,1000 1010)");
        dry.moistureGrid(125, 500, 500, 200, 45)
                .tapGrid(125, 500, 500, 150)
                .probes(500, 500, 6, CoreState.ROTTED, null);
        Deck changed = Deck.plain().divider("LINESTRING(1000 -10,1000 1010)");
        changed.moistureGrid(125, 500, 500, 200, 45).tapGrid(125, 500, 500, 150);
        changed.probes(500, 500, 6, CoreState.ROTTED, null);
        for (double y = 100; y < 1000; y += 100) {
            changed.reads(1010, y, 90).taps(1020, y, Sound.HOLLOW).probes(1030, y, 9, CoreState.NONE, null);
        }

        Surfaces before = dry.map().surfaces();
        Surfaces after = changed.map().surfaces();

        int compared = 0;
        for (int i = 0; i < before.pWet().size(); i++) {
            Raster p = before.pWet();
            if (p.centreX(i % p.columns()) < 1000 && !Double.isNaN(p.at(i))) {
                assertThat(after.pWet().at(i)).isEqualTo(p.at(i));
                assertThat(after.pLoose().at(i)).isEqualTo(before.pLoose().at(i));
                assertThat(after.voidDepthMm().at(i))
                        .isEqualTo(before.voidDepthMm().at(i));
                compared++;
            }
        }
        assertThat(compared).isEqualTo(40 * 40);
        assertThat(after.pWet().cellAt(1010, 500)).isGreaterThan(0.7);
    }

    @Test
    void givesTheSameMapBitForBit() {
        FaceDamage first = randomDeck(8).map();
        FaceDamage second = randomDeck(8).map();

        assertThat(second.surfaces()).isEqualTo(first.surfaces());
        assertThat(second.voidMm3()).isEqualTo(first.voidMm3());
        assertThat(second.next()).isEqualTo(first.next());
        assertThat(second.findings()).isEqualTo(first.findings());
        assertThat(second.regions()).hasSameSizeAs(first.regions());
        for (int i = 0; i < first.regions().size(); i++) {
            assertThat(second.regions()
                            .get(i)
                            .likely()
                            .equalsExact(first.regions().get(i).likely()))
                    .isTrue();
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void claimsNothingOnAnUndamagedDeck(long seed) {
        Random random = new Random(seed);
        Deck deck = Deck.plain().metal(700, 400);
        for (double y = 75; y < 1000; y += 150) {
            for (double x = 75; x < 2000; x += 150) {
                double raised = Math.hypot(x - 700, y - 400) < 100 ? 15 * random.nextDouble() : 0;
                deck.reads(x, y, Math.max(0, 11 + 1.8 * random.nextGaussian() + raised));
                boolean misheard = random.nextDouble() < 0.02;
                deck.taps(x, y, misheard ? Sound.values()[random.nextInt(3)] : Sound.SOUND);
            }
        }

        FaceDamage map = deck.map();

        assertThat(map.regions()).isEmpty();
        assertThat(map.voidMm3().p50()).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {31, 50, 70, 95})
    void oneMoreWetReadingNeverLowersTheProbabilityThere(double value) {
        double before = wetHereLooseThere().map().surfaces().pWet().cellAt(1210, 510);

        double after = wetHereLooseThere()
                .reads(1212.5, 512.5, value)
                .map()
                .surfaces()
                .pWet()
                .cellAt(1210, 510);

        assertThat(after).isGreaterThan(before);
    }

    @Test
    void namesWhatItCannotKnow() {
        FaceDamage onlyMoisture =
                Deck.plain().moistureGrid(125, 500, 500, 220, 50).map();
        FaceDamage onlyTaps = Deck.plain().tapGrid(125, 500, 500, 220).map();

        assertThat(onlyMoisture.regions()).extracting(Region::condition).containsOnly(Condition.WET);
        assertThat(onlyMoisture.findings()).extracting(Finding::subject).contains(Subject.NO_TAPS, Subject.NO_PROBES);
        assertThat(onlyMoisture.undecided())
                .extracting(Undecided::why)
                .contains("loose or bonded: nothing was read in this bay");
        assertThat(onlyTaps.regions()).extracting(Region::condition).containsOnly(Condition.DELAMINATED);
        assertThat(onlyTaps.findings()).extracting(Finding::subject).contains(Subject.NO_MOISTURE, Subject.NO_PROBES);
        assertThat(onlyTaps.voidMm3().p90()).isGreaterThan(onlyTaps.voidMm3().p10());
    }

    @Test
    void worksOnOneReadingAndOnEqualReadings() {
        FaceDamage one = Deck.plain().reads(500, 500, 60).map();
        FaceDamage equal = Deck.plain().moistureGrid(200, 0, 0, 0, 0).map();
        FaceDamage allWet = Deck.plain().moistureGrid(200, 1000, 500, 5000, 100).map();

        assertThat(one.surfaces().pWet().cellAt(500, 500)).isGreaterThan(0.5);
        assertThat(one.findings()).extracting(Finding::subject).contains(Subject.FEW_READINGS);
        assertThat(equal.regions()).isEmpty();
        assertThat(allWet.areaMm2(Condition.WET)).isGreaterThan(0.95 * 2e6);
    }

    @Test
    void saysNothingOfADeckThatWasNotRead() {
        Deck deck = Deck.plain().solid("POLYGON((0 0,200 0,200 200,0 200,0 0))");
        for (int i = 0; i < 4; i++) {
            deck.reads(900 + 50 * i, 500, 40).taps(900 + 50 * i, 500, Sound.HOLLOW);
        }
        FaceDamage unread = deck.map();

        assertThat(unread.told()).isFalse();
        assertThat(unread.regions()).isEmpty();
        assertThat(unread.areaMm2(Condition.SOUND)).isZero();
        assertThat(unread.deckMm2()).isCloseTo(2e6, within(1e-6));
        assertThat(unread.undecidedMm2()).isCloseTo(2e6, within(1e-6));
        assertThat(unread.damagedMm2()).isEqualTo(Quantiles.ZERO);

        deck.reads(1100, 500, 40).taps(1100, 500, Sound.HOLLOW);
        assertThat(deck.map().told()).as("a fifth reading").isTrue();
    }

    @Test
    void setsReadingsOffTheCoreAside() {
        FaceDamage map = wetHereLooseThere()
                .opening("POLYGON((900 400,1000 400,1000 500,900 500,900 400))")
                .reads(950, 450, 90)
                .taps(2500, 500, Sound.HOLLOW)
                .map();

        assertThat(map.findings())
                .filteredOn(f -> f.subject() == Subject.OUTSIDE || f.subject() == Subject.IN_AN_OPENING)
                .extracting(Finding::message)
                .contains("the reading lies in the opening hatch", "the reading lies outside the outline");
        assertThat(map.surfaces().pWet().cellAt(950, 450)).isNaN();
    }

    @Test
    void aRodSaysVoidAllAlongAndNoneAtItsFirmEnd() {
        Deck deck = Deck.plain().tapGrid(125, 500, 500, 160).probes(460, 500, 8, CoreState.NONE, null);
        Surfaces without = deck.map().surfaces();

        Surfaces with = deck.feels(380, 500, 620, 500, FeelerEnd.FIRM).map().surfaces();

        assertThat(with.pVoid().cellAt(560, 505))
                .isGreaterThan(0.8)
                .isGreaterThan(without.pVoid().cellAt(560, 505));
        assertThat(with.voidDepthMm().cellAt(640, 500))
                .isLessThan(without.voidDepthMm().cellAt(640, 500));
    }

    @Test
    void sendsTheSurveyorToTheEdgesFirst() {
        FaceDamage map =
                wetHereLooseThere().probes(1500, 500, 5, CoreState.NONE, null).map();

        assertThat(map.next()).hasSizeBetween(5, 20);
        NextReading first = map.next().stream()
                .filter(n -> n.kind() == NextReading.Kind.MOISTURE)
                .findFirst()
                .orElseThrow();
        assertThat(Math.hypot(first.spot().xMm() - 500, first.spot().yMm() - 500))
                .isBetween(120.0, 330.0);
        assertThat(map.next()).extracting(NextReading::rank).isSorted().doesNotHaveDuplicates();
    }
}
