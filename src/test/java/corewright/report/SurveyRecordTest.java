package corewright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import corewright.assessment.Assessed;
import corewright.assessment.Assessment;
import corewright.assessment.Assessor;
import corewright.assessment.Earlier;
import corewright.assessment.Progress;
import corewright.damage.FaceDamage;
import corewright.damage.Insight;
import corewright.damage.InsightWork;
import corewright.intake.Intake;
import corewright.intake.SurveyFolder;
import corewright.intake.text.RefusedException;
import corewright.report.data.InputHash;
import corewright.report.page.Program;
import corewright.report.record.SurveyRecord;
import corewright.store.Pictures;
import corewright.store.SurveyFile;
import corewright.survey.Moisture;
import corewright.survey.Readings;
import corewright.survey.Subject;
import corewright.survey.Survey;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jspecify.annotations.NullUnmarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The record says who, with what and on which data, tells every reading, and withholds what the verdict withholds. */
@NullUnmarked // JUnit fills the folder
class SurveyRecordTest {
    @TempDir
    Path folder;

    @Test
    void theRecordHoldsTheSurvey() throws IOException {
        Intake in = SurveyFolder.read(Printed.DECK);
        Assessed assessed = Assessor.assess(in.survey(), in.findings(), Earlier.NONE, Progress.NONE);
        Map<String, Insight> insights = new HashMap<>();
        for (FaceDamage face : assessed.assessment().damage().faces()) {
            insights.put(
                    face.face().name(), InsightWork.of(face, assessed.earlier().parameters()));
        }
        Path file = folder.resolve("record.pdf");
        SurveyRecord.write(assessed.assessment(), insights, file);
        String text = text(file);
        String sum = InputHash.of(in.survey());

        assertThat(text)
                .contains(
                        "Alma",
                        "2 April 2026",
                        "meter A, relative scale, 0 to 100",
                        "hammer, by ear",
                        "Limits",
                        "Signed");
        assertThat(text.replaceAll("\\s", "")).contains(sum);
        assertThat(text).contains("Corewright " + Program.VERSION, "How alike neighbours are: fore deck", "Check.");
        assessed.assessment().damage().regions().forEach(r -> assertThat(text).contains(r.id()));
        // a line of the list for every reading of the meter
        long told = text.lines().mapToLong(SurveyRecordTest::readings).sum();
        assertThat(told).isEqualTo(in.survey().readings().moisture().size());
    }

    /** Photographs stand in the record with file, place and caption, the logo at its head; what is missing is said. */
    @Test
    void picturesAndLetterheadAreInTheRecord() throws Exception {
        Path deck = Files.createDirectories(folder.resolve("deck"));
        for (String name : List.of("logo.png", "hatch.jpg")) {
            BufferedImage picture = new BufferedImage(1600, 900, BufferedImage.TYPE_INT_RGB);
            String format = name.endsWith("png") ? "png" : "jpg";
            assertThat(ImageIO.write(picture, format, deck.resolve(name).toFile()))
                    .isTrue();
        }
        Files.writeString(deck.resolve("photos.csv"), """
                file,face,x,y,caption
                hatch.jpg,fore deck,300,-120,stain under the hatch's coaming
                gone.jpg,fore deck,700,200,
                """);
        Intake in = Printed.intake(
                Printed.DECK,
                deck,
                yaml -> yaml.replace("probes: probes.csv", "probes: probes.csv, photos: photos.csv")
                        + "\nletterhead: { firm: Haven Survey, address: \"Quay 1, Haven\", qualification: surveyor,"
                        + " logo: logo.png }\n");
        assertThat(in.findings()).noneMatch(f -> f.message().contains("logo"));
        assertThat(in.findings())
                .anyMatch(f -> f.subject() == Subject.PICTURE && f.message().contains("gone.jpg"));

        Path file = folder.resolve("record.pdf");
        SurveyRecord.write(Printed.withoutPanels(in), Map.of(), Pictures.in(deck), file);

        assertThat(text(file).replaceAll("\\s+", " "))
                .contains("Haven Survey Quay 1, Haven", "Photographs")
                .contains("hatch.jpg fore deck, 0.30 m aft, 0.12 m to port. stain under the hatch's coaming")
                .contains("gone.jpg fore deck, 0.70 m aft, 0.20 m to starboard. The picture itself was not to be had.");
        Kept.check(file);
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            int pictures = 0;
            for (PDPage page : pdf.getPages()) {
                for (COSName name : page.getResources().getXObjectNames()) {
                    pictures += page.getResources().isImageXObject(name) ? 1 : 0;
                }
            }
            assertThat(pictures).isEqualTo(2);
        }
        Path gpkg = folder.resolve("deck.gpkg");
        SurveyFile.create(gpkg, in.survey(), List.of(), Pictures.in(deck));
        try (SurveyFile kept = SurveyFile.openToRead(gpkg)) {
            assertThat(kept.picture("logo.png")).isEqualTo(Files.readAllBytes(deck.resolve("logo.png")));
        }
    }

    /** A logo that cannot be shown is a finding with its place; one outside the folder is refused. */
    @Test
    void aLogoThatCannotBeShownIsSaid() throws Exception {
        Path deck = Files.createDirectories(folder.resolve("deck"));
        Files.writeString(deck.resolve("logo.png"), "not a picture");
        Intake in = Printed.intake(Printed.DECK, deck, yaml -> yaml + "\nletterhead: { logo: logo.png }\n");
        assertThat(in.findings())
                .anyMatch(f -> f.subject() == Subject.PICTURE
                        && f.message().equals("Picture logo.png is not a PNG or JPEG picture.")
                        && f.origin().toString().startsWith("survey.yaml:"));
        assertThatThrownBy(() -> Printed.intake(
                        Printed.DECK, folder.resolve("out"), yaml -> yaml + "\nletterhead: { logo: ../logo.png }\n"))
                .isInstanceOf(RefusedException.class);
    }

    /** As many as a line of the list has; it stands in columns. */
    private static long readings(String line) {
        java.util.regex.Matcher m = java.util.regex.Pattern.compile("-?[\\d ]+ -?[\\d ]+ A >?\\d+(\\.\\d)?")
                .matcher(line);
        long n = 0;
        while (m.find()) {
            n++;
        }
        return n;
    }

    /** What the meter and the hammer said of a deck scanned closely is left to the survey's files, and the record says so. */
    @Test
    void readingsByTheThousandAreNotPrintedOneByOne() throws IOException {
        Assessment few = SampleAssessment.sound();
        Readings r = few.survey().readings();
        List<Moisture> many = new ArrayList<>(
                Collections.nCopies(6001 - r.taps().size(), r.moisture().get(0)));
        Survey scanned = few.survey()
                .with(new Readings(
                        many, r.taps(), r.probes(), r.feelers(), r.plugs(), r.temperatures(), r.curedTaps()));
        Path file = folder.resolve("scanned.pdf");

        SurveyRecord.write(
                new Assessment(
                        scanned,
                        few.damage(),
                        few.stiffness(),
                        few.plans(),
                        few.gains(),
                        few.decision(),
                        few.work(),
                        few.findings(),
                        few.next(),
                        few.ages()),
                Map.of(),
                file);

        String text = text(file);
        assertThat(text.replaceAll("\\s+", " "))
                .contains("6 001 readings by meter or hammer are not printed one by one.");
        assertThat(text.lines().mapToLong(SurveyRecordTest::readings).sum()).isZero();
    }

    @Test
    void nothingIsToldWhereNothingWasRead() throws IOException {
        Path file = folder.resolve("unread.pdf");
        SurveyRecord.write(SampleAssessment.unread(), Map.of(), file);

        assertThat(text(file).replaceAll("\\s+", " "))
                .contains("No verdict is given.", "None is told.", "SHA-256")
                .doesNotContain("more probably damaged than not.");
    }

    @Test
    void theSumIsOfTheDataAndNotOfItsForm() throws IOException {
        Survey survey = SurveyFolder.read(Printed.DECK).survey();
        Path gpkg = folder.resolve("survey.gpkg");
        SurveyFile.create(gpkg, survey);
        Survey stored = SurveyFile.read(gpkg);
        assertThat(InputHash.of(stored)).isEqualTo(InputHash.of(survey)).matches("[0-9a-f]{64}");

        Survey other = Printed.intake(
                        Printed.DECK,
                        folder.resolve("other"),
                        (name, words) -> name.equals("moisture.csv") ? words.replaceFirst("\\d+\n", "57\n") : words)
                .survey();
        assertThat(InputHash.of(other)).isNotEqualTo(InputHash.of(survey));
    }

    @Test
    void theVersionIsThePoms() throws IOException {
        assertThat(Files.readString(Path.of("pom.xml"))).contains("<version>" + Program.VERSION + "</version>");
    }

    private static String text(Path file) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            return new PDFTextStripper().getText(pdf).replace('\u2009', ' ').replace('\u00a0', ' ');
        }
    }
}
