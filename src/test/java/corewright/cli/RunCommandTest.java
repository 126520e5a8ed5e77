package corewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The whole job on a small invented deck, through the command line. */
class RunCommandTest {
    private static final String DECK = "src/test/resources/corewright/cli/small-deck";
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    @SuppressWarnings("NullAway.Init")
    static Path place;

    @SuppressWarnings("NullAway.Init")
    private static Run first;

    @SuppressWarnings("NullAway.Init")
    private static JsonNode summary;

    private record Run(int status, String out, String err) {
        static Run of(String... args) {
            StringWriter out = new StringWriter();
            StringWriter err = new StringWriter();
            int status = Corewright.run(new PrintWriter(out), new PrintWriter(err), args);
            return new Run(status, out.toString(), err.toString());
        }
    }

    @BeforeAll
    static void run() throws IOException {
        first = Run.of("run", DECK, "--quiet", "--out", out().toString());
        summary = JSON.readTree(out().resolve("summary.json").toFile());
    }

    @Test
    void aPersonIsToldWhatCameOut() {
        assertThat(first.err).isEmpty();
        assertThat(first.status).isEqualTo(Corewright.DONE);
        assertThat(first.out)
                .startsWith("Small deck\n  fore deck: sound ")
                .contains("empty space: ", " litres, in 8 cases of 10 between ", "inject R1", " g resin", "findings: ")
                .endsWith("owner's report: " + out().resolve("owner-report.pdf") + "\n");
    }

    @Test
    void everyPromisedOutputIsThere() throws IOException {
        List<String> files = files(out());
        assertThat(files)
                .containsExactly(
                        "batches.csv",
                        "buying-list.csv",
                        "cups.csv",
                        "drill-template-sheet.pdf",
                        "drill-template.pdf",
                        "drying.csv",
                        "exchange/holes.dxf",
                        "exchange/regions.csv",
                        "exchange/regions.dxf",
                        "exchange/repair.gpkg",
                        "findings.csv",
                        "foot-load.csv",
                        "holes.csv",
                        "maps/fore-deck-condition.png",
                        "maps/fore-deck-condition.svg",
                        "maps/fore-deck-repair.png",
                        "maps/fore-deck-repair.svg",
                        "next-readings.csv",
                        "options.csv",
                        "outputs.sha256",
                        "owner-report.pdf",
                        "regions.geojson",
                        "repair-plan.yaml",
                        "schedule.csv",
                        "summary.json",
                        "surfaces/fore-deck-moisture.asc",
                        "surfaces/fore-deck-p_delaminated.asc",
                        "surfaces/fore-deck-p_wet.asc",
                        "surfaces/fore-deck-void_depth_mm.asc",
                        "surfaces/fore-deck-void_depth_sd_mm.asc",
                        "survey-record.pdf",
                        "what-would-change.csv",
                        "work-cards.pdf");
        assertThat(files).allSatisfy(f -> assertThat(out().resolve(f)).isNotEmptyFile());
        try (Stream<Path> beside = Files.list(place)) {
            assertThat(beside.filter(p -> p.getFileName().toString().startsWith(".")))
                    .isEmpty();
        }
    }

    @Test
    void tablesHaveTheirColumns() throws IOException {
        Map<String, String> columns = Map.of(
                "holes.csv",
                        "id,face,region,kind,order,x,y,diameter_mm,depth_stop_mm,reach_mm,served_l,access,push_in_mm,simulated_l,low_g,planned_g,high_g,taken_g",
                "batches.csv",
                        "batch,region,holes,part_a_g,part_b_g,mix_at_min,work_until_min,first_rise_min,hard_at_min,kind,lift",
                "buying-list.csv", "item,plan,buy,unit,basis",
                "findings.csv", "severity,file,line,id,face,x,y,subject,message,effect",
                "next-readings.csv", "rank,face,kind,x,y,gain,gain_unit,decisions");
        for (Map.Entry<String, String> table : columns.entrySet()) {
            assertThat(Files.readAllLines(out().resolve(table.getKey())).get(0))
                    .as(table.getKey())
                    .isEqualTo(table.getValue());
        }
    }

    /** Rounding of doubles added up: 1e-9. */
    @Test
    void partsAddUpToTheWhole() throws IOException {
        JsonNode face = summary.get("faces").get(0);
        double areas = 0;
        for (JsonNode area : face.get("area_m2")) {
            areas += area.doubleValue();
        }
        double regions = 0;
        for (JsonNode region : summary.get("regions")) {
            regions += region.get("area_m2").doubleValue();
        }

        // 1.6 x 1.0 m less a hatch of 0.40 x 0.25 m
        assertThat(face.get("deck_area_m2").doubleValue()).isCloseTo(1.5, within(1e-9));
        assertThat(areas).isCloseTo(1.5, within(1e-9));
        assertThat(regions + face.get("area_m2").get("sound").doubleValue()).isCloseTo(1.5, within(1e-9));
    }

    @Test
    void gramsOfARegionAreTheSumOfItsBatchesAndItsHolesAreListed() throws IOException {
        List<String> batches = Files.readAllLines(out().resolve("batches.csv"));
        List<String> holes = Files.readAllLines(out().resolve("holes.csv"));
        assertThat(batches).hasSizeGreaterThan(1);
        for (JsonNode region : summary.get("regions")) {
            String id = region.get("id").textValue();
            BigDecimal grams = batches.stream()
                    .skip(1)
                    .map(row -> row.split(","))
                    .filter(row -> row[1].equals(id))
                    .map(row -> new BigDecimal(row[3]))
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            assertThat(region.get("resin_g").decimalValue()).as(id).isEqualByComparingTo(grams);
            assertThat(holes.stream().filter(row -> row.contains("," + id + ",injection,")))
                    .as(id)
                    .hasSize(region.get("injection_holes").intValue());
        }
    }

    @Test
    void theEmptySpaceThatWasBuiltInIsFoundAndInjected() {
        JsonNode region = summary.get("regions").get(0);

        // a disc of radius 170 mm about (500, 500), 4.5 to 6 mm deep where probed
        assertThat(region.get("condition").textValue()).isEqualTo("void");
        assertThat(region.get("method").textValue()).isEqualTo("inject");
        assertThat(region.get("covered_fraction").doubleValue()).isBetween(0.9, 1.0);
        assertThat(summary.get("timings_ms").fieldNames())
                .toIterable()
                .containsExactly(
                        "intake",
                        "damage",
                        "stiffness",
                        "options",
                        "methods",
                        "joined plans",
                        "work",
                        "gains",
                        "decision",
                        "tables",
                        "maps",
                        "owner's report",
                        "work cards",
                        "summary");
    }

    @Test
    void aSecondRunIsTheSameToTheByteButForItsTimings() throws IOException {
        Path again = place.resolve("again");

        Run second = Run.of("run", DECK, "--out", again.toString(), "--json");

        assertThat(again.resolve("summary.json")).hasContent(second.out);
        assertThat(files(again)).isEqualTo(files(out()));
        for (String file : files(out())) {
            if (!file.equals("summary.json") && !file.equals("outputs.sha256")) {
                assertThat(again.resolve(file)).as(file).hasSameBinaryContentAs(out().resolve(file));
            }
        }
        assertThat(Files.readString(again.resolve("outputs.sha256")).replaceAll(".*summary.json\n", ""))
                .isEqualTo(Files.readString(out().resolve("outputs.sha256")).replaceAll(".*summary.json\n", ""));
        String untimed = "(?s)\"timings_ms\".*";
        assertThat(Files.readString(again.resolve("summary.json")).replaceAll(untimed, ""))
                .isEqualTo(Files.readString(out().resolve("summary.json")).replaceAll(untimed, ""));
    }

    @Test
    void aRefusedFolderLeavesNothing() throws IOException {
        Path survey = Files.createDirectory(place.resolve("bad"));
        Files.writeString(survey.resolve("survey.yaml"), "format: 1\n");
        Path wanted = place.resolve("never/there");

        Run refused = Run.of("run", survey.toString(), "--out", wanted.toString());

        assertThat(refused.status).isEqualTo(Corewright.REFUSED);
        assertThat(refused.err).contains("survey.yaml");
        assertThat(place.resolve("never")).doesNotExist();
    }

    @Test
    void aFolderThatIsNotOursIsLeftAlone() throws IOException {
        Path theirs = Files.createDirectory(place.resolve("theirs"));
        Files.writeString(theirs.resolve("letter.txt"), "mine");

        Run refused = Run.of("run", DECK, "--out", theirs.toString());

        assertThat(refused.status).isEqualTo(Corewright.REFUSED);
        assertThat(refused.err)
                .isEqualTo(theirs
                        + ": holds other things than outputs of an earlier run; name an empty or a new folder\n");
        assertThat(files(theirs)).containsExactly("letter.txt");
    }

    private static Path out() {
        return place.resolve("out");
    }

    private static List<String> files(Path folder) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            return paths.filter(Files::isRegularFile)
                    .map(p -> folder.relativize(p).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }
}
