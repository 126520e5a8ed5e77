package corewright.stiffness;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import corewright.damage.Damage;
import corewright.damage.FaceDamage;
import corewright.intake.SurveyFolder;
import corewright.reuse.Memory;
import corewright.sandwich.spec.PanelSpec;
import corewright.survey.Feature;
import corewright.survey.Finding;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@SuppressWarnings("NullAway.Init") // JUnit sets the folder
class CoamingOfAHatchTest {
    private static final String BARE = "free,,,";
    private static final String UPSTAND = "coaming,60,8,";

    @TempDir
    private Path folder;

    /** A hatch of 300 x 200 mm in the middle of a deck of 900 x 600 mm; its edge is the softest place without a coaming. */
    @Test
    void stiffensTheDeckAndTakesTheFindingAway() throws IOException {
        StiffnessMap bare = stiffness(survey(hatch(300, BARE)));
        StiffnessMap stiff = stiffness(survey(hatch(300, UPSTAND)));

        assertThat(bare.findings())
                .extracting(Finding::message)
                .containsExactly(
                        "As built, the panel foredeck-P1 gives most at the edge of hatch, which has no coaming in the"
                                + " plan.");
        assertThat(stiff.findings()).isEmpty();
        // E t h3/12 of the upstand is 1.4e9 N mm2, that of 100 mm of the deck's own edge 0.35e9: far more than the
        // mesh's 1 %
        assertThat(built(stiff)).isGreaterThan(1.2 * built(bare));
    }

    /** Cut by the outline, three sides of the hatch are sides of the panel. */
    @Test
    void standsAlongAnOpeningAtTheEdgeToo() throws IOException {
        Survey notched = survey(hatch(700, UPSTAND));

        DeckPanel panel = only(notched);

        assertThat(panel.area().getNumInteriorRing()).isZero();
        assertThat(panel.upstand().orElseThrow().sides()).hasSize(3);
        assertThat(built(stiffness(notched))).isGreaterThan(1.02 * built(stiffness(survey(hatch(700, BARE)))));
    }

    @Test
    void ofTwoTheSofterIsTakenAndNoneWhereOneHasNone() throws IOException {
        Survey differ = survey(hatch(100, UPSTAND) + hatch(500, "coaming,40,8,"));
        Survey one = survey(hatch(100, UPSTAND) + hatch(500, BARE));

        assertThat(only(differ).upstand().orElseThrow().coaming())
                .isEqualTo(new Feature.Coaming(40, 8, Optional.empty()));
        assertThat(DeckPanels.of(differ, differ.faces().get(0)).findings())
                .extracting(Finding::message)
                .containsExactly("The coamings of openings in the panel foredeck-P1 differ.");
        assertThat(only(one).upstand()).isEmpty();
        assertThat(DeckPanels.of(one, one.faces().get(0)).findings())
                .extracting(Finding::message)
                .containsExactly("Some openings in the panel foredeck-P1 have a coaming and others have none.");
    }

    @Test
    void isOfTheDecksSkinUnlessItNamesAnother() throws IOException {
        Survey glass = survey(hatch(300, UPSTAND));
        Survey carbon = survey(hatch(300, UPSTAND + "carbon-epoxy"));

        String skin = glass.laminate("deck").skin();
        assertThat(beam(glass))
                .contains(new PanelSpec.Coaming(
                        60, 8, glass.materials().skin(skin).modulusMPa()));
        assertThat(beam(carbon)).contains(new PanelSpec.Coaming(60, 8, 55000)); // the built-in carbon-epoxy
    }

    private static Optional<PanelSpec.Coaming> beam(Survey survey) {
        FaceDamage face = Damage.fit(survey, new Memory()).map().faces().get(0);
        return new Patches(survey, face, only(survey)).asBuilt().openings().coaming();
    }

    private static DeckPanel only(Survey survey) {
        List<DeckPanel> panels = DeckPanels.of(survey, survey.faces().get(0)).panels();
        assertThat(panels).hasSize(1);
        return panels.get(0);
    }

    private static StiffnessMap stiffness(Survey survey) {
        return Stiffness.of(survey, Damage.fit(survey, new Memory()).map(), new Memory());
    }

    private static double built(StiffnessMap map) {
        return 1 / map.panels().get(0).in(State.AS_BUILT).feet().softest().deflectionMm();
    }

    /** From x on, 300 mm long. */
    private static String hatch(int x, String edge) {
        String corners = String.format(Locale.ROOT, "%d 200,%d 200,%d 400,%d 400,%d 200", x, x + 300, x + 300, x, x);
        return "foredeck,opening,hatch,\"POLYGON((" + corners + "))\"," + edge + "\n";
    }

    /** Dry and sound, read all over. */
    private Survey survey(String plan) throws IOException {
        StringBuilder moisture = new StringBuilder("id,x,y,value,meter\n");
        StringBuilder taps = new StringBuilder("id,x,y,sound\n");
        int n = 0;
        for (int x = 75; x < 900; x += 75) {
            for (int y = 75; y < 600; y += 75) {
                n++;
                moisture.append("M" + n + "," + x + "," + y + "," + (8 + n % 3) + ",A\n");
                taps.append("T" + n + "," + x + "," + y + ",sound\n");
            }
        }
        Path at = SurveyFolders.minimal(Files.createTempDirectory(folder, "deck"))
                .with(
                        "plan.csv",
                        "face,kind,name,wkt,edge,coaming_height_mm,coaming_thickness_mm,coaming_skin\n"
                                + "foredeck,outline,edge,\"POLYGON((0 0,900 0,900 600,0 600,0 0))\",simple,,,\n"
                                + plan)
                .with("moisture.csv", moisture.toString())
                .with("taps.csv", taps.toString())
                .with("probes.csv", "id,x,y,void_depth,core_state\nP1,75,525,0,dry\n")
                .path();
        return SurveyFolder.read(at).survey();
    }
}
