package corewright.stiffness;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import corewright.damage.Condition;
import corewright.damage.Damage;
import corewright.damage.DamageMap;
import corewright.damage.Region;
import corewright.intake.SurveyFolder;
import corewright.reuse.Memory;
import corewright.sandwich.Margin;
import corewright.survey.DeckLoad;
import corewright.survey.Part;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Geometry;

/** A deck with an empty space and a wet corner under an even load. */
@SuppressWarnings("NullAway.Init") // JUnit sets the folder
class RepairMarginsTest {
    @TempDir
    private Path folder;

    @Test
    void wetCoreIsHeldAgainstItsOwnStrengthAndRepairsAgainstTheirBond() throws IOException {
        Survey survey = survey();
        DamageMap damage = Damage.fit(survey, new Memory()).map();
        StiffnessMap map = Stiffness.of(survey, damage, new Memory());
        Region empty = only(damage, Condition.VOID);
        Region wet = only(damage, Condition.WET);
        String core = survey.laminate("deck").core();
        List<Treatment> advised = List.of(
                new Treatment.Fill(
                        "foredeck", empty.likely(), survey.settings().resins().get(0)),
                new Treatment.Renew("foredeck", wet.likely(), core));

        LoadCase load = Stiffness.gains(survey, damage, map, List.of(), advised, new Memory())
                .map()
                .panels()
                .get(0)
                .cases()
                .get(0);

        List<Margin> built = load.in(State.AS_BUILT).margins();
        List<Margin> found = load.in(State.AS_FOUND).margins();
        List<Margin> planned = load.in(State.AFTER_PLAN).margins();
        assertThat(built).extracting(Margin::what).contains("core shear").noneMatch(RepairMarginsTest::ofAnotherCore);
        assertThat(find(found, "core shear, wet").capacityMPa())
                .isEqualTo(0.7 * survey.materials().core(core).shearStrengthMPa());
        assertThat(place(survey, find(found, "core shear, wet")).within(wet.likely()))
                .isTrue();
        assertThat(found).extracting(Margin::what).noneMatch(w -> w.startsWith("repair bond"));
        for (String bond : List.of("repair bond, shear", "repair bond, peel")) {
            assertThat(place(survey, find(planned, bond + ", foam")).within(empty.likely()))
                    .isTrue();
            assertThat(place(survey, find(planned, bond + ", new core")).within(wet.likely()))
                    .as("the same core as before, yet with a bond")
                    .isTrue();
        }
        assertThat(planned).extracting(Margin::what).doesNotContain("core shear, wet");
    }

    private static boolean ofAnotherCore(String what) {
        return what.endsWith(", wet") || what.endsWith(", foam") || what.endsWith(", new core");
    }

    private static Region only(DamageMap damage, Condition condition) {
        List<Region> found = damage.regions().stream()
                .filter(r -> r.condition() == condition)
                .toList();
        assertThat(found).as(condition.toString()).hasSize(1);
        return found.get(0);
    }

    private static Margin find(List<Margin> margins, String what) {
        return margins.stream().filter(m -> m.what().equals(what)).findFirst().orElseThrow();
    }

    private static Geometry place(Survey survey, Margin margin) {
        return survey.faces()
                .get(0)
                .outline()
                .getFactory()
                .createPoint(new org.locationtech.jts.geom.Coordinate(margin.x(), margin.y()));
    }

    private Survey survey() throws IOException {
        StringBuilder moisture = new StringBuilder("id,x,y,value,meter\n");
        StringBuilder taps = new StringBuilder("id,x,y,sound\n");
        int n = 0;
        for (int x = 50; x < 1200; x += 50) {
            for (int y = 50; y < 600; y += 50) {
                n++;
                boolean wet = x < 350 && y < 350;
                boolean hollow = Math.hypot(x - 800, y - 300) < 170;
                moisture.append("M" + n + "," + x + "," + y + "," + (wet ? 60 : 8 + n % 3) + ",A\n");
                taps.append("T" + n + "," + x + "," + y + "," + (hollow ? "hollow" : "sound") + "\n");
            }
        }
        Path at = SurveyFolders.minimal(folder)
                .with(
                        "plan.csv",
                        "face,kind,name,wkt,edge\n"
                                + "foredeck,outline,edge,\"POLYGON((0 0,1200 0,1200 600,0 600,0 0))\",simple\n")
                .with("moisture.csv", moisture.toString())
                .with("taps.csv", taps.toString())
                .with(
                        "probes.csv",
                        "id,x,y,void_depth,core_state\nP1,800,300,6,dry\nP2,870,340,5,dry\nP3,750,250,5,dry\n"
                                + "P4,1100,100,0,dry\nP5,150,150,0,wet\n")
                .path();
        Survey read = SurveyFolder.read(at).survey();
        List<DeckLoad> loads = new ArrayList<>();
        loads.add(new DeckLoad("people", "foredeck", read.faces().get(0).outline(), 0, 5, 0, 0));
        return Part.LOADS.with(read, loads);
    }
}
