package corewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each thing a survey is refused for, as a person meets it: one clear line, exit 3, no stack trace. */
class CheckRefusesTest {
    private static void refused(Path folder, String... complaints) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();

        int status = Corewright.run(new PrintWriter(out), new PrintWriter(err), "check", folder.toString());

        assertThat(err.toString().lines()).containsExactly(complaints);
        assertThat(out.toString()).isEmpty();
        assertThat(status).isEqualTo(3);
    }

    @Test
    void aMissingFile(@TempDir Path dir) {
        refused(
                SurveyFolders.minimal(dir).without("moisture.csv").path(),
                "survey.yaml:7: files.moisture: file \"moisture.csv\" is not in the folder");
    }

    @Test
    void aMissingPlan(@TempDir Path dir) {
        refused(
                SurveyFolders.minimal(dir)
                        .replacing("survey.yaml", "plan: plan.csv, ", "")
                        .path(),
                "survey.yaml:7: files.plan: found nothing, expected a file name such as plan.csv");
    }

    @Test
    void aMissingSurveyFile(@TempDir Path dir) {
        refused(
                SurveyFolders.minimal(dir).without("survey.yaml").path(),
                "survey.yaml: file \"survey.yaml\" is not in the folder");
    }

    @Test
    void aMissingFolder(@TempDir Path dir) {
        Path nowhere = dir.resolve("nowhere");
        refused(nowhere, nowhere + ": there is no such folder");
    }

    @Test
    void aMissingRequiredColumn(@TempDir Path dir) {
        refused(
                SurveyFolders.minimal(dir)
                        .replacing("moisture.csv", "id,x,y,value,meter", "id,x,y,reading,meter")
                        .path(),
                "moisture.csv:1: value: the column is missing, found id, x, y, reading, meter");
    }

    @Test
    void textInANumberAndAWordItDoesNotKnow(@TempDir Path dir) {
        refused(
                SurveyFolders.minimal(dir)
                        .replacing("moisture.csv", "M13,75,375,8,A", "M13,75,375,4l.5,A")
                        .replacing("taps.csv", "T13,70,370,sound", "T13,70,370,holow")
                        .path(),
                "moisture.csv:14: value: found \"4l.5\", expected a number",
                "taps.csv:14: sound: found \"holow\", expected sound, dull or hollow");
    }

    @Test
    void anUnclosedQuote(@TempDir Path dir) {
        refused(
                SurveyFolders.minimal(dir)
                        .replacing("taps.csv", "T20,220,520,hollow", "\"T20,220,520,hollow")
                        .path(),
                "taps.csv:21: a quotation mark is opened here that is not closed, or text follows the closing one");
    }

    @Test
    void binaryNoise(@TempDir Path dir) {
        byte[] noise = new byte[5000];
        new Random(1).nextBytes(noise);
        refused(
                SurveyFolders.minimal(dir)
                        .with("probes.csv", noise)
                        .with("survey.yaml", noise)
                        .path(),
                "survey.yaml: the file is not readable text, expected UTF-8, UTF-16 or Latin-1");
    }

    @Test
    void binaryNoiseInAReadingFile(@TempDir Path dir) {
        byte[] noise = new byte[200];
        new Random(2).nextBytes(noise);
        refused(
                SurveyFolders.minimal(dir).with("probes.csv", noise).path(),
                "probes.csv: the file is not readable text, expected UTF-8, UTF-16 or Latin-1");
    }

    @Test
    void anOutlineThatCrossesItself(@TempDir Path dir) {
        refused(
                SurveyFolders.minimal(dir)
                        .replacing("plan.csv", "900 0,900 600,0 600", "900 600,900 0,0 600")
                        .path(),
                "plan.csv:2: wkt: found an outline that crosses or touches itself near (450 300), expected one that"
                        + " does not");
    }

    @Test
    void noReadingAtAll(@TempDir Path dir) {
        refused(
                SurveyFolders.minimal(dir)
                        .with("moisture.csv", "id,x,y,value\n")
                        .with("taps.csv", "id,x,y,sound\n")
                        .with("probes.csv", "id,x,y,void_depth\n")
                        .path(),
                "survey.yaml: files: found no reading at all, expected at least one of moisture, taps or probes");
    }

    @Test
    void aFaceWithoutAnOutlineAndReadingsWithoutAFace(@TempDir Path dir) {
        refused(
                SurveyFolders.minimal(dir)
                        .replacing("survey.yaml", "  - { name: foredeck", "  - { name: sole }\n  - { name: foredeck")
                        .with("probes.csv", "x,y,void_depth\n1,1,0\n")
                        .with("moisture.csv", "x,y,value,face\n1,1,7,foredeck\n1,2,7,hold\n")
                        .with("taps.csv", "x,y,sound,face\n1,1,dull,foredeck\n")
                        .path(),
                "survey.yaml:6: faces[1]: the plan has no row of kind outline for face \"sole\"",
                "moisture.csv:3: face: found \"hold\", expected sole or foredeck",
                "probes.csv:2: face: found nothing, expected sole or foredeck");
    }

    @Test
    void anUnknownLaminate(@TempDir Path dir) {
        refused(
                SurveyFolders.minimal(dir)
                        .replacing("plan.csv", ",deck\n", ",hull\n")
                        .path(),
                "plan.csv:2: laminate: found \"hull\", expected deck");
    }

    @Test
    void aPathThatLeavesTheFolder(@TempDir Path dir) throws Exception {
        Path outside = Files.writeString(dir.resolve("secret.csv"), "id,x,y,sound\n");
        SurveyFolders folder = SurveyFolders.minimal(dir);
        String yaml = folder.text("survey.yaml");

        folder.with("survey.yaml", yaml.replace("taps: taps.csv", "taps: ../secret.csv"));
        refused(
                folder.path(),
                "survey.yaml:7: files.taps: \"../secret.csv\" leads outside the survey folder, expected a file inside it");
        folder.with("survey.yaml", yaml.replace("taps: taps.csv", "taps: " + outside));
        refused(
                folder.path(),
                "survey.yaml:7: files.taps: \"" + outside
                        + "\" leads outside the survey folder, expected a file inside it");
        folder.with("survey.yaml", yaml.replace("taps: taps.csv", "taps: link.csv"));
        Files.createSymbolicLink(folder.path().resolve("link.csv"), outside);
        refused(
                folder.path(),
                "survey.yaml:7: files.taps: \"link.csv\" leads outside the survey folder, expected a file inside it");
    }

    /** Nine levels of nine aliases each would be 387 million values. */
    @Test
    void aYamlAliasBomb(@TempDir Path dir) {
        StringBuilder bomb = new StringBuilder("a1: &a1 [lol, lol, lol, lol, lol, lol, lol, lol, lol]\n");
        for (int i = 2; i <= 9; i++) {
            String alias = "*a" + (i - 1);
            bomb.append("a").append(i).append(": &a").append(i).append(" [");
            bomb.append(String.join(", ", Collections.nCopies(9, alias))).append("]\n");
        }
        refused(
                SurveyFolders.minimal(dir)
                        .adding("survey.yaml", bomb.toString())
                        .path(),
                "survey.yaml: this YAML is not accepted: Number of aliases for non-scalar nodes exceeds the specified"
                        + " max=50");
    }

    /** Few enough aliases for the parser's own limit, yet 6^7 values. */
    @Test
    void aSmallerYamlAliasBomb(@TempDir Path dir) {
        StringBuilder bomb = new StringBuilder("a1: &a1 [lol, lol, lol, lol, lol, lol]\n");
        for (int i = 2; i <= 8; i++) {
            String alias = "*a" + (i - 1);
            bomb.append("a").append(i).append(": &a").append(i).append(" [");
            bomb.append(String.join(", ", Collections.nCopies(6, alias))).append("]\n");
        }
        refused(
                SurveyFolders.minimal(dir)
                        .adding("survey.yaml", bomb.toString())
                        .path(),
                "survey.yaml:12: expected at most 50000 values, with those repeated by aliases");
    }

    @Test
    void everythingWrongInEveryFileIsSaidAtOnceInOrder(@TempDir Path dir) {
        refused(
                SurveyFolders.minimal(dir)
                        .replacing("survey.yaml", "dry: 10", "dry: 30")
                        .replacing("survey.yaml", "balsa-150", "cork")
                        .replacing("plan.csv", "fitting", "cleat")
                        .replacing("moisture.csv", "M2,225", "M2,abc")
                        .replacing("moisture.csv", "M4,525,75,8,A", "M4,525,75,-3,B")
                        .replacing("taps.csv", "T3,370,70,sound", "T3,370,1e308,hollo")
                        .replacing("probes.csv", "4.5,rotted", "-4.5,rot")
                        .path(),
                "survey.yaml:9: meters[1].wet: found \"25\", expected more than dry, which is 30",
                "survey.yaml:11: laminates[1].core: found \"cork\", expected balsa-100, balsa-150, balsa-220,"
                        + " honeycomb-aramid-48, honeycomb-pp-80, plywood, pvc-100, pvc-130, pvc-200, pvc-60 or pvc-80",
                "plan.csv:3: kind: found \"cleat\", expected outline, opening, divider, support, fitting, solid,"
                        + " laminate, disturbance or access",
                "moisture.csv:3: x: found \"abc\", expected a length in mm",
                "moisture.csv:5: meter: found \"B\", expected A",
                "moisture.csv:5: value: found \"-3\", expected a number that is not negative",
                "taps.csv:4: y: found \"1e308\", expected a length in mm",
                "taps.csv:4: sound: found \"hollo\", expected sound, dull or hollow",
                "probes.csv:3: void_depth: found \"-4.5\", expected a length in mm, not negative",
                "probes.csv:3: core_state: found \"rot\", expected dry, damp, wet, rotted or none");
    }

    @Test
    void complaintsComeAsJsonToo(@TempDir Path dir) {
        Path folder = SurveyFolders.minimal(dir)
                .replacing("moisture.csv", "M13,75,375,8,A", "M13,75,375,4l.5,A")
                .path();
        StringWriter out = new StringWriter();

        int status = Corewright.run(
                new PrintWriter(out), new PrintWriter(new StringWriter()), "check", "--json", folder.toString());

        assertThat(status).isEqualTo(3);
        assertThat(out.toString().replaceAll("\\s+", " ").strip())
                .isEqualTo("{ \"complaints\" : [ { \"file\" : \"moisture.csv\", \"line\" : 14, \"column\" : \"value\","
                        + " \"problem\" : \"found \\\"4l.5\\\", expected a number\" } ] }");
    }
}
