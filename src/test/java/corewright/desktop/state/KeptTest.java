package corewright.desktop.state;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
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
}
