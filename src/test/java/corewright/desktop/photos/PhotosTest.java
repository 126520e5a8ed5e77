package corewright.desktop.photos;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import corewright.SurveyFolders;
import corewright.assessment.Assessment;
import corewright.desktop.MapChain;
import corewright.desktop.state.AtOnce;
import corewright.desktop.state.EditLog;
import corewright.desktop.state.SurveyOpener;
import corewright.desktop.state.Workbench;
import corewright.store.SurveyFile;
import corewright.survey.Photo;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PhotosTest {
    private static final Spot PLACE = new Spot("foredeck", 300, 200);

    private final Workbench bench = new Workbench(new AtOnce(), MapChain::assess);

    private static Path picture(Path folder, int width, int height) throws IOException {
        Path file = folder.resolve("crack.png");
        ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), "png", file.toFile());
        return file;
    }

    private Survey open(Path folder) {
        Path survey = SurveyFolders.minimal(folder).path();
        bench.open("survey", () -> SurveyOpener.open(survey));
        return bench.survey().orElseThrow();
    }

    private void pin(Path file, String caption) throws IOException {
        bench.edit(
                "photograph",
                Photos.pin(java.util.Objects.requireNonNull(bench.log()), file, Photos.read(file), PLACE, caption));
    }

    @Test
    void aPhotographIsKeptInTheSurveyFileAndUndoTakesItBack(@TempDir Path folder, @TempDir Path other)
            throws IOException {
        open(folder);
        Path file = picture(other, 40, 30);
        pin(file, " crack beside the hatch ");
        pin(file, "the same again");

        assertThat(bench.survey().orElseThrow().photos())
                .extracting(Photo::file, Photo::caption)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("photos/crack.png", "crack beside the hatch"),
                        org.assertj.core.groups.Tuple.tuple("photos/crack-2.png", "the same again"));
        bench.undo();
        assertThat(bench.survey().orElseThrow().photos()).hasSize(1);
        bench.redo();
        bench.close();

        try (SurveyFile again = SurveyFile.open(folder.resolve("survey.gpkg"))) {
            assertThat(again.survey().photos()).hasSize(2);
            assertThat(again.picture("photos/crack-2.png")).isEqualTo(Files.readAllBytes(file));
        }
    }

    /** Undo knows a photograph by its name: that of one taken away is not given to another picture. */
    @Test
    void undoBringsBackThePictureThatWasTakenAway(@TempDir Path folder, @TempDir Path other) throws IOException {
        open(folder);
        Path file = picture(other, 40, 30);
        byte[] first = Files.readAllBytes(file);
        pin(file, "first");
        bench.edit("away", Photos.remove(bench.survey().orElseThrow().photos().get(0)));
        pin(picture(other, 50, 20), "second");
        bench.undo();
        bench.undo();

        Photo back = bench.survey().orElseThrow().photos().get(0);
        EditLog log = java.util.Objects.requireNonNull(bench.log());
        assertThat(back.caption()).isEqualTo("first");
        assertThat(log.picture(back.file())).isEqualTo(first);
        assertThat(log.picture("photos/crack-2.png")).isEqualTo(Files.readAllBytes(file));
        bench.close();
    }

    @Test
    void aPhotographChangesNothingThatIsConcluded(@TempDir Path folder, @TempDir Path other) throws IOException {
        open(folder);
        Assessment before = bench.found().orElseThrow();
        pin(picture(other, 40, 30), "");

        assertThat(bench.fresh()).isTrue();
        assertThat(bench.found().orElseThrow()).isSameAs(before);
        assertThat(bench.shown().orElseThrow().survey().photos()).hasSize(1);
        assertThat(bench.shown().orElseThrow()).isSameAs(bench.shown().orElseThrow());
        bench.close();
    }

    @Test
    void itIsFoundAgainByTouchAndItsWordsCanBeChanged(@TempDir Path folder, @TempDir Path other) throws IOException {
        open(folder);
        pin(picture(other, 40, 30), "crack");
        Survey survey = bench.survey().orElseThrow();

        assertThat(Photos.near(survey, "foredeck", 310, 205, 5)).isEmpty();
        Photo photo = Photos.near(survey, "foredeck", 310, 205, 20).orElseThrow();
        bench.edit("caption", Photos.caption(photo, "old crack"));
        assertThat(bench.survey().orElseThrow().photos().get(0).caption()).isEqualTo("old crack");
        bench.edit("away", Photos.remove(bench.survey().orElseThrow().photos().get(0)));
        assertThat(bench.survey().orElseThrow().photos()).isEmpty();
        bench.close();
    }

    @Test
    void whatIsNoPictureOrTooLargeWhenDecodedIsRefused(@TempDir Path folder) throws IOException {
        Path text = Files.writeString(folder.resolve("notes.jpg"), "not a picture at all, but long enough");
        assertThatThrownBy(() -> Photos.read(text)).hasMessage("notes.jpg is not a PNG or JPEG picture");

        byte[] png = Files.readAllBytes(picture(folder, 10, 10));
        png[16] = 0x01; // width 16 777 226: the header stands before any check of it
        Path bomb = Files.write(folder.resolve("bomb.png"), png);
        assertThatThrownBy(() -> Photos.read(bomb)).hasMessageContaining("pixels, expected at most 64000000");
    }

    @Test
    void aPictureIsDecodedNoLargerThanItIsShown(@TempDir Path folder) throws IOException {
        byte[] content = Files.readAllBytes(picture(folder, 4000, 3000));

        assertThat(Photos.small(content, 700).getWidth()).isBetween(700, 1400);
    }
}
