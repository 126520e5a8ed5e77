package corewright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import corewright.SurveyFolders;
import corewright.intake.text.RefusedException;
import corewright.store.RepairPlanText;
import corewright.survey.FrozenPlan;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.NullUnmarked;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A repair plan is read to the last digit, or refused with the place of what is wrong. */
@NullUnmarked // JUnit fills the folders
class RepairPlanYamlTest {
    private static final String PLAN = """
            format: 1
            revision: 2
            surveyed: '2026-04-02'
            readings: {mark: 0a1b2c3d4e5f, moisture: 24, taps: 24, probes: 3, feelers: 0, plugs: 0}
            regions:
            - {name: R1, face: foredeck, x: 450, y: 540.5, method: inject, standing: planned}
            holes:
            - {name: R1-1, region: R1, face: foredeck, x: 300, y: 540, kind: injection, diameter_mm: 6.4, stop_mm: 7.5, grams: 21.3, standing: held}
            - {name: R1-2, region: R1, face: foredeck, x: 600, y: 540, kind: injection, diameter_mm: 6.4, stop_mm: 7.5, grams: 20, standing: dropped}
            - {name: R1-V1, region: R1, face: foredeck, x: 100, y: 560, kind: vent, diameter_mm: 6.4, stop_mm: 6, grams: 0, standing: planned}
            - {name: R1-N1, region: R1, face: foredeck, x: 150, y: 560, kind: nozzle, diameter_mm: 6, stop_mm: 0, grams: 5, standing: planned, access: locker, push_mm: 90}
            cuts:
            - {region: R2, face: foredeck, area: 'POLYGON ((0 0, 100 0, 100 100, 0 0))'}
            cups:
            - {cup: 1, region: R1, holes: R1-1 R1-N1, part_a_g: 20.5, part_b_g: 9.3}
            buying:
            - {item: epoxy foam, plan: 29.8, buy: 60, unit: g}
            """;

    @TempDir
    private Path place;

    private SurveyFolders folder;

    @BeforeEach
    void make() {
        folder = SurveyFolders.minimal(place)
                .replacing("survey.yaml", "probes: probes.csv }", "probes: probes.csv, repair_plan: repair-plan.yaml }")
                .with("repair-plan.yaml", PLAN);
    }

    @Test
    void itIsReadAndWrittenTheSame() {
        FrozenPlan plan = Reads.read(folder).survey().repairPlan();
        assertThat(plan.revision()).isEqualTo(2);
        assertThat(plan.holes()).hasSize(4);
        assertThat(RepairPlanText.of(plan)).isEqualTo(PLAN);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "revision: 2 | revision: two | repair-plan.yaml:2: revision: found \"two\", expected a number",
                "x: 300 | x: NaN | repair-plan.yaml:8: holes[1].x: found \"NaN\", expected a number",
                "x: 300 | x: .inf | repair-plan.yaml:8: holes[1].x: found \".inf\", expected a number",
                "x: 300 | x: [1] | repair-plan.yaml:8: holes[1].x: found \"a list\", expected a number",
                "name: R1-2, | name: r1-1, | repair-plan.yaml:9: holes[2].name: two holes are called \"r1-1\"",
                "name: R1-2, | name: R1 2, | repair-plan.yaml:9: holes[2].name: found \"R1 2\", expected a name such as R1-3,"
                        + " of letters, digits and -",
                "face: foredeck, x: 100 | face: sole, x: 100 | repair-plan.yaml:10: holes[3].face: found \"sole\", expected"
                        + " foredeck",
                "kind: vent | kind: window | repair-plan.yaml:10: holes[3].kind: found \"window\", expected injection, vent or"
                        + " nozzle",
                "grams: 20, | grams: -20, | repair-plan.yaml:9: holes[2].grams: found \"-20\", expected a number from 0 to"
                        + " 1000000",
                "100 100, 0 0 | 100 100, 0 1 | repair-plan.yaml:13: cuts[1].area: found a ring that is not closed, expected its"
                        + " last point to repeat its first",
                "R1-1 R1-N1 | R1-9 | repair-plan.yaml:15: cups[1].holes: found \"R1-9\", expected holes of this plan",
                "unit: g | weight: g | repair-plan.yaml:17: buying[1].weight: this key is not known, expected item, plan, buy or"
                        + " unit",
                "format: 1 | format: 9 | repair-plan.yaml:1: format: found \"9\", expected 1",
            })
    void whatIsWrongIsNamedWithItsPlace(String from, String to, String complaint) {
        folder.replacing("repair-plan.yaml", from, to);
        assertThat(Reads.complaints(folder)).contains(complaint);
    }

    @Test
    void aMissingFileIsAComplaint() {
        folder.without("repair-plan.yaml");
        assertThat(Reads.complaints(folder))
                .containsExactly("survey.yaml:7: files.repair_plan: file \"repair-plan.yaml\" is not in the folder");
    }

    /** Cut off, letters exchanged, lines doubled and moved: read or refused, nothing else comes out. */
    @Test
    void spoiledFilesAreReadOrRefused() {
        Random random = new Random(16);
        int refused = 0;
        for (int i = 0; i < 400; i++) {
            StringBuilder text = new StringBuilder(PLAN);
            switch (random.nextInt(4)) {
                case 0 -> text.setLength(random.nextInt(text.length()));
                case 1 -> text.setCharAt(random.nextInt(text.length()), (char) (32 + random.nextInt(95)));
                case 2 ->
                    text.insert(
                            random.nextInt(text.length()),
                            List.of("NaN", "\t", "- ", "{", "'", "!!x ", "&a ", "*a")
                                    .get(random.nextInt(8)));
                default -> {
                    String[] lines = PLAN.split("\n", -1);
                    text.append(lines[random.nextInt(lines.length)]).append('\n');
                }
            }
            folder.with("repair-plan.yaml", text.toString());
            try {
                SurveyFolder.read(folder.path());
            } catch (RefusedException e) {
                refused++;
                assertThat(e.complaints()).isNotEmpty().allSatisfy(c -> assertThat(c.toString())
                        .startsWith("repair-plan.yaml"));
            } catch (Exception e) {
                throw new AssertionError("spoiled in the way " + i + ":\n" + text, e);
            }
        }
        assertThat(refused).isBetween(100, 390); // both outcomes are common
        assertThatCode(() ->
                        SurveyFolder.read(folder.with("repair-plan.yaml", PLAN).path()))
                .doesNotThrowAnyException();
    }
}
