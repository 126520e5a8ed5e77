package corewright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import corewright.survey.FrozenPlan.PlannedHole;
import corewright.survey.NamedLog;
import corewright.survey.Survey;
import corewright.survey.WorkEntry;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The log as it is written at the boat: every line is understood, or named. */
class LogRowsTest {
    private static final String PLAN = """
            format: 1
            revision: 2
            surveyed: '2026-04-02'
            readings: {mark: 0a1b2c3d4e5f, moisture: 24, taps: 24, probes: 3, feelers: 0, plugs: 0}
            holes:
            - {name: R1-1, region: R1, face: foredeck, x: 300, y: 540, kind: injection, diameter_mm: 6, stop_mm: 7.5, grams: 21, standing: planned}
            - {name: R1-2, region: R1, face: foredeck, x: 400, y: 540, kind: injection, diameter_mm: 6, stop_mm: 7.5, grams: 21, standing: planned}
            - {name: R1-3, region: R1, face: foredeck, x: 500, y: 540, kind: injection, diameter_mm: 6, stop_mm: 7.5, grams: 21, standing: planned}
            - {name: R1-V1, region: R1, face: foredeck, x: 100, y: 560, kind: vent, diameter_mm: 6, stop_mm: 6, grams: 0, standing: planned}
            - {name: R1-N1, region: R1, face: foredeck, x: 150, y: 560, kind: nozzle, diameter_mm: 6, stop_mm: 0, grams: 5, standing: planned, access: locker, push_mm: 90}
            - {name: R2-2, region: R2, face: foredeck, x: 700, y: 540, kind: injection, diameter_mm: 6, stop_mm: 7.5, grams: 21, standing: planned}
            - {name: R2-4, region: R2, face: foredeck, x: 800, y: 540, kind: injection, diameter_mm: 6, stop_mm: 7.5, grams: 21, standing: dropped}
            """;

    /** Sixteen lines, and four more below, with slips of five kinds and more (name, number, double, older card, left out). */
    private static final String LOG = """
            hole,minutes,grams,ooze_at,cup,vent_shown,depth_felt,leak,stopped,note,who,resin_lot,card_revision
            R1-1,3,20,,1,,7.5,,,,Jo,L77,2
            r1-2,4,21,,1,V1,,,,,Jo,L77,2
            3,5 min,20 g,,1,,,,,,Jo,L77,2
            N1,1:05,5,,1,,,,,,Jo,L77,2
            n1,66,1,,1,,,,,topped up,Jo,L77,2
            R1/1,70,2,,2,,,,,,Jo,L77,2
            hole R1 3,71,2,,2,,,,,,Jo,L77,2
            V1,72,0,,2,,,,,plugged,Jo,L77,2
            R2-2,80,30,behind the coaming,2,,,under the berth,full,,Jo,L78,2
            2,81,10,,2,,,,,,Jo,L78,2
            R1-7,82,10,,2,,,,,,Jo,L78,2
            seven,83,10,,2,,,,,,Jo,L78,2
            R1-1,3,20,,1,,7.5,,,,Jo,L77,2
            R2-4,84,9,,2,,,,,,Jo,L78,2
            R1-2,85,9,,2,,,,,,Jo,L78,1
            R1-2,86,9,,2,,,,,,Jo,L78,3
            """;

    private static SurveyFolders folder(Path place, String log) {
        return SurveyFolders.minimal(place)
                .replacing(
                        "survey.yaml",
                        "probes: probes.csv }",
                        "probes: probes.csv, log: log.csv, repair_plan: repair-plan.yaml }")
                .with("repair-plan.yaml", PLAN)
                .with("log.csv", log);
    }

    @Test
    void everyLineIsUnderstoodOrNamed(@TempDir Path place) {
        SurveyFolders folder = folder(place, LOG);
        Survey survey = Reads.read(folder).survey();
        NamedLog log = NamedLog.of(
                survey.log(),
                survey.repairPlan().holes().stream().map(PlannedHole::name).toList());
        assertThat(log.entries())
                .extracting(e -> e.origin().line() + " " + e.hole())
                .containsExactly(
                        "2 R1-1", "3 R1-2", "4 R1-3", "5 R1-N1", "6 R1-N1", "7 R1-1", "8 R1-3", "9 R1-V1", "10 R2-2",
                        "11 R2-2", "15 R2-4", "16 R1-2", "17 R1-2");
        assertThat(Reads.findings(folder).stream().filter(f -> f.startsWith("log.csv")))
                .extracting(f -> f.substring(0, f.indexOf('.', "log.csv".length())))
                .containsExactlyInAnyOrder(
                        "log.csv:11: 2 is taken for R2-2, as the line before is of that card",
                        "log.csv:12: R1-7 is no hole of the plan",
                        "log.csv:13: seven is no hole of the plan",
                        "log.csv:14: R1-1 stands here a second time, with the same minute and grams",
                        "log.csv:15: R2-4 was left out before revision 2, and is in the log",
                        "log.csv:16: R1-2 was worked from a card of revision 1; the plan is revision 2",
                        "log.csv:17: R1-2 was worked from a card of revision 3; the plan is revision 2");
        WorkEntry fourth = survey.log().get(8);
        assertThat(List.of(fourth.leak(), fourth.stopped(), fourth.who(), fourth.resinLot()))
                .containsExactly("under the berth", "full", "Jo", "L78");
        assertThat(survey.log().get(3).afterS()).isEqualTo(65 * 60);
        assertThat(log.entries().get(1).ventShown()).isEqualTo("R1-V1");
    }

    @Test
    void whatCannotBeCountedIsRefusedWithItsLine(@TempDir Path place) {
        String more = "R1-1,soon,4,,,,,,,,,,\nR1-1,5,much,,,,,,,,,,\n,6,4,,,,,,,,,,\nR1-1,7,-4,,one,,,,,,,,\n";
        assertThat(Reads.complaints(folder(place, LOG + more)))
                .containsExactly(
                        "log.csv:18: minutes: found \"soon\", expected minutes since the first mix, such as 75 or 1:15",
                        "log.csv:19: grams: found \"much\", expected a number of grams",
                        "log.csv:20: hole: found nothing, expected the hole's name or its number on the card",
                        "log.csv:21: grams: found \"-4\", expected a number from 0 to 1000000",
                        "log.csv:21: cup: found \"one\", expected a whole number from 1");
    }
}
