package corewright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.SurveyFolders;
import corewright.survey.CoreMoisture;
import corewright.survey.CoreState;
import corewright.survey.FeelerEnd;
import corewright.survey.Moisture;
import corewright.survey.Readings;
import corewright.survey.Side;
import corewright.survey.Sound;
import corewright.survey.SurfaceTemperature;
import corewright.survey.Survey;
import corewright.survey.Tap;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadingsTest {
    @Test
    void readsEveryColumnOfMoisture(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir).with("moisture.csv", """
                        id,x,y,value,meter,temperature,taken,reference,note
                        M1,10,20,12.5,A,"18,5",2026-04-02T10:15:30Z,yes,bare core
                        ,30,40,>100,,64 F,2026-04-02,,
                        M3,50,60,100+,A,,,,
                        M4,50,70,> 80,A,,2026-04-02 8:05,no,
                        """);

        assertThat(Reads.read(folder).survey().readings().moisture())
                .extracting(m -> m.id() + " " + m.value() + " " + m.offScale() + " " + m.temperatureC() + " "
                        + m.taken() + " " + m.reference() + " " + m.note())
                .containsExactly(
                        "M1 12.5 false 18.5 2026-04-02T10:15:30 true bare core",
                        "moisture.csv:3 100.0 true 17.77777777777778 2026-04-02T00:00 false ",
                        "M3 100.0 true null null false ",
                        "M4 80.0 true null 2026-04-02T08:05 false ");
    }

    @Test
    void aReadingBeyondTheScaleCountsAsOffScale(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir).adding("moisture.csv", "M25,450,450,140,A\n");

        Moisture last = Reads.read(folder).survey().readings().moisture().get(24);

        assertThat(last.value()).isEqualTo(100);
        assertThat(last.offScale()).isTrue();
        assertThat(Reads.findings(folder))
                .containsExactly(
                        "moisture.csv:26: Reading M25 of meter A is 140, beyond the end of its scale at 100. It"
                                + " counts as off the scale: that wet or wetter.");
    }

    @Test
    void readsTheOtherKinds(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .replacing(
                        "survey.yaml",
                        "probes: probes.csv",
                        "probes: probes.csv, feelers: f.csv, plugs: p.csv, temperatures: sub/t.csv, log: l.csv, photos: ph.csv")
                .with("taps.csv", "x,y,sound,contact_us\n1,1,Hollow,\n2,2,,450\n3,3,DULL,300.5\n")
                .with(
                        "probes.csv",
                        "x,y,void_depth,core_state,core_moisture\n100,100,0,Dry,\n200,200,12.5,none,wet\n300,300,3,,\n")
                .with("f.csv", "x1,y1,x2,y2,end,void_depth\n0,0,300,0,firm,\n0,100,300,100,Beyond,4\n")
                .with("p.csv", "id,x,y,mc_percent\nC1,10,10,14.5\n")
                .with("sub/t.csv", "x,y,minutes,value\n10,10,5,31.5\n20,20,7.5,warm\n30,30,9,not-warm\n")
                .with("l.csv", "hole,minutes,grams,ooze_at\nH1,2.5,30,H2\nH2,6,12,\n")
                .with("ph.csv", "file,x,y,caption\nimg/1.jpg,10,20,the cut\n");

        Survey survey = Reads.read(folder).survey();

        Readings r = survey.readings();
        assertThat(r.taps()).extracting(Tap::sound).containsExactly(Sound.HOLLOW, null, Sound.DULL);
        assertThat(r.taps()).extracting(Tap::contactUs).containsExactly(null, 450.0, 300.5);
        assertThat(r.probes()).extracting(p -> p.coreState()).containsExactly(CoreState.DRY, CoreState.NONE, null);
        assertThat(r.probes()).extracting(p -> p.coreMoisture()).containsExactly(null, CoreMoisture.WET, null);
        assertThat(r.feelers()).extracting(f -> f.end()).containsExactly(FeelerEnd.FIRM, FeelerEnd.BEYOND);
        assertThat(r.feelers()).extracting(f -> f.voidDepthMm()).containsExactly(null, 4.0);
        assertThat(r.plugs().get(0).moisturePercent()).isEqualTo(14.5);
        assertThat(r.temperatures()).extracting(SurfaceTemperature::afterS).containsExactly(300.0, 450.0, 540.0);
        assertThat(r.temperatures()).extracting(SurfaceTemperature::warm).containsExactly(null, true, false);
        assertThat(survey.log())
                .extracting(e -> e.hole() + " " + e.afterS() + " " + e.oozeAt())
                .containsExactly("H1 150.0 H2", "H2 360.0 null");
        assertThat(survey.photos().get(0).file()).isEqualTo("img/1.jpg");
    }

    @Test
    void readsInchesEverywhere(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .replacing(
                        "survey.yaml", "length: mm, depth: mm, temperature: C", "length: in, depth: in, temperature: F")
                .with("plan.csv", "face,kind,name,wkt\n,outline,,\"POLYGON((0 0,60 0,60 60,0 60,0 0))\"\n")
                .with("moisture.csv", "x,y,value,temperature\n\"3' 4 1/2\"\"\",40 1/2\",12,68\n")
                .with("taps.csv", "x,y,sound\n10,1/2,dull\n")
                .with("probes.csv", "x,y,void_depth\n10,10,1/4\n");

        Readings r = Reads.read(folder).survey().readings();

        Moisture m = r.moisture().get(0);
        assertThat(m.spot().xMm()).isCloseTo(1028.7, within(1e-9));
        assertThat(m.spot().yMm()).isCloseTo(1028.7, within(1e-9));
        assertThat(m.temperatureC()).isCloseTo(20.0, within(1e-9));
        assertThat(r.taps().get(0).spot().yMm()).isCloseTo(12.7, within(1e-9));
        assertThat(r.probes().get(0).voidDepthMm()).isCloseTo(6.35, within(1e-9));
    }

    /** Their own list: what is heard after the work says nothing of the deck before it. */
    @Test
    void readsTapsAfterCureApartFromTheOthers(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .replacing("survey.yaml", "taps: taps.csv", "taps: taps.csv, cured_taps: [c.csv, cross.csv]")
                .with("c.csv", "id;x;y;sound;contact_us\nC1;100;50,5;Hollow;\nC2;200;50,5;;312,5\n")
                .with("cross.csv", ",100,200\n150,sound,dull\n");

        Readings r = Reads.read(folder).survey().readings();

        assertThat(r.taps()).hasSize(24);
        assertThat(r.curedTaps())
                .extracting(t -> t.id() + " " + t.spot().yMm() + " " + t.sound() + " " + t.contactUs())
                .containsExactly(
                        "C1 50.5 HOLLOW null",
                        "C2 50.5 null 312.5",
                        "cross.csv:2:2 150.0 SOUND null",
                        "cross.csv:2:3 150.0 DULL null");
        assertThat(r.on("foredeck").curedTaps()).hasSize(4);
    }

    @Test
    void tapsAfterCureAreCheckedLikeTheOthers(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .replacing("survey.yaml", "taps: taps.csv", "taps: taps.csv, cured_taps: c.csv")
                .with("c.csv", "id,x,y,sound\nC1,1,1,holow\nC2,,1,dull\n");

        assertThat(Reads.complaints(folder))
                .containsExactly(
                        "c.csv:2: sound: found \"holow\", expected sound, dull or hollow",
                        "c.csv:3: x: found nothing, expected a length in mm");

        folder.with("c.csv", "id,x,y\nC1,1,1\n");
        assertThat(Reads.complaints(folder))
                .containsExactly("c.csv:1: sound: the column is missing, and contact_us too, found id, x, y");

        folder.with("c.csv", "id,x,y,sound\nC1,1,1,dull\nC1,1,9999,dull\n");
        assertThat(Reads.findings(folder))
                .containsExactly(
                        "c.csv:3: Id C1 was used before, at c.csv:2. Both readings are used.",
                        "c.csv:3: Tap C1 at (1, 9999) mm lies outside the outline of foredeck. It is kept in the survey but"
                                + " says nothing of the deck.");
    }

    @Test
    void readsCrossTabs(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .replacing("survey.yaml", "length: mm", "length: cm")
                .with("plan.csv", "face,kind,name,wkt\n,outline,,\"POLYGON((0 0,90 0,90 60,0 60,0 0))\"\n")
                .with("moisture.csv", "y\\x;10;20,5;30\n5;7;8,5;\n15;;>100;9\n")
                .with("taps.csv", ",10,20\n5,sound,hollow\n15,,250\n")
                .with("probes.csv", "x,y,void_depth\n10,10,1\n");

        Readings r = Reads.read(folder).survey().readings();

        assertThat(r.moisture())
                .extracting(m -> m.id() + " " + m.spot().xMm() + " " + m.spot().yMm() + " " + m.value())
                .containsExactly(
                        "moisture.csv:2:2 100.0 50.0 7.0",
                        "moisture.csv:2:3 205.0 50.0 8.5",
                        "moisture.csv:3:3 205.0 150.0 100.0",
                        "moisture.csv:3:4 300.0 150.0 9.0");
        assertThat(r.taps())
                .extracting(t -> t.spot().xMm() + " " + t.sound() + " " + t.contactUs())
                .containsExactly("100.0 SOUND null", "200.0 HOLLOW null", "200.0 null 250.0");
    }

    @Test
    void saysWhatIsWrongInACrossTab(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .with("moisture.csv", ",100,two,300\n50,7,8,9\nfifty,7,8,9\n150,wet,,7,7\n")
                .with("taps.csv", "x,100,200\n50,sound,loud\n");

        assertThat(Reads.complaints(folder))
                .containsExactly(
                        "moisture.csv:1: column 3: found \"two\", expected the x of this column, a length",
                        "moisture.csv:3: y: found \"fifty\", expected the y of this row, a length",
                        "moisture.csv:4: column 5: found \"7\", expected no cell without an x above",
                        "moisture.csv:4: value: found \"wet\", expected a number",
                        "taps.csv:2: sound: found \"loud\", expected sound, dull or hollow");
    }

    @Test
    void aFileEntryGivesFaceMeterAndSide(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .replacing("survey.yaml", "  - { name: foredeck", "  - { name: sole }\n  - { name: foredeck")
                .replacing(
                        "survey.yaml",
                        "  - { name: A",
                        "  - { name: B, full_scale: 50, dry: 5, wet: 9 }\n  - { name: A")
                .replacing(
                        "survey.yaml",
                        "moisture: moisture.csv",
                        "moisture: [ { file: moisture.csv, face: foredeck }, { file: below.csv, face: sole, meter: B, side: inner } ]")
                .adding("plan.csv", "sole,outline,,\"POLYGON((0 0,900 0,900 600,0 600,0 0))\",,,,,\n")
                .with("below.csv", ",100,200\n50,7,8\n")
                .with("taps.csv", "x,y,sound,face\n10,10,dull,sole\n")
                .with("probes.csv", "x,y,void_depth,face\n10,10,0,foredeck\n");

        Readings sole = Reads.read(folder).survey().readings().on("sole");

        assertThat(sole.moisture())
                .allMatch(m -> m.meter().equals("B") && m.side() == Side.INNER)
                .hasSize(2);
        assertThat(sole.taps()).hasSize(1);

        folder.replacing("survey.yaml", ", meter: B", "").replacing("moisture.csv", "M2,225,75,9,A", "M2,225,75,9,");
        assertThat(Reads.complaints(folder))
                .containsExactly(
                        "moisture.csv:3: meter: found nothing, expected B or A",
                        "below.csv:2: meter: found nothing, expected B or A",
                        "below.csv:2: meter: found nothing, expected B or A");
    }

    @Test
    void complainsOfCellsItCannotUse(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir)
                .replacing(
                        "survey.yaml",
                        "probes: probes.csv",
                        "feelers: f.csv, plugs: p.csv, temperatures: t.csv, log: l.csv, photos: ph.csv")
                .with(
                        "moisture.csv",
                        "x,y,value,taken,temperature,reference\n1,1,NaN,yesterday,hot,maybe\n,1,>x,2026-13-01,,\n")
                .with("taps.csv", "x,y,sound,contact_us\n1,1,,\n1,1,,-5\n")
                .with("f.csv", "x1,y1,x2,y2,end\n1,1,1,,stuck\n")
                .with("p.csv", "x,y,mc_percent\n1,1,-2\n")
                .with("t.csv", "x,y,minutes,value\n1,1,-1,tepid\n")
                .with("l.csv", "hole,minutes,grams\n,1,x\n")
                .with("ph.csv", "file,x,y,caption\n../../etc/passwd,1,1,\n");

        assertThat(Reads.complaints(folder))
                .containsExactly(
                        "moisture.csv:2: value: found \"NaN\", expected a number",
                        "moisture.csv:2: temperature: found \"hot\", expected degrees from -60 to 120 Celsius",
                        "moisture.csv:2: taken: found \"yesterday\", expected a date and time such as 2026-04-02 10:15",
                        "moisture.csv:2: reference: found \"maybe\", expected yes or no",
                        "moisture.csv:3: x: found nothing, expected a length in mm",
                        "moisture.csv:3: value: found \">x\", expected a number",
                        "moisture.csv:3: taken: found \"2026-13-01\", expected a date and time such as 2026-04-02 10:15",
                        "taps.csv:2: sound: found nothing, expected sound, dull or hollow",
                        "taps.csv:3: contact_us: found \"-5\", expected a number from 0.1 to 1000000",
                        "f.csv:2: y2: found nothing, expected a length in mm",
                        "f.csv:2: end: found \"stuck\", expected firm or beyond",
                        "p.csv:2: mc_percent: found \"-2\", expected a number from 0 to 1000",
                        "t.csv:2: minutes: found \"-1\", expected a number from 0 to 1000000",
                        "t.csv:2: value: found \"tepid\", expected degrees from -60 to 400 Celsius, warm or not-warm",
                        "l.csv:2: hole: found nothing, expected the hole's name or its number on the card",
                        "l.csv:2: grams: found \"x\", expected a number of grams",
                        "ph.csv:2: file: \"../../etc/passwd\" leads outside the survey folder, expected a file inside it");
    }

    @Test
    void clipsAVoidDeeperThanTheCore(@TempDir Path dir) {
        SurveyFolders folder =
                SurveyFolders.minimal(dir).adding("probes.csv", "P4,800,500,14,none\nP5,800,550,13.4,none\n");

        Readings r = Reads.read(folder).survey().readings();

        assertThat(r.probes().get(3).voidDepthMm()).isEqualTo(12.5);
        assertThat(r.probes().get(4).voidDepthMm()).isEqualTo(13.4);
        assertThat(Reads.findings(folder))
                .containsExactly("probes.csv:5: Probe P4 found 14 mm of void in a core of 12.5 mm. The core's thickness"
                        + " is taken; the laminate in survey.yaml or the depth may be wrong.");
    }

    @Test
    void notesRepeatedIds(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir).adding("taps.csv", "T3,800,500,hollow\n");

        assertThat(Reads.findings(folder))
                .containsExactly("taps.csv:26: Id T3 was used before, at taps.csv:4. Both readings are used.");
    }

    @Test
    void listsAThousandComplaintsOfAFileAndCountsTheRest(@TempDir Path dir) {
        SurveyFolders folder = SurveyFolders.minimal(dir).with("taps.csv", "x,y,sound\n" + "1,1,holow\n".repeat(1500));

        assertThat(Reads.complaints(folder))
                .hasSize(1001)
                .last()
                .isEqualTo("taps.csv: 500 further complaints are not listed");
    }
}
