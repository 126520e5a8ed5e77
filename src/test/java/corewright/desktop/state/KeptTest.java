package corewright.desktop.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import corewright.SurveyFolders;
import corewright.survey.Edit;
import corewright.survey.Part;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptTest {
    @Test
    void theFileThatWasChangedLastIsTheOneBesideAFolder(@TempDir Path dir) throws IOException {
        Path folder = Files.createDirectory(dir.resolve("deck"));
        assertThat(Kept.beside(folder)).isEmpty();
        Files.createFile(dir.resolve("deckhouse.gpkg"));
        assertThat(Kept.beside(folder)).as("of another folder").isEmpty();
        Path newer = Files.createFile(dir.resolve("deck.gpkg"));
        Path older = Files.createFile(dir.resolve("deck-2.gpkg"));
        Files.setLastModifiedTime(older, FileTime.fromMillis(0));

        assertThat(Kept.beside(folder)).hasValue(newer.toRealPath());
    }

    @Test
    void saysWhereEditsGo(@TempDir Path dir) throws IOException {
        EditLog folder = SurveyOpener.open(SurveyFolders.minimal(dir).path());

        assertThat(Kept.sentence(folder)).startsWith("Edits will be kept in a survey file beside the folder");
        assertThat(Kept.sentence(new MemoryLog(folder.survey(), List.of()))).contains("not kept");
    }

    /** A disk may take its time; the window asks for the survey meanwhile. */
    @Test
    void theSurveyIsSeenWhileAnEditIsWritten(@TempDir Path dir) throws Exception {
        EditLog read = SurveyOpener.open(SurveyFolders.minimal(dir).path());
        CountDownLatch writing = new CountDownLatch(1);
        CountDownLatch mayGoOn = new CountDownLatch(1);
        EditLog slow = FileLog.ofFolder(dir, read.survey(), List.of(), () -> {
            writing.countDown();
            try {
                mayGoOn.await();
            } catch (InterruptedException e) {
                throw new IOException(e);
            }
            throw new IOException("no room");
        });
        Edit noted = Edit.put(Part.HEADING, read.survey().heading().withNotes("kept"));
        Thread writer =
                new Thread(() -> assertThatThrownBy(() -> slow.append(noted)).hasMessage("no room"));
        writer.start();
        writing.await();

        assertThat(CompletableFuture.supplyAsync(slow::survey).get(5, TimeUnit.SECONDS))
                .isSameAs(read.survey());
        assertThat(CompletableFuture.supplyAsync(slow::canUndo).get(5, TimeUnit.SECONDS))
                .isFalse();
        mayGoOn.countDown();
        writer.join();
    }
}
