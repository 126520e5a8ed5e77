package corewright.desktop.slip;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.Assessments;
import corewright.SurveyFolders;
import corewright.assessment.Ages;
import corewright.assessment.Assessment;
import corewright.damage.Region;
import corewright.desktop.MapChain;
import corewright.desktop.state.AtOnce;
import corewright.desktop.state.SurveyOpener;
import corewright.desktop.state.Units;
import corewright.desktop.state.Workbench;
import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.Origin;
import corewright.survey.Reading;
import corewright.survey.Spot;
import corewright.survey.Subject;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FindingLinesTest {
    private static final String FACE = "foredeck";
    private static final Spot AFAR = new Spot(FACE, 5000, 100);

    private static Assessment assessed(SurveyFolders folder) {
        Workbench bench = new Workbench(new AtOnce(), MapChain::assess);
        bench.open("survey", () -> SurveyOpener.open(folder.path()));
        Assessment found = bench.found().orElseThrow();
        bench.close();
        return found;
    }

    private static Assessment with(Assessment a, Finding... more) {
        List<Finding> findings =
                Stream.concat(a.findings().stream(), Stream.of(more)).toList();
        return Assessments.of(a.survey(), a.damage(), a.stiffness(), a.plans(), a.decision(), findings, a.next());
    }

    private static Finding finding(About about, Subject subject) {
        return new Finding(Finding.Severity.DOUBT, new Origin("x", 1), about, subject, about + " it is", "so");
    }

    private static About reading(String id) {
        return new About.OfReading(new Reading.Key(Reading.Kind.TAP, id, AFAR), AFAR);
    }

    private static List<Slip.FindingLine> afar(List<Slip.FindingLine> lines) {
        return lines.stream().filter(l -> AFAR.equals(l.spot())).toList();
    }

    @Test
    void aFindingOnAReadingCalledAsARegionSelectsNoRegion(@TempDir Path dir) {
        Assessment found = assessed(SurveyFolders.minimal(dir));
        Region region = found.damage().regions().get(0);
        Assessment told = with(
                found,
                finding(reading(region.id()), Subject.CONTRADICTION),
                finding(new About.OfRegion(region.id(), AFAR), Subject.DRY_CORE));

        assertThat(afar(FindingLines.of(told, FACE, Units.METRIC)))
                .extracting(Slip.FindingLine::region)
                .containsExactly("", region.id());
        assertThat(afar(FindingLines.of(told, region)))
                .as("in the region's own slip")
                .extracting(Slip.FindingLine::region)
                .containsExactly(region.id());
    }

    /** A reading's place alone may not bring back as a figure what the verdict withholds. */
    @Test
    void aFaceWithoutAVerdictHasNoAreaCalledSound(@TempDir Path dir) {
        Assessment found = assessed(SurveyFolders.minimal(dir));
        Origin origin = new Origin("moisture.csv", 0);
        Finding doubt = new Finding(
                Finding.Severity.HAZARD,
                origin,
                new About.OfFile(origin),
                Subject.PLAUSIBILITY,
                "Are they in metres?",
                "so");
        Assessment doubted = Assessments.of(
                found.survey(),
                found.damage().withheld("No verdict yet."),
                found.stiffness(),
                found.plans(),
                found.decision(),
                List.of(doubt),
                found.next());

        assertThat(SlipWords.of(found, Units.METRIC, Ages.FRESH).face(FACE).facts())
                .extracting(Slip.Fact::name)
                .contains("sound");
        Slip slip = SlipWords.of(doubted, Units.METRIC, Ages.FRESH).face(FACE);
        assertThat(slip.facts()).extracting(Slip.Fact::name).containsExactly("rests on");
        assertThat(slip.range()).isNull();
        assertThat(slip.toString()).contains("No verdict yet. Are they in metres?");
    }

    /** Both the check of the files and the map know that a reading lies outside; it is one fact. */
    @Test
    void aReadingOutsideIsToldOnce(@TempDir Path dir) {
        Assessment found = assessed(SurveyFolders.minimal(dir).adding("taps.csv", "T99,5000,100,sound\n"));

        assertThat(found.findings().stream().filter(f -> AFAR.equals(f.about().spot())))
                .extracting(Finding::message)
                .containsExactly("Tap T99 at (5000, 100) mm lies outside the outline of foredeck.");
        assertThat(afar(FindingLines.of(found, FACE, Units.METRIC))).hasSize(1);
    }

    @Test
    void whatConcernsAnotherFaceIsNotToldOfThisOne(@TempDir Path dir) {
        Assessment found = with(
                assessed(SurveyFolders.minimal(dir)),
                finding(new About.OfFace("cabin"), Subject.NO_TAPS),
                finding(new About.OfBay("cabin-B1", "cabin"), Subject.NO_TAPS),
                finding(new About.OfFile(new Origin("x.csv", 3)), Subject.UNUSED_COLUMNS));

        assertThat(FindingLines.of(found, FACE, Units.METRIC))
                .extracting(Slip.FindingLine::fact)
                .anyMatch(f -> f.contains("x.csv"))
                .noneMatch(f -> f.contains("cabin"));
    }

    /** A pilot hole may contradict what is known of water and of the bond; it is one reading. */
    @Test
    void aReadingThatIsDoubtedTwiceIsOneOfThoseCounted(@TempDir Path dir) {
        Assessment found = with(
                assessed(SurveyFolders.minimal(dir)),
                finding(reading("T1"), Subject.CONTRADICTION),
                finding(reading("T1"), Subject.CONTRADICTION),
                finding(reading("T2"), Subject.CONTRADICTION),
                finding(reading("T3"), Subject.CONTRADICTION));

        assertThat(FindingLines.of(found, FACE, Units.METRIC))
                .extracting(Slip.FindingLine::fact)
                .contains("3 readings contradict their neighbours.");
    }
}
