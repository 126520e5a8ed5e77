package corewright.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.damage.Quantiles;
import corewright.drawing.kit.Figures;
import corewright.report.SampleAssessment;
import corewright.report.owner.PlaceWords;
import corewright.survey.Face;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures and places as an owner reads them. */
class WordingTest {
    @ParameterizedTest
    @CsvSource({
        "0.001, less than one fiftieth",
        "0.051, one twentieth",
        "0.196, one fifth",
        "0.225, about one quarter",
        "0.338, one third",
        "0.5, half",
        "0.97, nearly all",
        "1, all"
    })
    void sharesHavePlainNames(double share, String words) {
        assertThat(Wording.share(share)).isEqualTo(words);
    }

    /** The figures of the style sheet: 0.88 litres, 0.65 to 1.15; 1.1 of 5.6 m². */
    @Test
    void rangesShowTwoFiguresOfTheirMiddle() {
        assertThat(Wording.decimals(new Quantiles(0.651, 0.8814, 1.149))).isEqualTo(2);
        assertThat(Wording.decimals(new Quantiles(0.98, 1.1, 1.42))).isEqualTo(1);
        assertThat(Wording.decimals(new Quantiles(0, 0, 0.5))).isEqualTo(2);
        assertThat(Wording.known(0.996)).isEqualTo("1.0");
        assertThat(Wording.known(123.4)).isEqualTo("123");
    }

    @Test
    void moneyIsRoundedAndGroupedAndKeptOnOneLine() {
        assertThat(plain(Wording.money("€", 3871, 5634))).isEqualTo("€ 3 900 to 5 600");
        assertThat(plain(Wording.money("GBP", 300, 304))).isEqualTo("GBP 300");
    }

    @Test
    void aDayBegunIsADay() {
        assertThat(plain(Wording.days(0.2, 1.1))).isEqualTo("1 to 2");
        assertThat(plain(Wording.days(0, 0))).isEqualTo("0");
    }

    @Test
    void countsAndListsReadAsSpoken() {
        assertThat(Wording.count(1, "pilot hole")).isEqualTo("one pilot hole");
        assertThat(Wording.count(20, "pilot hole")).isEqualTo("20 pilot holes");
        assertThat(Wording.list(List.of("R1", "R2", "R3"))).isEqualTo("R1, R2 and R3");
    }

    @Test
    void placesAreToldByTheNearestLandmark() {
        Face face = SampleAssessment.survey().faces().get(0);

        assertThat(place(face, "POLYGON((2300 -100,2400 -100,2400 0,2300 0,2300 -100))"))
                .isEqualTo("aft of the hatch");
        assertThat(place(face, "POLYGON((1350 -50,1450 -50,1450 50,1350 50,1350 -50))"))
                .isEqualTo("at the mooring bollard");
        assertThat(place(face, "POLYGON((600 -50,700 -50,700 50,600 50,600 -50))"))
                .isEqualTo("at 0.65 m aft of the datum");
        assertThat(PlaceWords.named("fitting 1")).isEqualTo("fitting 1");
        assertThat(PlaceWords.named("Solent stay")).isEqualTo("Solent stay");
    }

    private static String place(Face face, String wkt) {
        return plain(PlaceWords.of(face, SampleAssessment.polygon(wkt)));
    }

    private static String plain(String text) {
        return text.replace(Wording.TIED, " ").replace("\u2009", " ");
    }

    @Test
    void areasTooSmallForTheScaleAreSaidToBeSo() {
        assertThat(plain(Wording.area(4000))).isEqualTo("under 0.01 m²");
        assertThat(plain(Wording.area(170_000))).isEqualTo(Figures.area(170_000));
    }
}
