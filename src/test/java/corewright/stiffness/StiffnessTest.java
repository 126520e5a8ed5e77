package corewright.stiffness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.SurveyFolders;
import corewright.damage.Damage;
import corewright.damage.DamageMap;
import corewright.damage.Region;
import corewright.intake.SurveyFolder;
import corewright.overlay.Overlay;
import corewright.reuse.Memory;
import corewright.sandwich.spec.Load;
import corewright.survey.DeckLoad;
import corewright.survey.EdgeSupport;
import corewright.survey.Face;
import corewright.survey.Finding;
import corewright.survey.Part;
import corewright.survey.Subject;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

@SuppressWarnings("NullAway.Init") // JUnit sets the folder
class StiffnessTest {
    private static final String PLAIN =
            "foredeck,outline,edge,\"POLYGON((0 0,900 0,900 600,0 600,0 0))\",simple-hard\n";

    @TempDir
    private Path folder;

    @Test
    void supportsAndOpeningsMakePanelsNamedByXThenY() throws IOException {
        DeckPanels cut = cut("""
                foredeck,outline,edge,"POLYGON((0 0,2000 0,2000 1000,0 1000,0 0))",clamped
                foredeck,support,beam,"LINESTRING(1200 10,1200 990)",simple-hard
                foredeck,support,carlin,"LINESTRING(1200 500,2000 500)",
                foredeck,opening,hatch,"POLYGON((300 300,700 300,700 700,300 700,300 300))",
                """);

        assertThat(cut.panels())
                .extracting(DeckPanel::name)
                .containsExactly("foredeck-P1", "foredeck-P2", "foredeck-P3");
        assertThat(cut.panels().get(0).area().getArea()).isCloseTo(1200e3 - 160e3, within(1.0));
        assertThat(cut.panels().get(1).area().getCentroid().getY()).isCloseTo(250, within(0.1));
        assertThat(cut.panels().get(2).area().getCentroid().getY()).isCloseTo(750, within(0.1));
        assertThat(cut.panels().get(0).edges())
                .containsExactlyInAnyOrder(
                        EdgeSupport.CLAMPED,
                        EdgeSupport.CLAMPED,
                        EdgeSupport.CLAMPED,
                        EdgeSupport.SIMPLE_HARD, // in two parts: the carlin ends on it
                        EdgeSupport.SIMPLE_HARD);
        assertThat(cut.panels().get(0).openings()).isEqualTo(EdgeSupport.FREE);
        assertThat(cut.findings()).isEmpty();
    }

    @Test
    void aSupportThatEndsInTheDeckIsSaidAndLeftOut() throws IOException {
        DeckPanels cut = cut("""
                foredeck,outline,edge,"POLYGON((0 0,2000 0,2000 1000,0 1000,0 0))",
                foredeck,support,knee,"LINESTRING(1200 0,1200 400)",
                """);

        assertThat(cut.panels()).hasSize(1);
        assertThat(cut.findings())
                .singleElement()
                .extracting(Finding::message)
                .isEqualTo("The support knee does not reach from edge to edge.");
    }

    @Test
    void anOpeningAtTheEdgeBecomesASideOfThePanel() throws IOException {
        DeckPanels cut = cut("""
                foredeck,outline,edge,"POLYGON((0 0,2000 0,2000 1000,0 1000,0 0))",
                foredeck,opening,notch,"POLYGON((800 -10,1200 -10,1200 300,800 300,800 -10))",
                """);

        DeckPanel panel = cut.panels().get(0);
        assertThat(panel.area().getNumInteriorRing()).isZero();
        assertThat(panel.edges()).filteredOn(e -> e == EdgeSupport.FREE).hasSize(3);
    }

    @Test
    void asBuiltAgreesWithNaviersSeriesWithinTheSoftEdgesAllowance() throws IOException {
        Survey survey = survey(PLAIN, false);
        DamageMap damage = Damage.fit(survey, new Memory()).map();

        StiffnessMap map = Stiffness.of(survey, damage, new Memory());

        PanelStiffness panel = map.panels().get(0);
        assertThat(panel.softest().xMm()).isCloseTo(450, within(25.0));
        assertThat(panel.softest().yMm()).isCloseTo(300, within(25.0));
        double navier = Navier.deflectionMm(survey.laminate("deck"), survey.materials(), 900, 600, 100, 1000);
        // thin faces in the series; 25 mm elements read 0.6 % stiff
        assertThat(panel.in(State.AS_BUILT).deflectionMm()).isCloseTo(navier, within(0.015 * navier));
    }

    /** The same series: a foot at the centre, as a named case. */
    @Test
    void aLoadCaseAgreesWithNaviersSeries() throws IOException {
        Survey survey = withLoads(survey(PLAIN), load("a foot", square(450, 300, 100), 1000, 0));
        LoadCase.Answer answer = Stiffness.of(
                        survey, Damage.fit(survey, new Memory()).map(), new Memory())
                .panels()
                .get(0)
                .cases()
                .get(0)
                .in(State.AS_BUILT);

        double navier = Navier.deflectionMm(survey.laminate("deck"), survey.materials(), 900, 600, 100, 1000);
        assertThat(answer.deflectionMm()).isCloseTo(navier, within(0.015 * navier));
        assertThat(answer.at().xMm()).isCloseTo(450, within(15.0));
        assertThat(answer.margins()).isNotEmpty();
    }

    @Test
    void loadsOfOneCaseActTogetherAndEachPanelCarriesItsPart() throws IOException {
        Survey plain = survey(PLAIN + "foredeck,support,beam,\"LINESTRING(300 0,300 600)\",\n");
        DeckLoad across = load("crew", square(300, 300, 200), 1000, 0);
        DeckLoad water = load("water", plain.faces().get(0).outline(), 0, 5);
        Survey survey = withLoads(plain, across, water, load("crew", square(300, 300, 200), 500, 0));
        List<DeckPanel> panels = DeckPanels.of(survey, survey.faces().get(0)).panels();
        CaseLoads loads = new CaseLoads(panels, survey.loads());

        double crew = 0;
        double pressure = 0;
        for (DeckPanel panel : panels) {
            crew += force(loads.on(panel).get("crew"));
            pressure += force(loads.on(panel).get("water"));
        }
        assertThat(panels).hasSize(2);
        assertThat(crew).isCloseTo(1500, within(1e-6));
        assertThat(pressure).isCloseTo(0.005 * 900 * 600, within(1e-6));
        assertThat(force(loads.on(panels.get(0)).get("crew"))).isCloseTo(750, within(1e-6));
    }

    /** A load whose edge lies on a beam leaves a line on the next panel; one drawn a hair across it leaves a crumb. */
    @Test
    void aLoadThatOnlyTouchesAPanelIsCarriedByItsNeighbourWhole() throws IOException {
        Survey plain = survey(PLAIN + "foredeck,support,beam,\"LINESTRING(300 0,300 600)\",\n");
        Survey survey = withLoads(
                plain,
                load("touching", square(350, 300, 100), 1000, 0),
                load("a hair across", square(349.99, 300, 100), 1000, 5));
        List<DeckPanel> panels = DeckPanels.of(survey, survey.faces().get(0)).panels();
        CaseLoads loads = new CaseLoads(panels, survey.loads());

        assertThat(loads.on(panels.get(0))).isEmpty();
        assertThat(force(loads.on(panels.get(1)).get("touching"))).isCloseTo(1000, within(1e-9 * 1000));
        assertThat(force(loads.on(panels.get(1)).get("a hair across"))).isCloseTo(1050, within(1e-9 * 1050));
        StiffnessMap map = Stiffness.of(survey, Damage.fit(survey, new Memory()).map(), new Memory());
        assertThat(map.panels()).hasSize(2);
        assertThat(map.findings()).isEmpty();
    }

    /** Held along one side a panel can tilt: that is its own reason, and the panel beside it is told all the same. */
    @Test
    void aPanelIsLeftOutForAReasonOfItsOwn() throws IOException {
        Survey survey = withLoads(
                survey("foredeck,outline,edge,\"POLYGON((0 0,900 0,900 600,0 600,0 0))\",free\n"
                        + "foredeck,support,beam,\"LINESTRING(300 0,300 600)\",simple\n"
                        + "foredeck,support,next beam,\"LINESTRING(600 0,600 600)\",simple\n"),
                load("a foot", square(450, 300, 100), 1000, 0));

        StiffnessMap map = Stiffness.of(survey, Damage.fit(survey, new Memory()).map(), new Memory());

        assertThat(map.panels()).extracting(p -> p.panel().name()).containsExactly("foredeck-P2");
        assertThat(map.panels().get(0).cases()).hasSize(1);
        assertThat(map.findings())
                .filteredOn(f -> f.subject() == Subject.PANEL_LEFT_OUT)
                .extracting(Finding::message)
                .containsExactly(
                        "The stiffness of the panel foredeck-P1 cannot be calculated: its supports leave the panel free to"
                                + " move or to tilt.",
                        "The stiffness of the panel foredeck-P3 cannot be calculated: its supports leave the panel free to"
                                + " move or to tilt.");
    }

    @Test
    void aLoadBesideEveryPanelIsSaid() throws IOException {
        Survey survey = withLoads(
                survey(PLAIN + "foredeck,opening,hatch,\"POLYGON((300 200,500 200,500 400,300 400,300 200))\",\n"),
                load("mast", square(400, 300, 50), 1000, 0));

        assertThat(Stiffness.of(survey, Damage.fit(survey, new Memory()).map(), new Memory())
                        .findings())
                .filteredOn(f -> f.subject() == Subject.LOAD)
                .extracting(Finding::message)
                .containsExactly("A load of the case \"mast\" lies on no panel of foredeck.");
    }

    private static double force(@Nullable List<Load> loads) {
        return Objects.requireNonNull(loads).stream()
                .mapToDouble(l -> ((Load.Force) l).forceN())
                .sum();
    }

    private static Geometry square(double x, double y, double side) {
        Envelope box = new Envelope(new Coordinate(x, y));
        box.expandBy(side / 2);
        return new GeometryFactory().toGeometry(box);
    }

    private static DeckLoad load(String name, Geometry area, double forceN, double pressureKPa) {
        return new DeckLoad(name, "foredeck", area, forceN, pressureKPa, 0, 0);
    }

    private static Survey withLoads(Survey survey, DeckLoad... loads) {
        return Part.LOADS.with(survey, List.of(loads));
    }

    private DeckPanels cut(String plan) throws IOException {
        Survey survey = survey(plan);
        Face face = survey.faces().get(0);
        return DeckPanels.of(survey, face);
    }

    private Survey survey(String plan) throws IOException {
        return survey(plan, false);
    }

    /** A dry deck, tapped every 75 mm; hollow over an empty space in its middle or sound all over. */
    private Survey survey(String plan, boolean hollow) throws IOException {
        StringBuilder moisture = new StringBuilder("id,x,y,value,meter\n");
        StringBuilder taps = new StringBuilder("id,x,y,sound\n");
        int n = 0;
        for (int x = 75; x < 900; x += 75) {
            for (int y = 75; y < 600; y += 75) {
                n++;
                boolean inside = hollow && Math.hypot(x - 450, y - 300) < 170;
                moisture.append("M" + n + "," + x + "," + y + "," + (8 + n % 3) + ",A\n");
                taps.append("T" + n + "," + x + "," + y + "," + (inside ? "hollow" : "sound") + "\n");
            }
        }
        String probes = hollow
                ? "id,x,y,void_depth,core_state\nP1,450,300,6,dry\nP2,520,340,5,dry\nP3,400,250,5,dry\nP4,100,100,0,dry\n"
                : "id,x,y,void_depth,core_state\nP1,450,300,0,dry\n";
        Path at = SurveyFolders.minimal(folder)
                .with("plan.csv", "face,kind,name,wkt,edge\n" + plan)
                .with("moisture.csv", moisture.toString())
                .with("taps.csv", taps.toString())
                .with("probes.csv", probes)
                .path();
        return SurveyFolder.read(at).survey();
    }

    /**
     * Simply supported sandwich plate, load on a square patch at its centre: Navier's double series with the shear of the core
     * added term by term. Source: H. G. Allen, Analysis and Design of Structural Sandwich Panels (Pergamon 1969), ch. 6; the patch's
     * coefficients: S. Timoshenko and S. Woinowsky-Krieger, Theory of Plates and Shells (2nd ed. 1959), art. 29.
     */
    private static final class Navier {
        static double deflectionMm(
                corewright.survey.Laminate laminate,
                corewright.survey.Materials materials,
                double a,
                double b,
                double patch,
                double force) {
            double e = materials.skin(laminate.skin()).modulusMPa();
            double nu = materials.skin(laminate.skin()).poisson();
            double t1 = laminate.outerSkinMm();
            double t2 = laminate.innerSkinMm();
            double d = laminate.coreMm() + (t1 + t2) / 2;
            double plate = e / (1 - nu * nu);
            double bending = plate * t1 * t2 * d * d / (t1 + t2) + plate * (Math.pow(t1, 3) + Math.pow(t2, 3)) / 12;
            double shear = materials.core(laminate.core()).shearMPa() * d * d / laminate.coreMm();
            double w = 0;
            for (int m = 1; m < 400; m += 2) {
                for (int n = 1; n < 400; n += 2) {
                    double k = Math.pow(m * Math.PI / a, 2) + Math.pow(n * Math.PI / b, 2);
                    double q = 16
                            * force
                            / (Math.PI * Math.PI * m * n * patch * patch)
                            * Math.sin(m * Math.PI * patch / 2 / a)
                            * Math.sin(n * Math.PI * patch / 2 / b);
                    w += q * (1 / (bending * k * k) + 1 / (shear * k));
                }
            }
            return w;
        }
    }

    @Test
    void lessIsLeftWhereMoreIsDamagedAndRepairGivesItBack() throws IOException {
        Survey survey = survey(PLAIN, true);
        DamageMap damage = Damage.fit(survey, new Memory()).map();

        StiffnessMap map = Stiffness.of(survey, damage, new Memory());
        List<Treatment> advised = List.of(renewed(damage));
        PanelStiffness panel = Stiffness.gains(survey, damage, map, List.of(), advised, new Memory())
                .map()
                .panels()
                .get(0);

        assertThat(panel.damaged()).isTrue();
        double built = panel.in(State.AS_BUILT).stiffnessNPerMm();
        double found = panel.in(State.AS_FOUND).stiffnessNPerMm();
        double injected = panel.in(State.AFTER_INJECTION).stiffnessNPerMm();
        assertThat(found).isLessThan(0.7 * built);
        assertThat(injected).isBetween(0.8 * built, 1.001 * built);
        assertThat(panel.in(State.AFTER_PLAN).stiffnessNPerMm())
                .as("bonded again, with a softer core than the one as built")
                .isBetween(1.1 * found, 0.95 * built);
        assertThat(panel.in(State.AS_FOUND).linearNPerMm())
                .as("a linear loose skin passes through what is below")
                .isLessThan(found);
        assertThat(panel.in(State.AS_FOUND).feet().softest().deflectionMm())
                .as("the map and the table agree")
                .isEqualTo(panel.in(State.AS_FOUND).deflectionMm());
        var ratio = panel.in(State.AS_FOUND).ofAsBuilt();
        assertThat(ratio.p50()).as("the middle is the one that is told").isCloseTo(found / built, within(1e-9));
        // a loose disc is as soft as it is large: the better and the worse tenth differ by far more than the solver's
        // 1e-9
        assertThat(ratio.p10()).isLessThan(0.99 * ratio.p50());
        assertThat(ratio.p90()).isGreaterThan(1.01 * ratio.p50());
        assertThat(panel.margins()).isNotEmpty();
    }

    private static Treatment renewed(DamageMap damage) {
        Geometry all = damage.regions().stream()
                .<Geometry>map(Region::likely)
                .reduce(Overlay::union)
                .orElseThrow();
        return new Treatment.Renew("foredeck", all, "pvc-80");
    }

    /** What is advised may be what one of the states does: then its figures are taken, not reckoned again. */
    @Test
    void aPlanThatIsOneOfTheStatesHasItsFigures() throws IOException {
        Survey survey = survey(PLAIN, true);
        DamageMap damage = Damage.fit(survey, new Memory()).map();
        StiffnessMap map = Stiffness.of(survey, damage, new Memory());

        Gains nothing = Stiffness.gains(survey, damage, map, List.of(), List.of(), new Memory());

        PanelStiffness panel = nothing.map().panels().get(0);
        assertThat(panel.in(State.AFTER_PLAN) == panel.in(State.AS_FOUND)).isTrue();
        assertThat(nothing.advised()).isEqualTo(nothing.left());
    }

    /** All core renewed, the damaged deck carries a foot at its middle as the series for a sound one says. */
    @Test
    void renewedCoreAgreesWithNaviersSeries() throws IOException {
        Survey survey = withLoads(survey(PLAIN, true), load("a foot", square(450, 300, 100), 1000, 0));
        LoadCase foot = Stiffness.of(survey, Damage.fit(survey, new Memory()).map(), new Memory())
                .panels()
                .get(0)
                .cases()
                .get(0);

        double navier = Navier.deflectionMm(survey.laminate("deck"), survey.materials(), 900, 600, 100, 1000);
        assertThat(foot.in(State.AFTER_RECORE).deflectionMm()).isCloseTo(navier, within(0.015 * navier));
        assertThat(foot.in(State.AS_FOUND).deflectionMm()).isGreaterThan(1.5 * navier);
    }
}
