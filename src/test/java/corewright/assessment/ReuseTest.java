package corewright.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import corewright.intake.SurveyFolder;
import corewright.reuse.Memory;
import corewright.survey.CoreState;
import corewright.survey.Edit;
import corewright.survey.Feature;
import corewright.survey.Meter;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Photo;
import corewright.survey.Probe;
import corewright.survey.ReadingOverride;
import corewright.survey.Side;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.Tap;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Settings;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.jspecify.annotations.NullUnmarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** What is remembered saves time and changes nothing: after edits of every kind the assessment equals one from nothing. */
@NullUnmarked // JUnit fills the folders
class ReuseTest {
    private static final Origin HERE = new Origin("test", 1);
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Edits, one of each kind and three at a time, in an order drawn from the seed. */
    private static final int KINDS = 13;

    private static final long SEED = 5;

    @TempDir
    private Path place;

    private final Random random = new Random(SEED);
    private final List<Survey> states = new ArrayList<>();

    /** Two bays and two panels; a thick core, for which few elements do; loose at the far end, over dry core. */
    private Survey survey() throws IOException {
        SurveyFolders folder = SurveyFolders.minimal(place)
                .replacing("survey.yaml", "core_mm: 12.5", "core_mm: 40")
                .replacing("plan.csv", "POINT(450 300),yes,yes,60", "POINT(450 60),yes,yes,40")
                .replacing("probes.csv", "P2,480,540,4.5,rotted", "P2,480,540,4.5,dry")
                .adding(
                        "plan.csv",
                        "foredeck,support,beam,\"LINESTRING(430 0,430 600)\",,,,simple,\n"
                                + "foredeck,divider,rib,\"LINESTRING(300 0,300 600)\",,,,,\n");
        return SurveyFolder.read(folder.path()).survey();
    }

    @Test
    void afterEditsTheAssessmentIsAsIfNothingWereRemembered() throws IOException {
        Survey survey = survey();
        List<Integer> kinds = new ArrayList<>(IntStream.range(0, KINDS).boxed().toList());
        Collections.shuffle(kinds, random);
        Earlier earlier = assess(survey, Earlier.NONE).earlier();
        states.add(survey);
        int taken = 0;
        for (int i = 0; i < KINDS; i += 3) {
            for (int kind : kinds.subList(i, Math.min(KINDS, i + 3))) {
                survey = edited(survey, kind);
                states.add(survey);
            }

            Assessed remembered = assess(survey, earlier);
            Assessed fresh = assess(survey, Earlier.NONE);

            assertThat(remembered.assessment())
                    .as("after edits of kinds " + kinds.subList(0, Math.min(KINDS, i + 3)))
                    .isEqualTo(fresh.assessment());
            earlier = remembered.earlier();
            taken += count(earlier.memory());
        }
        assertThat(taken).as("results taken from memory").isPositive();
    }

    /** A rib parts the deck at x = 300: what is read before it says nothing of the core behind it. */
    @Test
    void aReadingInOneBayLeavesTheOtherAsItWas() throws IOException {
        Survey survey = survey();
        Earlier earlier = assess(survey, Earlier.NONE).earlier();
        Moisture m = survey.readings().moisture().stream()
                .filter(r -> r.spot().xMm() < 280)
                .findFirst()
                .orElseThrow();

        Memory memory = assess(
                        Edit.replace(survey, Part.MOISTURE, m, moisture(m.spot(), m.value() + 1))
                                .apply(survey),
                        earlier)
                .earlier()
                .memory();

        assertThat(memory.worked()).containsEntry("BayInput", 1);
        assertThat(memory.taken()).containsEntry("BayInput", 1).containsKeys("PanelInput", "SpaceTask");
    }

    @Test
    void aPhotographCostsNothing() throws IOException {
        Survey survey = survey();
        Earlier earlier = assess(survey, Earlier.NONE).earlier();

        Assessed again = assess(edited(survey, KINDS), earlier);

        assertThat(again.earlier().memory().worked()).isEmpty();
    }

    private static int count(Memory memory) {
        return memory.taken().values().stream().mapToInt(n -> n).sum();
    }

    private static Assessed assess(Survey survey, Earlier earlier) {
        return Assessor.assess(survey, List.of(), earlier, Progress.NONE);
    }

    private Survey edited(Survey s, int kind) {
        List<Moisture> moisture = s.readings().moisture();
        List<Tap> taps = s.readings().taps();
        List<Probe> probes = s.readings().probes();
        Moisture m = moisture.get(random.nextInt(moisture.size()));
        Tap tap = taps.get(random.nextInt(taps.size()));
        Settings settings = s.settings();
        Edit edit =
                switch (kind) {
                    case 0 -> Edit.replace(s, Part.MOISTURE, m, moisture(m.spot(), m.value() + 12));
                    case 1 -> Edit.replace(s, Part.MOISTURE, m, moisture(near(m.spot()), m.value()));
                    case 2 -> Edit.remove(s, Part.MOISTURE, m);
                    case 3 -> Edit.add(s, Part.TAPS, tap(new Spot("foredeck", 620, 410), Sound.HOLLOW));
                    case 4 -> Edit.replace(s, Part.TAPS, tap, tap(tap.spot(), Sound.DULL));
                    case 5 ->
                        Edit.add(
                                s,
                                Part.PROBES,
                                new Probe(HERE, "P9", new Spot("foredeck", 640, 545), 3, CoreState.DRY, null));
                    case 6 -> Edit.remove(s, Part.PROBES, probes.get(0));
                    case 7 ->
                        Edit.put(
                                Part.SETTINGS,
                                settings(settings, settings.drilling().pressureKPa() + 5));
                    case 8 -> Edit.add(s, Part.features("foredeck"), fitting(700, 560));
                    case 9 -> Edit.remove(s, Part.features("foredeck"), feature(s, "rib"));
                    case 10 -> {
                        Meter a = s.meters().get(0);
                        yield Edit.replace(
                                s, Part.METERS, a, new Meter(a.name(), a.kind(), a.fullScale(), 9.0, a.wet()));
                    }
                    case 11 ->
                        Edit.add(
                                s,
                                Part.DOUBTS,
                                ReadingOverride.of(m, ReadingOverride.Trust.SET_ASIDE, "the meter slipped"));
                    case 12 -> new Edit.Together(List.of()); // undo: the state before the last
                    default -> Edit.add(s, Part.PHOTOS, new Photo(HERE, "deck.jpg", m.spot(), ""));
                };
        return kind == 12 && states.size() > 1 ? states.get(states.size() - 2) : edit.apply(s);
    }

    private static Spot near(Spot at) {
        return new Spot(at.face(), at.xMm() + 13, at.yMm() - 7);
    }

    private static Moisture moisture(Spot spot, double value) {
        return new Moisture(HERE, "M99", spot, value, false, "A", null, null, false, Side.OUTER, "");
    }

    private static Tap tap(Spot spot, Sound sound) {
        return new Tap(HERE, "T99", spot, sound, null, Side.OUTER);
    }

    private static Feature fitting(double x, double y) {
        return new Feature.Fitting(HERE, "ring", FACTORY.createPoint(new Coordinate(x, y)), true, false, 30);
    }

    private static Feature feature(Survey survey, String name) {
        return survey.faces().get(0).features().stream()
                .filter(f -> f.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Settings settings(Settings s, double pressureKPa) {
        Drilling d = s.drilling();
        return new Settings(
                s.thresholds(),
                new Drilling(
                        d.holeDiameterMm(),
                        d.edgeClearanceMm(),
                        d.depthMarginMm(),
                        pressureKPa,
                        d.rateMlPerS(),
                        d.reachSafety(),
                        d.reachCapMm(),
                        d.wasteFraction(),
                        d.mixingS(),
                        d.largestBatchG(),
                        d.highestFillMm(),
                        d.nozzleLengthMm(),
                        d.nozzleOuterMm(),
                        d.nozzleBoreMm()),
                s.resins(),
                s.costs(),
                s.crew(),
                s.climate(),
                s.numerics());
    }
}
