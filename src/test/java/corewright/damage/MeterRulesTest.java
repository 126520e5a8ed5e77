package corewright.damage;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import corewright.intake.SurveyFolder;
import corewright.reuse.Memory;
import corewright.survey.Finding;
import corewright.survey.Subject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a meter cannot tell is said once for all readings it holds for, and the map takes them for what they are worth. */
class MeterRulesTest {
    /** In the wet strip of the test deck, between two readings of 40 and more. */
    private static final double X = 300;

    private static final double Y = 525;

    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path dir;

    private static FaceDamage map(SurveyFolders folder) throws IOException {
        return Damage.fit(SurveyFolder.read(folder.path()).survey(), new Memory())
                .map()
                .faces()
                .get(0);
    }

    private static List<String> said(FaceDamage map) {
        return map.findings().stream()
                .filter(f -> f.subject() == Subject.METER)
                .map(Finding::message)
                .filter(m -> !m.contains("stand over empty space")) // true of this deck, whatever the meter
                .toList();
    }

    private static SurveyFolders noted(SurveyFolders folder, String column, String every) {
        String[] lines = folder.text("moisture.csv").split("\n");
        lines[0] += "," + column;
        for (int i = 1; i < lines.length; i++) {
            lines[i] += "," + every;
        }
        return folder.with("moisture.csv", String.join("\n", lines) + "\n");
    }

    @Test
    void overEmptySpaceAMeterIsNoProof() throws IOException {
        FaceDamage map = map(SurveyFolders.minimal(dir));

        assertThat(map.findings())
                .extracting(Finding::message)
                .anyMatch(m -> m.startsWith("6 moisture readings in bay foredeck-B1 stand over empty space"));
    }

    @Test
    void aGoodSurveyBreaksNoRule() throws IOException {
        FaceDamage map = map(SurveyFolders.minimal(dir));

        assertThat(said(map)).isEmpty();
        assertThat(map.surfaces().pWet().cellAt(X, Y)).isGreaterThan(0.9);
    }

    @Test
    void throughCarbonNothingIsRead() throws IOException {
        FaceDamage map = map(SurveyFolders.minimal(dir).replacing("survey.yaml", "e-glass-polyester", "carbon-epoxy"));

        assertThat(said(map))
                .singleElement()
                .asString()
                .startsWith("24 moisture readings of foredeck, first M1: they were taken through carbon skin");
        // what is left there is the pilot hole that found rot 180 mm off
        assertThat(map.surfaces().pWet().cellAt(X, Y)).isBetween(0.2, 0.8);
    }

    @Test
    void frostHidesWaterAndShowsNoDryCore() throws IOException {
        FaceDamage warm = map(noted(SurveyFolders.minimal(dir), "temperature", "12"));
        FaceDamage frozen =
                map(noted(SurveyFolders.minimal(Files.createDirectory(dir.resolve("b"))), "temperature", "-3"));

        assertThat(said(warm)).isEmpty();
        assertThat(said(frozen)).singleElement().asString().contains("below freezing");
        assertThat(frozen.surfaces().pWet().cellAt(X, Y)).isGreaterThan(0.9);
        // the dry end is no longer shown dry by the meter, only by the pilot hole 300 mm off
        assertThat(frozen.surfaces().pWet().cellAt(450, 75))
                .isGreaterThan(2 * warm.surfaces().pWet().cellAt(450, 75));
    }

    @Test
    void aWetSurfaceRaisesAReading() throws IOException {
        FaceDamage dry = map(SurveyFolders.minimal(dir));
        FaceDamage wet =
                map(noted(SurveyFolders.minimal(Files.createDirectory(dir.resolve("b"))), "note", "wet surface"));

        assertThat(said(wet)).singleElement().asString().contains("wet or salty surface");
        double sure = 1 - dry.surfaces().pWet().cellAt(X, Y);
        assertThat(1 - wet.surfaces().pWet().cellAt(X, Y)).isGreaterThan(10 * sure);
    }

    @Test
    void aWoodScaleDoesNotHoldOverFoam() throws IOException {
        FaceDamage map = map(SurveyFolders.minimal(dir)
                .replacing("survey.yaml", "core: balsa-150", "core: pvc-80")
                .replacing("survey.yaml", "wet: 25", "wet: 25, kind: pin"));

        assertThat(said(map)).singleElement().asString().contains("a pin meter over foam or honeycomb");
    }

    @Test
    void pilotHolesAtOnePlaceThatDisagreeAreDoubted() throws IOException {
        FaceDamage map = map(SurveyFolders.minimal(dir)
                .adding("probes.csv", "P4,480,555,0,dry\n")); // P2, 15 mm off, found 4.5 mm and rot

        assertThat(map.findings())
                .filteredOn(f -> f.subject() == Subject.CONTRADICTION)
                .extracting(Finding::message)
                .contains("the pilot holes P2 and P4, 15 mm apart, found 4.5 and 0 mm of empty space");
    }

    @Test
    void readingsAtOnePlaceThatDisagreeAreDoubted() throws IOException {
        FaceDamage map = map(SurveyFolders.minimal(dir).adding("moisture.csv", "M25,75,75,60,A\n")); // M1 there read 8

        assertThat(map.findings())
                .filteredOn(f -> f.subject() == Subject.CONTRADICTION)
                .extracting(Finding::message)
                .contains("2 readings at one place, M1 to M25, range from 8 to 60");
    }
}
