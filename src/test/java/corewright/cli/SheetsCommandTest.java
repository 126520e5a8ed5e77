package corewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.desktop.state.Units;
import corewright.desktop.walk.GridWalk;
import corewright.intake.SurveyFolder;
import corewright.report.Kept;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetsCommandTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    private void survey(String more, String files) throws IOException {
        Files.writeString(folder.resolve("survey.yaml"), """
                format: 1
                name: bare
                surveyed: 2026-05-19
                faces:
                  - { name: deck, tilt_deg: 2, uphill_deg: 180 }
                files: { plan: plan.csv%s }
                meters:
                  - { name: A, full_scale: 100, dry: 10, wet: 25 }
                laminates:
                  - { name: deck, outer_skin_mm: 3, core_mm: 15, inner_skin_mm: 2, skin: e-glass-polyester, core: balsa-150 }
                %s
                """.formatted(files, more));
        Files.writeString(folder.resolve("plan.csv"), """
                face,kind,name,wkt
                deck,outline,edge,"POLYGON((0 -900,2400 -1100,3000 -700,3000 900,0 900,0 -900))"
                deck,opening,hatch,"POLYGON((900 -250,1400 -250,1400 250,900 250,900 -250))"
                """);
    }

    private int run(Path out) {
        return Corewright.run(
                new PrintWriter(new StringWriter()),
                new PrintWriter(new StringWriter()),
                "sheets",
                folder.toString(),
                "--out",
                out.toString());
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(document);
        }
    }

    /** Whoever types the sheet in follows the walk of the window: the numbers must be its order. */
    @Test
    void placesOfASurveyWithoutReadingsAreNumberedAsTheWalkAsksForThem() throws Exception {
        survey("", "");
        Path out = folder.resolve("sheets.pdf");
        assertThat(run(out)).isZero();
        Kept.check(out);
        Survey read = SurveyFolder.readPlan(folder).survey();
        List<Spot> walked = new GridWalk(read, "deck", "A", 300, Units.METRIC, (deed, change) -> {}).points();
        String text = text(out);
        List<String> found = new ArrayList<>();
        Matcher row = Pattern.compile("(\\d+) (\\d\\.\\d\\d) (0(?!\\.)|\\d\\.\\d\\d [sp])")
                .matcher(text);
        while (row.find()) {
            found.add(row.group(1) + " " + row.group(2) + " " + row.group(3));
        }
        List<String> expected = new ArrayList<>();
        for (int i = 0; i < walked.size(); i++) {
            double y = walked.get(i).yMm() / 1000;
            String side = y == 0 ? "0" : String.format(Locale.ROOT, "%.2f %s", Math.abs(y), y > 0 ? "s" : "p");
            expected.add(String.format(
                    Locale.ROOT, "%d %.2f %s", i + 1, walked.get(i).xMm() / 1000, side));
        }
        assertThat(found).containsExactlyInAnyOrderElementsOf(expected);
        assertThat(text).contains("on A4 printed at 100 %");
    }

    @Test
    void aReSurveyHasLastTimesFigures() throws IOException {
        survey("", ", moisture: moisture.csv, taps: taps.csv");
        Files.writeString(folder.resolve("moisture.csv"), "x,y,value\n300,100,17\n500,100,>100\n");
        Files.writeString(folder.resolve("taps.csv"), "x,y,sound\n310,110,dull\n");
        Path out = folder.resolve("sheets.pdf");
        assertThat(run(out)).isZero();
        assertThat(text(out)).contains("2 places of last time", "0.10 s 17 D", "0.10 s >100");
    }

    @Test
    void runStillWantsReadings() throws IOException {
        survey("", "");
        StringWriter err = new StringWriter();
        int status =
                Corewright.run(new PrintWriter(new StringWriter()), new PrintWriter(err), "check", folder.toString());
        assertThat(status).isEqualTo(Corewright.REFUSED);
        assertThat(err.toString()).contains("found no reading at all");
    }
}
