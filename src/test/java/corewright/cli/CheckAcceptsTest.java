package corewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Odd but usable surveys: exit 0, and findings that say what cannot be known. */
class CheckAcceptsTest {
    private static final String GUESSED = "    How far it reaches and how sure that is can only be guessed from them.";
    private static final String ONLY_MOISTURE =
            "files: { plan: plan.csv, moisture: moisture.csv, taps: taps.csv, probes: probes.csv }";

    private static String check(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = Corewright.run(new PrintWriter(out), new PrintWriter(err), arguments);
        assertThat(err.toString()).isEmpty();
        assertThat(status).isZero();
        return out.toString();
    }

    private static void prints(SurveyFolders folder, String... lines) {
        assertThat(check("check", folder.path().toString()).lines()).containsExactly(lines);
    }

    @Test
    void aWholeSurvey(@TempDir Path dir) {
        prints(SurveyFolders.minimal(dir), "Test deck: faces 1; readings: moisture 24, taps 24, probes 3; findings 0.");
    }

    @Test
    void oneReading(@TempDir Path dir) {
        prints(
                SurveyFolders.minimal(dir)
                        .replacing("survey.yaml", ONLY_MOISTURE, "files: { plan: plan.csv, moisture: moisture.csv }")
                        .with("moisture.csv", "x,y,value\n100,100,12\n"),
                "No verdict is given. Too little of the foredeck was read to say anything of it.",
                "? survey.yaml: No tap was made on foredeck.",
                "    Where the skin is loose cannot be known away from the probes; wet core may hide a loose skin.",
                "? survey.yaml: No pilot hole was drilled on foredeck.",
                "    Void depth and volume cannot be known, nor whether the core is dry: no repair by injection before"
                        + " pilot holes have shown it.",
                "? survey.yaml: Only 1 moisture reading was taken on foredeck.",
                GUESSED,
                "+ survey.yaml: survey.yaml does not name probes.csv, taps.csv under files.",
                "    What is in them is not used.",
                "Test deck: faces 1; readings: moisture 1; findings 4.");
    }

    @Test
    void allReadingsEqual(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir);
        folder.with("moisture.csv", folder.text("moisture.csv").replaceAll("(?m),[0-9]+,A$", ",12,A"))
                .with("taps.csv", folder.text("taps.csv").replace("hollow", "sound"));

        prints(
                folder,
                "? survey.yaml: All 24 readings of meter A on foredeck are 12.",
                "    An even deck reads so, and so does a meter that is stuck or off: nothing here shows where wet"
                        + " begins.",
                "+ survey.yaml: All 24 taps on foredeck sound \"sound\".",
                "    They show no edge between bonded and loose skin.",
                "Test deck: faces 1; readings: moisture 24, taps 24, probes 3; findings 2.");
    }

    @Test
    void readingsOutsideTheOutlineAndInAnOpening(@TempDir Path dir) {
        prints(
                SurveyFolders.minimal(dir)
                        .adding(
                                "plan.csv",
                                "foredeck,opening,hatch,\"POLYGON((700 10,760 10,760 50,700 50,700 10))\",,,,,\n")
                        .adding("moisture.csv", "M25,950.5,100,12,A\n")
                        .adding("taps.csv", "T25,720,30,hollow\n"),
                "? moisture.csv:26 M25: Moisture reading M25 at (950.5, 100) mm lies outside the outline of foredeck.",
                "    It is kept in the survey but says nothing of the deck.",
                "? taps.csv:26 T25: Tap T25 at (720, 30) mm lies in the opening \"hatch\".",
                "    It is kept in the survey but says nothing of the deck.",
                "Test deck: faces 1; readings: moisture 25, taps 25, probes 3; findings 2.");
    }

    @Test
    void noTaps(@TempDir Path dir) {
        prints(
                SurveyFolders.minimal(dir).with("taps.csv", "id,x,y,sound\n"),
                "The foredeck was not tapped.",
                "? survey.yaml: No tap was made on foredeck.",
                "    Where the skin is loose cannot be known away from the probes; wet core may hide a loose skin.",
                "Test deck: faces 1; readings: moisture 24, probes 3; findings 1.");
    }

    @Test
    void noProbes(@TempDir Path dir) {
        prints(
                SurveyFolders.minimal(dir).replacing("survey.yaml", ", probes: probes.csv", ""),
                "? survey.yaml: No pilot hole was drilled on foredeck.",
                "    Void depth and volume cannot be known, nor whether the core is dry: no repair by injection before"
                        + " pilot holes have shown it.",
                "+ survey.yaml: survey.yaml does not name probes.csv under files.",
                "    What is in them is not used.",
                "Test deck: faces 1; readings: moisture 24, taps 24; findings 2.");
    }

    @Test
    void aFaceWithoutReadings(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .replacing("survey.yaml", "  - { name: foredeck", "  - { name: sole }\n  - { name: foredeck")
                .adding("plan.csv", "sole,outline,,\"POLYGON((0 0,900 0,900 600,0 600,0 0))\",,,,,\n")
                .with("moisture.csv", "x,y,value,face\n" + "100,100,12,foredeck\n300,300,40,foredeck\n".repeat(10))
                .with("taps.csv", "x,y,sound,face\n" + "100,100,sound,foredeck\n300,300,dull,foredeck\n".repeat(10))
                .with("probes.csv", "x,y,void_depth,face\n100,100,0,foredeck\n");

        prints(
                folder,
                "No verdict is given. Too little of the sole was read to say anything of it. Too little of the foredeck was"
                        + " read to say anything of it.",
                "! survey.yaml: No moisture reading, tap or probe was taken on sole.",
                "    Nothing can be said of this face, good or bad.",
                "Test deck: faces 2; readings: moisture 20, taps 20, probes 1; findings 1.");
    }

    @Test
    void findingsComeAsJsonToo(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .adding("moisture.csv", "M25,950.5,100,12,A\n")
                .with("probes.csv", "x,y,void_depth\n");

        assertThat(check("check", folder.path().toString(), "--json").lines().map(String::strip))
                .containsExactly(
                        "{",
                        "\"survey\" : \"Test deck\",",
                        "\"verdict\" : \"\",",
                        "\"faces\" : 1,",
                        "\"readings\" : {",
                        "\"moisture\" : 25,",
                        "\"taps\" : 24,",
                        "\"probes\" : 0,",
                        "\"feelers\" : 0,",
                        "\"plugs\" : 0,",
                        "\"temperatures\" : 0,",
                        "\"cured_taps\" : 0",
                        "},",
                        "\"findings\" : [ {",
                        "\"severity\" : \"doubt\",",
                        "\"file\" : \"moisture.csv\",",
                        "\"line\" : 26,",
                        "\"id\" : \"M25\",",
                        "\"face\" : \"foredeck\",",
                        "\"x\" : 950.5,",
                        "\"y\" : 100.0,",
                        "\"subject\" : \"outside\",",
                        "\"message\" : \"Moisture reading M25 at (950.5, 100) mm lies outside the outline of"
                                + " foredeck.\",",
                        "\"effect\" : \"It is kept in the survey but says nothing of the deck.\"",
                        "}, {",
                        "\"severity\" : \"doubt\",",
                        "\"file\" : \"survey.yaml\",",
                        "\"line\" : 0,",
                        "\"id\" : \"\",",
                        "\"face\" : \"\",",
                        "\"x\" : null,",
                        "\"y\" : null,",
                        "\"subject\" : \"no probes\",",
                        "\"message\" : \"No pilot hole was drilled on foredeck.\",",
                        "\"effect\" : \"Void depth and volume cannot be known, nor whether the core is dry: no repair"
                                + " by injection before pilot holes have shown it.\"",
                        "} ]",
                        "}");
    }

    @Test
    void theTrialDeck() {
        assertThat(check("check", "src/test/resources/trial-decks/deck12").lines())
                .last()
                .isEqualTo("Trial deck 12: faces 1; readings: moisture 72, taps 317, probes 20; findings 2.");
    }
}
