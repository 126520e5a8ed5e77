package corewright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import corewright.GeneratedSurveys;
import corewright.survey.About;
import corewright.survey.Edit;
import corewright.survey.Finding;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Plug;
import corewright.survey.Spot;
import corewright.survey.Subject;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SurveyFileTest {
    private static final Plug PLUG = new Plug(new Origin("by hand", 0), "K1", new Spot("foredeck", 10, 20), 11);

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void givesBackTheSameSurveyToTheLastDigit(long seed, @TempDir Path dir) throws IOException {
        Survey survey = new GeneratedSurveys(seed).survey(20);

        SurveyFile.create(dir.resolve("s.gpkg"), survey);

        assertThat(SurveyFile.read(dir.resolve("s.gpkg"))).isEqualTo(survey);
    }

    @Test
    void theSameSurveyGivesTheSameBytes(@TempDir Path dir) throws IOException {
        SurveyFile.create(dir.resolve("a.gpkg"), new GeneratedSurveys(1).survey(20));
        SurveyFile.create(dir.resolve("b.gpkg"), new GeneratedSurveys(1).survey(20));

        assertThat(dir.resolve("a.gpkg")).hasSameBinaryContentAs(dir.resolve("b.gpkg"));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void everyEditIsInTheFileAndUndoSurvivesClosing(long seed, @TempDir Path dir) throws IOException {
        GeneratedSurveys generated = new GeneratedSurveys(seed);
        Path path = dir.resolve("s.gpkg");
        List<Survey> states = new ArrayList<>(List.of(generated.survey(5)));
        SurveyFile.create(path, states.get(0));
        try (SurveyFile file = SurveyFile.open(path)) {
            for (int i = 0; i < 40; i++) {
                file.append(generated.edit(file.survey()));
                states.add(file.survey());
                if (i % 10 == 0) {
                    assertThat(SurveyFile.read(path)).as("after edit %d", i).isEqualTo(file.survey());
                }
            }
        }

        try (SurveyFile file = SurveyFile.open(path)) {
            assertThat(file.survey()).isEqualTo(states.get(40));
            assertThat(file.canRedo()).isFalse();
            for (int i = 39; i >= 0; i--) {
                file.undo();
                assertThat(file.survey()).as("undo to %d", i).isEqualTo(states.get(i));
            }
            assertThat(file.canUndo()).isFalse();
        }
        try (SurveyFile file = SurveyFile.open(path)) {
            assertThat(file.survey()).isEqualTo(states.get(0));
            while (file.canRedo()) {
                file.redo();
            }
        }
        assertThat(SurveyFile.read(path)).isEqualTo(states.get(40));
    }

    @Test
    void aNewEditForgetsWhatWasTakenBack(@TempDir Path dir) throws IOException {
        try (SurveyFile file = generated(dir)) {
            file.append(Edit.add(file.survey(), Part.PLUGS, PLUG));
            file.undo();
            file.append(Edit.remove(
                    file.survey(), Part.TAPS, file.survey().readings().taps().get(0)));

            assertThat(file.canRedo()).isFalse();
            assertThat(file.survey().readings().plugs()).doesNotContain(PLUG);
        }
    }

    @Test
    void manyInsertionsAtOnePlaceKeepTheirOrder(@TempDir Path dir) throws IOException {
        Path path = dir.resolve("s.gpkg");
        try (SurveyFile file = generated(dir)) {
            for (int i = 0; i < 90; i++) {
                Plug plug = new Plug(PLUG.origin(), "K" + i, PLUG.spot(), i);
                file.append(new Edit.Insert<>(Part.PLUGS, 1, plug));
            }

            assertThat(SurveyFile.read(path)).isEqualTo(file.survey());
        }
    }

    @Test
    void anEditThatDoesNotFitChangesNothing(@TempDir Path dir) throws IOException {
        Path path = dir.resolve("s.gpkg");
        try (SurveyFile file = generated(dir)) {
            Survey before = file.survey();

            assertThatThrownBy(() -> file.append(new Edit.Together(
                            List.of(Edit.add(before, Part.PLUGS, PLUG), new Edit.Remove<>(Part.TAPS, 9999)))))
                    .isInstanceOf(IndexOutOfBoundsException.class);

            assertThat(file.survey()).isEqualTo(before);
            assertThat(SurveyFile.read(path)).isEqualTo(before);
            assertThat(file.canUndo()).isFalse();
        }
    }

    @Test
    void whoMayOnlyReadIsToldAndSavesElsewhere(@TempDir Path dir) throws IOException {
        Path path = dir.resolve("s.gpkg");
        try (SurveyFile first = generated(dir);
                SurveyFile second = SurveyFile.openToRead(path)) {
            assertThat(second.readOnly()).isTrue();
            assertThat(second.whyReadOnly()).endsWith("s.gpkg: was opened to be read only.");
            assertThat(second.survey()).isEqualTo(first.survey());
            assertThatThrownBy(() -> second.append(Edit.add(second.survey(), Part.PLUGS, PLUG)))
                    .isInstanceOf(StoreException.class)
                    .hasMessageEndingWith("is open to be read only; save a copy elsewhere to change it");
            second.saveCopy(dir.resolve("copy.gpkg"));
            assertThat(SurveyFile.read(dir.resolve("copy.gpkg"))).isEqualTo(first.survey());
        }
    }

    @Test
    void aFolderThatCannotBeWrittenIsReadAndSaysSo(@TempDir Path dir) throws IOException {
        generated(dir).close();
        assumeTrue(dir.toFile().setWritable(false));
        assumeFalse(Files.isWritable(dir), "the superuser may write anywhere");
        try (SurveyFile file = SurveyFile.open(dir.resolve("s.gpkg"))) {
            assertThat(file.whyReadOnly())
                    .endsWith("s.gpkg: the file or its folder cannot be written; here it is opened to be read only.");
        } finally {
            assertThat(dir.toFile().setWritable(true)).isTrue();
        }
    }

    @Test
    void aFileDeletedWhileOpenIsSaidAndCanBeSavedElsewhere(@TempDir Path dir) throws IOException {
        try (SurveyFile file = generated(dir)) {
            file.append(Edit.add(file.survey(), Part.PLUGS, PLUG));
            Survey before = file.survey();
            Files.delete(file.path());

            assertThatThrownBy(() -> file.append(Edit.add(before, Part.PLUGS, PLUG)))
                    .isInstanceOf(StoreException.class)
                    .hasMessage(file.path()
                            + ": was moved or deleted while open; nothing of it was written, save a copy elsewhere");
            file.saveCopy(dir.resolve("copy.gpkg"));

            assertThat(file.survey()).isEqualTo(before);
            assertThat(SurveyFile.read(dir.resolve("copy.gpkg"))).isEqualTo(before);
        }
    }

    @Test
    void aChangeByAnotherProgramIsNoticed(@TempDir Path dir) throws Exception {
        try (SurveyFile file = generated(dir)) {
            Samples.sql(file.path(), "UPDATE heading SET vessel = 'Wren'");

            assertThatThrownBy(() -> file.append(Edit.add(file.survey(), Part.PLUGS, PLUG)))
                    .isInstanceOf(StoreException.class)
                    .hasMessage(file.path() + ": was changed by another program; close it and open it again");
        }
        assertThat(SurveyFile.read(dir.resolve("s.gpkg")).heading().vessel()).isEqualTo("Wren");
    }

    @Test
    void aCopyHasTheJournalAndThePictures(@TempDir Path dir) throws IOException {
        Path copy = dir.resolve("it's a copy.gpkg");
        byte[] picture = {1, 2, 3};
        try (SurveyFile file = generated(dir)) {
            file.putPicture("p.jpg", picture);
            file.putPicture("p.jpg", picture);
            assertThatThrownBy(() -> file.putPicture("p.jpg", new byte[] {9}))
                    .hasMessageEndingWith("holds another picture called p.jpg already; name this one otherwise");
            file.append(Edit.add(file.survey(), Part.PLUGS, PLUG));
            file.saveCopy(copy);
            assertThatThrownBy(() -> file.saveCopy(copy)).hasMessageContaining("is there already");
        }
        try (SurveyFile file = SurveyFile.open(copy)) {
            assertThat(file.picture("p.jpg")).isEqualTo(picture);
            assertThat(file.picture("q.jpg")).isNull();
            assertThat(file.canUndo()).isTrue();
        }
    }

    @Test
    void aFolderBecomesAFileBesideItAndEarlierFilesStay(@TempDir Path dir) throws IOException {
        Path folder = dir.resolve("wren");
        Files.createDirectories(folder.resolve("pictures"));
        Survey survey = new GeneratedSurveys(3).survey(4);
        Files.write(folder.resolve(survey.photos().get(0).file()), new byte[] {7});

        for (String name : List.of("wren.gpkg", "wren-2.gpkg")) {
            try (SurveyFile file = SurveyFile.createBeside(folder, survey, List.of(), Pictures.in(folder))) {
                file.append(Edit.add(file.survey(), Part.PLUGS, PLUG));

                assertThat(file.path()).isEqualTo(dir.toRealPath().resolve(name));
                assertThat(file.picture(survey.photos().get(0).file())).isEqualTo(new byte[] {7});
            }
        }
    }

    private static SurveyFile generated(Path dir) throws IOException {
        SurveyFile.create(dir.resolve("s.gpkg"), new GeneratedSurveys(1).survey(5));
        return SurveyFile.open(dir.resolve("s.gpkg"));
    }

    private static final List<Finding> NOTES = notes();

    private static List<Finding> notes() {
        Origin origin = new Origin("plugs.csv", 7);
        List<Finding> notes = new ArrayList<>();
        for (About about : List.of(
                About.of(PLUG),
                new About.OfFeature("beam", PLUG.spot()),
                new About.OfFace("foredeck"),
                new About.OfPlace(PLUG.spot()),
                new About.OfFile(origin))) {
            notes.add(new Finding(Finding.Severity.DOUBT, origin, about, Subject.OFF_SCALE, "it is", "so"));
        }
        return notes;
    }

    @Test
    void notesOfTheImportComeBackWithWhatTheyAreAbout(@TempDir Path dir) throws IOException {
        Path path = dir.resolve("s.gpkg");
        SurveyFile.create(path, new GeneratedSurveys(1).survey(5), NOTES, Pictures.NONE);

        try (SurveyFile file = SurveyFile.open(path)) {
            assertThat(file.importNotes()).isEqualTo(NOTES);
        }
    }

    /** A note of version 3 does not say of what kind its reading is: the table that holds the reading does. */
    @Test
    void notesOfAnOlderFileFindTheirReadings(@TempDir Path dir) throws Exception {
        Path path = dir.resolve("s.gpkg");
        Survey survey = new GeneratedSurveys(1).survey(5);
        Plug plug = survey.readings().plugs().get(0);
        Finding note =
                new Finding(Finding.Severity.DOUBT, plug.origin(), About.of(plug), Subject.VOID_DEPTH, "it is", "so");
        SurveyFile.create(path, survey, List.of(note), Pictures.NONE);
        Samples.makeVersion6(path);
        Samples.sql(
                path,
                "ALTER TABLE resins DROP COLUMN shear_strength_mpa",
                "ALTER TABLE resins DROP COLUMN crush_mpa",
                "ALTER TABLE resins DROP COLUMN bond_shear_mpa",
                "ALTER TABLE resins DROP COLUMN bond_peel_mpa",
                "ALTER TABLE plan_features DROP COLUMN coaming_height_mm",
                "ALTER TABLE plan_features DROP COLUMN coaming_thickness_mm",
                "ALTER TABLE plan_features DROP COLUMN coaming_skin",
                "ALTER TABLE laminates DROP COLUMN core_form",
                "ALTER TABLE laminates DROP COLUMN solid_edge_mm",
                "ALTER TABLE import_notes DROP COLUMN about",
                "UPDATE import_notes SET subject = 'void depth'",
                "UPDATE survey_file SET value = 3 WHERE name = 'schema_version'");

        try (SurveyFile file = SurveyFile.open(path)) {
            assertThat(file.importNotes()).containsExactly(note);
        }
    }
}
