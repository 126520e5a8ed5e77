package corewright.report;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.Assessments;
import corewright.assessment.Assessment;
import corewright.assessment.Progress;
import corewright.damage.Damage;
import corewright.damage.DamageMap;
import corewright.decision.Decision;
import corewright.desktop.plan.PlanCamera;
import corewright.drawing.kit.Orientation;
import corewright.drawing.screen.BowUpMap;
import corewright.intake.SurveyFolder;
import corewright.repair.plan.Hole;
import corewright.repair.plan.RepairOptions;
import corewright.reuse.Memory;
import corewright.stiffness.StiffnessMap;
import corewright.survey.Face;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.jspecify.annotations.NullUnmarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A hole lies to the same side on the plan, on the card and on the boat. On the boat x runs aft and y to starboard, overhead
 * too, and up on a wall; every sheet has the bow at its left. So aft is right on every sheet, and +y is up where one looks from
 * above or square on, down where one looks from below: with the bow at the left, port is then at the top.
 */
@NullUnmarked // JUnit fills the folders
class HandsTest {
    private static final Path DECK = Path.of("src/test/resources/corewright/cli/small-deck");

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "3, 180, false, 'seen from above, bow to the left, starboard at the top'",
        "75, 270, true, 'seen square on, bow to the left, high side at the top'",
        "180, 0, true, 'seen from below, bow to the left, port at the top'"
    })
    void aHoleLiesToTheSameSideOnEverySheet(double tilt, double uphill, boolean plusYDown, String words)
            throws IOException {
        Assessment assessment = assessed(tilt, uphill);
        List<Hole> holes = assessment.decision().injections().get(0).holes();
        Hole a = holes.get(0);
        Hole b = holes.stream()
                .filter(h -> Math.abs(h.spot().yMm() - a.spot().yMm()) > 20
                        && Math.abs(h.spot().xMm() - a.spot().xMm()) > 20)
                .findFirst()
                .orElseThrow();
        Path out = folder.resolve("out");
        Outputs.write(assessment, out, Progress.NONE, Map::of);

        double[][] onMap = {inSvg(out, label(a)), inSvg(out, label(b))};
        double[][] onCard = {onCard(out, label(a), holes), onCard(out, label(b), holes)};
        for (double[][] at : List.of(onMap, onCard)) {
            assertThat(Math.signum(at[1][0] - at[0][0]))
                    .as("aft is right")
                    .isEqualTo(Math.signum(b.spot().xMm() - a.spot().xMm()));
            double down = Math.signum(at[1][1] - at[0][1]);
            assertThat(down)
                    .as("+y")
                    .isEqualTo((plusYDown ? 1 : -1)
                            * Math.signum(b.spot().yMm() - a.spot().yMm()));
        }
        assertThat(Files.readString(svg(out))).contains(words);
        assertThat(text(out.resolve("work-cards.pdf"))).contains(words);
    }

    @ParameterizedTest
    @CsvSource({"0, 0, false", "75, 90, false", "105, 90, false", "75, 270, true", "100, 0, true", "179, 90, true"})
    void yRunsUpTheSheetUnlessOneLooksFromBelow(double tilt, double uphill, boolean down) throws IOException {
        Face face = SurveyFolder.read(deck(tilt, uphill)).survey().faces().get(0);
        assertThat(face.plusYPointsDown()).isEqualTo(down);
        assertThat(Orientation.of(face).contains("port at the top")).isEqualTo(down && !face.wall());
    }

    /** What is pressed on the plan is what lies there on the boat, bow to the left and bow up. */
    @ParameterizedTest
    @CsvSource({"3, 180", "90, 90", "170, 0"})
    void aPressGivesThePlaceOnTheBoat(double tilt, double uphill) throws IOException {
        Face face = SurveyFolder.read(deck(tilt, uphill)).survey().faces().get(0);
        PlanCamera camera = PlanCamera.fitting(face, 1000, 700)
                .zoomed(2, 300, 200)
                .moved(15, -40)
                .sized(900, 720);
        BowUpMap bowUp = new BowUpMap(face, 800, 600);
        for (double[] at : new double[][] {{0, 0}, {400, 700}, {1300, 120}}) {
            assertThat(camera.xMm(camera.px(at[0]))).isCloseTo(at[0], offset());
            assertThat(camera.yMm(camera.py(at[1]))).isCloseTo(at[1], offset());
            assertThat(bowUp.xMm(bowUp.at(at[0], at[1]).getY())).isCloseTo(at[0], offset());
            assertThat(bowUp.yMm(bowUp.at(at[0], at[1]).getX())).isCloseTo(at[1], offset());
        }
        boolean below = tilt > 90;
        assertThat(camera.py(900) > camera.py(100)).isEqualTo(below);
        assertThat(bowUp.at(500, 900).getX() < bowUp.at(500, 100).getX())
                .as("bow up and seen from below, starboard is at the left")
                .isEqualTo(below);
        assertThat(bowUp.at(1200, 500).getY()).isGreaterThan(bowUp.at(200, 500).getY());
    }

    /** Coordinates in open files are the boat's, never the paper's. */
    @Test
    void openFilesStayInSurveyCoordinates() throws IOException {
        Assessment below = assessed(180, 0);
        Path out = folder.resolve("out");
        Outputs.write(below, out, Progress.NONE, Map::of);
        for (Hole hole : below.decision().injections().get(0).holes()) {
            assertThat(Files.readString(out.resolve("holes.csv")))
                    .contains(hole.id() + ",fore deck")
                    .contains(String.format(
                            Locale.ROOT,
                            "%.0f,%.0f",
                            hole.spot().xMm(),
                            hole.spot().yMm()));
        }
        assertThat(Files.readString(out.resolve("exchange/holes.dxf"))).doesNotContain("\n20\n-");
    }

    private static org.assertj.core.data.Offset<Double> offset() {
        return org.assertj.core.data.Offset.offset(1e-9); // rounding of a few products
    }

    private Assessment assessed(double tilt, double uphill) throws IOException {
        Survey survey = SurveyFolder.read(deck(tilt, uphill)).survey();
        DamageMap damage = Damage.fit(survey, new Memory()).map();
        RepairOptions options = Assessments.alone(survey, damage, new Memory());
        Decision decision = Assessments.decide(survey, damage, options);
        return Assessments.of(survey, damage, StiffnessMap.NONE, options, decision, List.of(), List.of());
    }

    private Path deck(double tilt, double uphill) throws IOException {
        Path deck = Files.createDirectories(folder.resolve("deck"));
        try (DirectoryStream<Path> files = Files.newDirectoryStream(DECK)) {
            for (Path file : files) {
                String text = Files.readString(file)
                        .replace("tilt_deg: 3, uphill_deg: 180", "tilt_deg: " + tilt + ", uphill_deg: " + uphill);
                Files.writeString(deck.resolve(file.getFileName().toString()), text);
            }
        }
        return deck;
    }

    /** As it stands beside its mark: {@code 2} or {@code V1}. */
    private static String label(Hole hole) {
        return hole.id().substring(hole.id().indexOf('-') + 1);
    }

    private static Path svg(Path out) {
        return out.resolve("maps/fore-deck-repair.svg");
    }

    private static double[] inSvg(Path out, String label) throws IOException {
        Matcher m = Pattern.compile("<text[^>]*>" + label + "</text").matcher(Files.readString(svg(out)));
        assertThat(m.find()).as("label " + label).isTrue();
        String tag = m.group();
        return new double[] {attribute(tag, "x"), attribute(tag, "y")};
    }

    private static double attribute(String tag, String name) {
        Matcher m = Pattern.compile(" " + name + "=\"([-0-9.]+)\"").matcher(tag);
        assertThat(m.find()).isTrue();
        return Double.parseDouble(m.group(1));
    }

    /** Where the label stands inside the plan at the left of the card's front. */
    private static double[] onCard(Path out, String label, List<Hole> holes) throws IOException {
        Map<String, double[]> seen = new LinkedHashMap<>();
        try (PDDocument pdf = Loader.loadPDF(out.resolve("work-cards.pdf").toFile())) {
            PDFTextStripper words = new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> at) {
                    TextPosition first = at.get(0);
                    boolean inPlan = first.getXDirAdj() < 385 && first.getYDirAdj() > 110 && first.getYDirAdj() < 400;
                    if (inPlan) {
                        seen.putIfAbsent(text.strip(), new double[] {first.getXDirAdj(), first.getYDirAdj()});
                    }
                }
            };
            words.setEndPage(1);
            words.getText(pdf);
        }
        return Objects.requireNonNull(seen.get(label), label + " of " + holes.size() + " holes");
    }

    private static String text(Path file) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            return new PDFTextStripper().getText(pdf);
        }
    }
}
