package corewright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.jspecify.annotations.NullUnmarked;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No text on any page is cut off: long names take smaller type or more lines, and what must stand stands in full. */
@NullUnmarked // JUnit fills the folder
class NothingShortenedTest {
    private static final String DEFERENCE =
            "Where strength matters, a naval architect or surveyor decides; local rules come first.";

    private static final String VESSEL =
            "Morgenstern von der Schlei, gaff ketch with a raised foredeck, long keel and a"
                    + " very long entry in the register of the harbour where she lies in winter";
    private static final String NAME =
            "Re-survey of foredeck, side decks and coach roof before the planned refit, second"
                    + " visit, with the owner and the yard’s foreman";
    private static final String SURVEYOR = "Wilhelmina Featherstonehaugh-Cholmondeley and Partners, marine surveyors";
    private static final String FACE = "fore deck from the samson post to the deck house - port side";
    private static final String FITTING =
            "inner forestay chain plate with doubler, four bolts and a stainless backing strap";
    private static final String ONE_WORD = "Donaudampfschifffahrtsgesellschaftskapitaensdeckswinschenfundamentplatte";

    @TempDir
    Path folder;

    /** What runs on under the last line of a page would stand on the foot. */
    static void nothingBelowTheBody(Path file) throws IOException {
        double bodyEnd = 283 * 72 / 25.4;
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            PDFTextStripper words = new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> at) {
                    boolean foot =
                            text.startsWith("Where strength") || text.startsWith("Seen:") || text.startsWith("page ");
                    assertThat(foot || at.get(0).getYDirAdj() < bodyEnd)
                            .as(text)
                            .isTrue();
                }
            };
            words.getText(pdf);
        }
    }

    /** Three surveys with long names: of boat and people, of the face, of what is bolted to it. */
    @ParameterizedTest
    @ValueSource(strings = {"heading", "face", "features"})
    void longNames(String which) throws IOException {
        Map<String, String> pages = Printed.pages(
                Printed.assessed(
                        Printed.intake(Printed.DECK, folder.resolve("in"), (file, text) -> named(which, file, text))),
                folder.resolve("out"));
        whole(pages);
        nothingBelowTheBody(folder.resolve("out/owner-report.pdf"));
        for (String file : List.of("owner-report.pdf", "work-cards.pdf", "survey-record.pdf", "drill-template.pdf")) {
            assertThat(Overlaps.of(folder.resolve("out").resolve(file))).isEmpty();
        }
        if (which.equals("heading")) {
            of(pages, "owner").forEach(p -> holds(p, VESSEL, NAME, SURVEYOR));
            of(pages, "maps").forEach(p -> holds(p, VESSEL, NAME, SURVEYOR));
        }
        if (which.equals("face")) {
            of(pages, "owner").forEach(p -> holds(p, FACE));
            of(pages, "maps").forEach(p -> holds(p, FACE));
            holds(of(pages, "work-cards").get(0), FACE);
        }
        if (which.equals("features")) {
            holds(String.join("\n", of(pages, "maps")), ONE_WORD);
        }
    }

    private static String named(String which, String file, String text) {
        return switch (which) {
            case "heading" ->
                text.replace("\"Small deck\"", "\"" + NAME + "\"")
                        .replace("\"Alma\"", "\"" + VESSEL + "\"\nsurveyor: \"" + SURVEYOR + "\"");
            case "face" -> text.replace("name: fore deck,", "name: \"" + FACE + "\",");
            default ->
                text.replace(
                                "fitting,windlass,\"POINT(150 150)\",yes,no",
                                "fitting," + ONE_WORD + ",\"POINT(150 150)\",yes,no")
                        + (file.equals("plan.csv")
                                ? "fitting,\"" + FITTING + "\",\"POINT(1250 330)\",yes,yes,60,,\n"
                                : "");
        };
    }

    private static List<String> of(Map<String, String> pages, String document) {
        return pages.entrySet().stream()
                .filter(e -> e.getKey().startsWith(document))
                .map(Map.Entry::getValue)
                .toList();
    }

    static void whole(Map<String, String> pages) {
        assertThat(pages).hasSizeGreaterThan(5);
        pages.forEach(
                (page, words) -> assertThat(words).as(page).doesNotContain("…").doesNotContain("..."));
        of(pages, "owner").forEach(p -> assertThat(p.replaceAll("\\s+", " ")).contains(DEFERENCE));
    }

    /** Line breaks and parted words left aside. */
    private static void holds(String page, String... names) {
        String closed = page.replaceAll("\\s+", "");
        Stream.of(names).forEach(n -> assertThat(closed).contains(n.replaceAll("\\s+", "")));
    }
}
