package corewright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Input no person wrote is refused, or said to be odd, with its place. */
class InputLimitsTest {
    @Test
    void controlCharactersAreShownNotPrinted(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .with("probes.csv", SurveyFolders.PROBES.replace("P1", "\u001B[2JP"))
                .with("survey.yaml", SurveyFolders.YAML.replace("Test deck", "Test\\x07 \\uD800\\u202E"));

        Intake intake = Reads.read(folder);

        assertThat(intake.survey().readings().probes().get(0).id()).isEqualTo("\uFFFD[2JP");
        assertThat(intake.survey().heading().name()).isEqualTo("Test\uFFFD \uFFFD\uFFFD");
        assertThat(Reads.findings(folder))
                .anyMatch(f ->
                        f.equals("probes.csv:2: probes.csv holds characters that cannot be printed, here the first."
                                + " Each is read as \uFFFD."));
    }

    @Test
    void moreColumnsThanAnySheetHasAreRefusedBeforeTheyAreGathered(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .with("taps.csv", "id,x,y,sound\nT,1,1,\"soft, \"\"dull\"\"\nor so\"\n1" + ",".repeat(5_000_000));

        assertThat(Reads.complaints(folder)).contains("taps.csv:4: expected at most 2000 columns");
    }

    @Test
    void namesOfManyLettersAndListsOfManyItemsAreRefused(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .with("taps.csv", "id,x,y,sound\n" + "a".repeat(101) + ",1,1,dull\n")
                .with(
                        "survey.yaml",
                        SurveyFolders.YAML.replace(
                                "meters:\n", "meters:\n" + "  - { name: B, dry: 1, wet: 2 }\n".repeat(100)));

        assertThat(Reads.complaints(folder))
                .contains(
                        "survey.yaml:8: meters: found 101 items, expected at most 100",
                        "taps.csv:2: id: has 101 characters, expected at most 100");
    }

    @Test
    void aPictureIsJudgedByItsHeader(@TempDir Path dir) throws IOException {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .with(
                        "survey.yaml",
                        SurveyFolders.YAML.replace("probes: probes.csv", "probes: probes.csv, photos: photos.csv"))
                .with("photos.csv", "file,x,y,caption\na.png,1,1,\nb.png,1,1,\nc.jpg,1,1,\nd.jpg,1,1,\ne.jpg,1,1,\n")
                .with("a.png", png(4000, 3000))
                .with("b.png", png(100_000, 100_000))
                .with("c.jpg", jpeg(6000, 4000))
                .with("d.jpg", "no picture");

        assertThat(Reads.read(folder).survey().photos()).hasSize(5);
        assertThat(Reads.findings(folder))
                .containsExactly(
                        "photos.csv:3: Picture b.png has 100000 x 100000 pixels, expected at most 64000000. It is not shown.",
                        "photos.csv:5: Picture d.jpg is not a PNG or JPEG picture. It is not shown.",
                        "photos.csv:6: Picture e.jpg is not in the folder. It is not shown.");
    }

    private static byte[] png(int width, int height) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeLong(0x89504E470D0A1A0AL);
        out.writeInt(13);
        out.writeBytes("IHDR");
        out.writeInt(width);
        out.writeInt(height);
        return bytes.toByteArray();
    }

    private static byte[] jpeg(int width, int height) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.write(new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xE0, 0, 4, 'J', 'F'});
        out.write(new byte[] {(byte) 0xFF, (byte) 0xC2, 0, 11, 8});
        out.writeShort(height);
        out.writeShort(width);
        return bytes.toByteArray();
    }

    @Test
    void devicesPipesAndLinksOutOfTheFolderAreNotOpened(@TempDir Path dir) throws Exception {
        Path device = Path.of("/dev/zero");
        Assumptions.assumeTrue(Files.exists(device), "a system with device files");
        SurveyFolders folder = SurveyFolders.minimal(dir);
        Files.delete(folder.path().resolve("taps.csv"));
        Files.createSymbolicLink(folder.path().resolve("taps.csv"), device);

        assertThat(Reads.complaints(folder))
                .containsExactly(
                        "survey.yaml:7: files.taps: \"taps.csv\" leads outside the survey folder, expected a file"
                                + " inside it");
        Files.delete(folder.path().resolve("taps.csv"));
    }

    @Test
    void aTableNothingNamesIsAFinding(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir).with("more taps.csv", "id,x,y,sound\n");

        assertThat(Reads.findings(folder))
                .containsExactly(
                        "survey.yaml: survey.yaml does not name more taps.csv under files. What is in them is not used.");
    }
}
