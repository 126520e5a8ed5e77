package corewright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import corewright.survey.DeckLoad;
import corewright.survey.Heading;
import corewright.survey.Laminate;
import corewright.survey.Meter;
import corewright.survey.RuleOverride;
import corewright.survey.Subject;
import corewright.survey.Survey;
import corewright.survey.settings.Settings;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SurveyYamlTest {
    private static SurveyFolders adding(Path dir, String yaml) {
        return SurveyFolders.minimal(dir).adding("survey.yaml", yaml);
    }

    @Test
    void aWholeSurveyHasNoFinding(@TempDir Path dir) {
        assertThat(Reads.findings(SurveyFolders.minimal(dir))).isEmpty();
    }

    @Test
    void readsTheHeading(@TempDir Path dir) {
        SurveyFolders folder = adding(
                dir,
                "vessel: \"Wr\\ten\"\nclient: \"A.\\nOwner\"\nsurveyor: B. Tap\nweather: 18 C, dry\ndays_ashore: 40\nnotes: |\n  two\n  lines\n");

        Heading heading = Reads.read(folder).survey().heading();

        assertThat(heading)
                .isEqualTo(new Heading(
                        "Test deck",
                        LocalDate.of(2026, 4, 2),
                        "Wr en",
                        "A. Owner",
                        "B. Tap",
                        "18 C, dry",
                        40,
                        "two\nlines"));
    }

    @Test
    void aLaminateSaysHowItsCoreWasCutAndHowFarInItIsSolid(@TempDir Path dir, @TempDir Path other) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .replacing("survey.yaml", "core: balsa-150", "core: balsa-150, core_form: kerfed, solid_edge_mm: 60");

        Intake intake = Reads.read(folder);

        Laminate laminate = intake.survey().laminates().get(0);
        assertThat(laminate.coreForm()).isEqualTo(Laminate.CoreForm.KERFED);
        assertThat(laminate.solidEdgeMm()).isEqualTo(60);
        assertThat(intake.findings())
                .filteredOn(f -> f.subject() == Subject.LAMINATE)
                .singleElement()
                .satisfies(f -> assertThat(f.message()).contains("is kerfed: water and mix run along its cuts"));
        assertThat(Reads.read(SurveyFolders.minimal(other)).findings()).noneMatch(f -> f.subject() == Subject.LAMINATE);
    }

    @Test
    void loadsHaveACaseAPlaceAndAmounts(@TempDir Path dir) {
        SurveyFolders folder = adding(dir, """
                loads:
                  - { name: crew, area: "POLYGON((100 100,200 100,200 200,100 200,100 100))", force_N: 800 }
                  - { name: crew, line: "LINESTRING(100 100,400 100)", force_N: 200 }
                  - { name: windlass under load, fitting: windlass, moment_x_Nmm: 2e5 }
                  - { pressure_kPa: 5 }
                """)
                .adding(
                        "plan.csv",
                        "foredeck,fitting,windlass,\"POLYGON((600 400,650 400,650 450,600 450,600 400))\",yes,yes,60,,\n");

        Survey survey = Reads.read(folder).survey();

        assertThat(survey.loads())
                .extracting(DeckLoad::loadCase)
                .containsExactly("crew", "crew", "windlass under load", "load 4");
        assertThat(survey.loads().get(2).area().getArea()).isEqualTo(2500);
        assertThat(survey.loads().get(2).momentXNmm()).isEqualTo(2e5);
        assertThat(survey.loads().get(3).area()).isEqualTo(survey.faces().get(0).outline());
    }

    @Test
    void aLoadThatCannotBeUnderstoodIsLeftOutAndSaid(@TempDir Path dir) {
        SurveyFolders folder = adding(dir, """
                loads:
                  - { anything: here }
                  - { name: a, fitting: cleat, moment_x_Nmm: 2e5 }
                  - { name: b, area: "POINT(100 100)", force_N: 9 }
                  - { name: c, area: "POLYGON((5000 0,5100 0,5100 9,5000 0))", force_N: 9 }
                  - { name: d, line: "LINESTRING(100 100,400 100)", pressure_kPa: 9 }
                """);

        assertThat(Reads.read(folder).survey().loads()).isEmpty();
        assertThat(Reads.findings(folder))
                .containsExactly(
                        "survey.yaml:13: loads[1].anything: this key is not known, expected name, face, area, line, fitting,"
                                + " force_N, pressure_kPa, moment_x_Nmm or moment_y_Nmm. That load is left out.",
                        "survey.yaml:14: loads[2].fitting: \"cleat\" is drawn as a point, expected a fitting drawn as a"
                                + " POLYGON, or the base as area. That load is left out.",
                        "survey.yaml:15: loads[3].area: found \"POINT(100 100)\", expected a POLYGON in well-known text"
                                + " that lies on the face. That load is left out.",
                        "survey.yaml:16: loads[4].area: found \"POLYGON((5000 0,5100 0,5100 9,5000 0))\", expected a POLYGON"
                                + " in well-known text that lies on the face. That load is left out.",
                        "survey.yaml:17: loads[5].line: a load along a line is a force, expected force_N alone. That load is"
                                + " left out.");
    }

    @Test
    void rulesAreSetAsideAndLimitsSetWithWhoAndWhy(@TempDir Path dir) {
        SurveyFolders folder = adding(dir, """
                thresholds: { likely: 0.6 }
                rule_overrides:
                  - { rule: not proven dry, value: off, who: A. Keel, reason: "core seen through the hatch" }
                  - { rule: monitor_index, value: 90, who: A. Keel, reason: "the boat winters in the open" }
                """);

        Survey survey = Reads.read(folder).survey();

        assertThat(survey.judgements().rules())
                .containsExactly(
                        new RuleOverride("not proven dry", "A. Keel", "core seen through the hatch"),
                        new RuleOverride("monitor_index", "A. Keel", "the boat winters in the open"));
        assertThat(survey.settings().thresholds().monitorIndex()).isEqualTo(90);
        assertThat(survey.settings().thresholds().likely()).isEqualTo(0.6);
    }

    /** Where the limit stands, too; a bare figure stays understood, and is told as nobody's. */
    @Test
    void aLimitSaysWhoAndWhyWhereItStands(@TempDir Path dir) {
        SurveyFolders folder = adding(dir, """
                thresholds:
                  monitor_index: { value: 90, who: A. Keel, reason: "this meter reads low" }
                  likely: 0.6
                """);

        Survey survey = Reads.read(folder).survey();

        assertThat(survey.judgements().rules())
                .containsExactly(new RuleOverride("monitor_index", "A. Keel", "this meter reads low"));
        assertThat(survey.settings().thresholds().monitorIndex()).isEqualTo(90);
        assertThat(survey.settings().thresholds().likely()).isEqualTo(0.6);
        assertThat(survey.unexplainedLimits()).containsExactly("likely");
    }

    @Test
    void aLimitThatSaysHalfIsComplainedOfAtItsLine(@TempDir Path dir) {
        SurveyFolders folder = adding(dir, """
                thresholds:
                  monitor_index: { value: 90, because: b }
                  cut_wet: { who: A. Keel, reason: b }
                """);

        assertThat(Reads.complaints(folder))
                .anySatisfy(c -> assertThat(c).contains("thresholds.monitor_index.because: this key is not known"))
                .anySatisfy(c -> assertThat(c).contains("thresholds.monitor_index.who: "))
                .anySatisfy(c -> assertThat(c).contains("thresholds.monitor_index.reason: "))
                .anySatisfy(c -> assertThat(c).contains("thresholds.cut_wet.value: "))
                .hasSize(4);
    }

    @Test
    void aRuleOverrideThatCannotBeUnderstoodIsComplainedOfAtItsLine(@TempDir Path dir) {
        SurveyFolders folder = adding(dir, """
                thresholds: { monitor_index: 80 }
                rule_overrides:
                  - { rule: rott, value: off, who: A, reason: b }
                  - { rule: rot, value: 3, who: A, reason: b }
                  - { rule: rot, value: off }
                  - { rule: monitor_index, value: 90, who: A, reason: b }
                  - { rule: cut_wet, value: 7, who: A, reason: b }
                  - { rule: no empty space, value: off, who: A, reason: b }
                """);

        assertThat(Reads.complaints(folder))
                .anySatisfy(c -> assertThat(c)
                        .startsWith(
                                "survey.yaml:14: rule_overrides[1].rule: found \"rott\", expected rot, wet and loose"))
                .anySatisfy(c -> assertThat(c)
                        .isEqualTo("survey.yaml:15: rule_overrides[2].value: found \"3\", expected off, which sets the"
                                + " rule aside"))
                .anySatisfy(c -> assertThat(c).startsWith("survey.yaml:16: rule_overrides[3].who: "))
                .anySatisfy(c -> assertThat(c).startsWith("survey.yaml:16: rule_overrides[3].reason: "))
                .anySatisfy(c -> assertThat(c)
                        .isEqualTo(
                                "survey.yaml:17: rule_overrides[4].value: monitor_index is set to 90 here and to 80 at"
                                        + " thresholds.monitor_index"))
                .anySatisfy(c -> assertThat(c).startsWith("survey.yaml:18: rule_overrides[5].value: cut_wet must be"))
                .anySatisfy(c -> assertThat(c).startsWith("survey.yaml:19: rule_overrides[6].rule: found"))
                .hasSize(7);
    }

    @Test
    void overridesSettingsInTheirOwnUnits(@TempDir Path dir) {
        SurveyFolders folder = adding(dir, """
                thresholds: { inject_largest_mm2: 250000, likely: 0.6 }
                drilling: { hole_diameter_mm: 5, pressure_kPa: 30 }
                costs: { currency: "£", rate_per_hour: 60 }
                crew: { people: 2 }
                climate: { temperature_c: 15 }
                numerics: { cell_mm: 20, realisations: 100, seed: 7 }
                resins:
                  - { name: epoxy-thin, viscosity_pa_s: 0.3 }
                  - { name: house foam, hardener_per_resin: 0.5, structural: no, bond_peel_mpa: 0.4 }
                """);

        Settings settings = Reads.read(folder).survey().settings();

        assertThat(settings.thresholds().injectLargestMm2()).isEqualTo(250_000);
        assertThat(settings.thresholds().likely()).isEqualTo(0.6);
        assertThat(settings.drilling().holeDiameterMm()).isEqualTo(5);
        assertThat(settings.drilling().pressureKPa()).isEqualTo(30);
        assertThat(settings.costs().currency()).isEqualTo("£");
        assertThat(settings.crew().people()).isEqualTo(2);
        assertThat(settings.climate().temperatureC()).isEqualTo(15);
        assertThat(settings.numerics().seed()).isEqualTo(7);
        assertThat(settings.resins())
                .extracting(r -> r.name() + " " + r.viscosityPaS())
                .containsExactly(
                        "epoxy-thin 0.3",
                        "house foam 3.0",
                        "epoxy-foam-240 3.0",
                        "epoxy-foam-300 3.0",
                        "polyurethane-pour 0.5");
        assertThat(settings.resin("house foam").structural()).isFalse();
        assertThat(settings.resin("house foam").bondPeelMPa()).isEqualTo(0.4);
        assertThat(settings.resin("house foam").bondShearMPa()).isZero();
        assertThat(Reads.findings(folder))
                .containsExactly("survey.yaml:20: Resin house foam does not give density_kg_m3, expansion, pack,"
                        + " viscosity_pa_s, work_s, first_rise_s, rise_end_s, gel_s, hard_s and reference_c. The values"
                        + " of epoxy-foam-240 are taken; the figures of the product in hand must be checked.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "crew: { people: 3 }|crew.people: people must be from 1.0 to 2.0, was 3.0",
                "crew: { people: 1.5 }|crew.people: found \"1.5\", expected a whole number",
                "crew: { peopel: 1 }|crew.peopel: this key is not known, expected people",
                "climate: { temperature_c: 1e9 }|climate.temperature_c: temperature_c must be from -10.0 to 50.0, was 1.0E9",
                "climate: warm|climate: found \"warm\", expected a block of keys",
                "drilling: { pressure_kpa: high }|drilling.pressure_kpa: found \"high\", expected a number",
                "costs: { visit_hours: -1 }|costs.visit_hours: found \"-1\", expected a number that is not negative",
                "loads: many|loads: found \"many\", expected a list",
                "columns: { taps: { z: up } }|columns.taps.z: this key is not known, expected x, y, id, face, sound, contact_us, side or note",
                "columns: { tap: { x: up } }|columns.tap: this key is not known, expected plan, moisture, taps, probes, feelers, plugs, temperatures, cured_taps, log or photos",
                "skins: [ { name: flax } ]|skins[1].modulus_mpa: found nothing, expected a number",
                "cores: { cork: { modulus_mpa: 6, shear_mpa: -6 } }|cores.cork.shear_mpa: shear_mpa must be more than 0 and at most 10000000",
                "name: again|name: the key stands here a second time",
                "vessel: !!java.net.URL [x]|found \"tag:yaml.org,2002:java.net.URL\", expected a value without a type tag",
                "vessel: [ a, b ]|vessel: found \"a list\", expected a text",
                "days_ashore: some|days_ashore: found \"some\", expected a number",
                "vessel: \"open|this is not YAML: found unexpected end of stream",
                "vessel: a: b|this is not YAML: mapping values are not allowed here"
            })
    void complainsWithThePlace(String line, String problem, @TempDir Path dir) {
        String place = problem.contains("end of stream") ? "survey.yaml:13: " : "survey.yaml:12: ";
        assertThat(Reads.complaints(adding(dir, line + "\n")))
                .filteredOn(c -> !c.contains("cork") || c.contains("shear"))
                .containsExactly(place + problem);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "format: 1|format: 2|survey.yaml:1: format: found \"2\", expected 1",
                "2026-04-02|2026-02-30|survey.yaml:3: surveyed: found \"2026-02-30\", expected a date such as 2026-04-02",
                "length: mm|length: furlong|survey.yaml:4: units.length: found \"furlong\", expected mm, cm, m, in or ft",
                "temperature: C|temperature: K|survey.yaml:4: units.temperature: found \"K\", expected C or F",
                "units: {|units: { lenght: mm,|survey.yaml:4: units.lenght: this key is not known, expected length, depth, temperature, display, decimal, csv or paper",
                "tilt_deg: 3|tilt_deg: 181|survey.yaml:6: faces[1].tilt_deg: found \"181\", expected a number from 0 to 180",
                "taps: taps|tap: taps|survey.yaml:7: files.tap: this key is not known, expected plan, moisture, taps, probes, feelers, plugs, temperatures, cured_taps, log, photos or repair_plan",
                "taps: taps.csv|taps: { file: taps.csv, side: top }|survey.yaml:7: files.taps.side: found \"top\", expected outer or inner",
                "taps: taps.csv|taps: [ taps.csv, taps.csv ]|survey.yaml:7: files.taps[2]: \"taps.csv\" is listed twice",
                "taps: taps.csv|taps: .|survey.yaml:7: files.taps: \".\" is not a file",
                "full_scale: 100|full_scale: 0|survey.yaml:9: meters[1].full_scale: found \"0\", expected a number from 0 to 1000000",
                "name: A|name: A, kind: fork|survey.yaml:9: meters[1].kind: found \"fork\", expected relative or pin",
                "core_mm: 12.5|core_mm: thick|survey.yaml:11: laminates[1].core_mm: found \"thick\", expected a number",
                "core_mm: 12.5, |``|survey.yaml:11: laminates[1].core_mm: found nothing, expected a thickness in mm",
                "core_mm: 12.5|core_mm: -1|survey.yaml:11: laminates[1].core_mm: found \"-1\", expected a number from 0.01 to 1000"
            })
    void complainsOfASectionWithThePlace(String from, String to, String complaint, @TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir).replacing("survey.yaml", from, to == null ? "" : to);

        assertThat(Reads.complaints(folder)).containsExactly(complaint);
    }

    /** A face's name becomes part of file names in the output folder. */
    @Test
    void refusesAFaceNameThatCannotNameAFile(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .replacing("survey.yaml", "name: foredeck", "name: ../x")
                .replacing("plan.csv", "foredeck,", "../x,");

        assertThat(Reads.complaints(folder))
                .containsExactly("survey.yaml:6: faces[1].name: found \"../x\", expected a name of at most 60 letters,"
                        + " digits, spaces, - and _, as it also names files");
    }

    @Test
    void ignoresAnUnknownKeyAtTheTopAndSaysSo(@TempDir Path dir) {
        assertThat(Reads.findings(adding(dir, "boatyard: north\n")))
                .singleElement()
                .asString()
                .startsWith("survey.yaml:12: survey.yaml has a key \"boatyard\" that is not understood; the known ones"
                        + " are format, name,")
                .endsWith("It is ignored.");
    }

    @Test
    void takesTwiceDryWhereWetIsMissing(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir).replacing("survey.yaml", ", wet: 25", "");

        assertThat(Reads.read(folder).survey().meter("A").wet()).isEqualTo(20);
        assertThat(Reads.findings(folder))
                .containsExactly("survey.yaml:9: Meter A has no reading from which core counts as wet (wet). Twice the"
                        + " dry reading, 20, is taken (common practice).");
    }

    @Test
    void leavesDryOpenWhereItIsMissing(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir).replacing("survey.yaml", "dry: 10, ", "");

        Meter meter = Reads.read(folder).survey().meter("A");

        assertThat(meter.dry()).isNull();
        assertThat(meter.wet()).isEqualTo(25);
        assertThat(Reads.findings(folder))
                .containsExactly("survey.yaml:9: Meter A has no reading over known dry core (dry). Its dry reading is"
                        + " estimated from the survey's own readings, which is less certain.");
    }

    @Test
    void readsOwnMaterialsByListAndByName(@TempDir Path dir) {
        SurveyFolders folder = adding(dir, """
                        skins: { flax: { E_MPa: 9000, nu: 0.32, strength_mpa: 90, density_kg_m3: 1300 } }
                        cores: [ { name: cork, modulus_mpa: 60, shear_mpa: 20 } ]
                        """)
                .replacing("survey.yaml", "e-glass-polyester", "flax")
                .replacing("survey.yaml", "core: balsa-150", "core: cork");

        Survey survey = Reads.read(folder).survey();

        assertThat(survey.materials().skins().get("flax"))
                .hasToString("Skin[name=flax, modulusMPa=9000.0, poisson=0.32, strengthMPa=90.0, densityKgM3=1300.0,"
                        + " source=the survey]");
        assertThat(survey.materials().cores()).containsKeys("cork", "balsa-150");
        assertThat(Reads.findings(folder))
                .containsExactly("survey.yaml:13: Material cork does not give density_kg_m3, crush_mpa and"
                        + " shear_strength_mpa. The values of balsa-150 are taken.");
    }

    @Test
    void refusesAnAliasInsideWhatItRepeats(@TempDir Path dir) {
        assertThat(Reads.complaints(adding(dir, "loads: &a [ *a ]\n")))
                .containsExactly("survey.yaml:12: an alias stands inside what it repeats");
    }

    @Test
    void readsAnOrdinaryAlias(@TempDir Path dir) {
        SurveyFolders folder = adding(dir, "client: &a Someone\nsurveyor: *a\n");

        assertThat(Reads.read(folder).survey().heading().surveyor()).isEqualTo("Someone");
    }

    @Test
    void refusesDeepNestingAndAListAtTheTop(@TempDir Path dir) {
        SurveyFolders folder = adding(dir, "loads: " + "[".repeat(5000) + "]".repeat(5000) + "\n");

        assertThat(Reads.complaints(folder))
                .containsExactly("survey.yaml: this YAML is not accepted: Nesting Depth exceeded max 30");

        folder.with("survey.yaml", "- format: 1\n");
        assertThat(Reads.complaints(folder))
                .containsExactly(
                        "survey.yaml:1: found \"a list\", expected keys such as format, name, faces and files");
    }
}
