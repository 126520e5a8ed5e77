package corewright.desktop.imports;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import corewright.desktop.state.Units;
import corewright.intake.CsvImport.What;
import corewright.intake.SurveyFolder;
import corewright.intake.text.LengthUnit;
import corewright.survey.Moisture;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.Tap;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ImportModelTest {
    private static ImportModel of(Path folder, String name, String text) throws IOException {
        Survey survey = SurveyFolder.read(SurveyFolders.minimal(folder).path()).survey();
        return ImportModel.of(Files.writeString(folder.resolve(name), text), survey, Units.METRIC);
    }

    @Test
    void guessesSeparatorDecimalUnitAndColumns(@TempDir Path folder) throws IOException {
        ImportModel model =
                of(folder, "export.csv", "Nr;aft (m);stbd (m);reading\n1;0,10;-0,05;12,5\n2;0,20;0,05;68\n");

        assertThat(model.separator()).isEqualTo(';');
        assertThat(model.choice().decimalComma()).isTrue();
        assertThat(model.choice().length()).isEqualTo(LengthUnit.M);
        assertThat(model.choice().columns())
                .containsEntry("x", 1)
                .containsEntry("y", 2)
                .containsEntry("value", 3);
        assertThat(model.readings().moisture())
                .extracting(Moisture::spot)
                .containsExactly(new Spot("foredeck", 100, -50), new Spot("foredeck", 200, 50));
        assertThat(model.effect())
                .isEqualTo(
                        "2 moisture readings from 0.10 to 0.20 m aft and -0.05 to 0.05 m to starboard, values 12.5 to"
                                + " 68.");
    }

    @Test
    void aFileWithoutAHeaderIsReadByItsOrder(@TempDir Path folder) throws IOException {
        ImportModel model = of(folder, "a.csv", "100,150,12\n200,150,14\n");

        assertThat(model.choice().header()).isFalse();
        assertThat(model.columnNames()).containsExactly("A", "B", "C");
        assertThat(model.good()).isEqualTo(2);
    }

    @Test
    void tapsAreKnownByTheirWords(@TempDir Path folder) throws IOException {
        ImportModel model = of(folder, "b.csv", "x,y,what\n100,150,hollow\n200,150,sound\n");
        assertThat(model.choice().what()).isEqualTo(What.TAPS);
        model.column(2, "sound");

        assertThat(model.readings().taps()).extracting(Tap::sound).containsExactly(Sound.HOLLOW, Sound.SOUND);
    }

    @Test
    void everyChoiceCanBeChanged(@TempDir Path folder) throws IOException {
        ImportModel model = of(folder, "c.csv", "x,y,value\n10,15,12\n20,15,14\n");
        assertThat(model.readings().moisture().get(0).spot().xMm())
                .as("guessed metres")
                .isEqualTo(10_000);
        model.length(LengthUnit.CM);
        assertThat(model.readings().moisture().get(0).spot().xMm()).isEqualTo(100);
        model.column(0, "y");
        model.column(1, "x");
        assertThat(model.readings().moisture().get(0).spot()).isEqualTo(new Spot("foredeck", 150, 100));
        model.column(2, "");

        assertThat(model.effect()).isEqualTo("Say which column holds value.");
        assertThat(model.good()).isZero();
    }

    @Test
    void aBadRowStandsFirstWithItsReasonAndIsMendedInPlace(@TempDir Path folder) throws IOException {
        ImportModel model = of(folder, "d.csv", "x,y,value\n100,150,12\n200,150,4l.5\n300,150,14\n");

        assertThat(model.bad()).isEqualTo(1);
        assertThat(model.preview().get(0).problem()).isEqualTo("value: found \"4l.5\", expected a number");
        assertThat(model.preview().get(0).line().number())
                .as("the file's own line")
                .isEqualTo(3);
        model.mend(3, 2, "41.5");

        assertThat(model.bad()).isZero();
        assertThat(model.readings().moisture()).extracting(Moisture::value).containsExactly(12.0, 41.5, 14.0);
    }

    @Test
    void allOfItIsOneEdit(@TempDir Path folder) throws IOException {
        ImportModel model = of(folder, "e.csv", "x,y,value\n100,150,12\n200,150,14\n");
        Survey before = SurveyFolder.read(folder.resolve("survey")).survey();

        Survey after = model.edit(before).apply(before);

        assertThat(after.readings().moisture())
                .hasSize(before.readings().moisture().size() + 2);
        assertThat(model.edit(before).inverse(before).apply(after)).isEqualTo(before);
        assertThat(model.deed()).isEqualTo("import of e.csv");
    }
}
