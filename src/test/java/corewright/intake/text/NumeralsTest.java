package corewright.intake.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.intake.text.Numerals.Decimal;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumeralsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12|12",
                "+12.5|12.5",
                "-0,5|-0.5",
                "\u22123.25|-3.25",
                ".5|0.5",
                "1e3|1000",
                "1.5E-2|0.015",
                "1,234.5|1234.5",
                "1.234,5|1234.5",
                "1 234,5|1234.5",
                "1\u00A0234.5|1234.5",
                "1\u202F234|1234",
                "1'234.5|1234.5",
                "1,234,567|1234567",
                "1.234.567|1234567",
                "007|7",
                "12.|12",
                "\uFF11\uFF12|12"
            })
    void readsWhatPeopleAndSpreadsheetsWrite(String text, double value) {
        assertThat(Numerals.parse(text, Decimal.DOT)).isEqualTo(value);
    }

    @Test
    void briefNumbersAreTheirNearestDoublesToTheLastBit() {
        Random random = new Random(5);
        for (int i = 0; i < 20_000; i++) {
            String digits = Long.toString(random.nextLong(1_000_000_000_000L) >> random.nextInt(40));
            int dot = random.nextInt(digits.length() + 1);
            String text = (random.nextBoolean() ? "-" : "") + digits.substring(0, dot) + "." + digits.substring(dot);
            assertThat(Numerals.brief(text, Decimal.DOT)).isEqualTo(Double.parseDouble(text));
        }
        assertThat(Stream.of("", "-", ".", "-.", "1.2.3", "+1", "1e3", "1234567890123456"))
                .allMatch(text -> Double.isNaN(Numerals.brief(text, Decimal.DOT)));
        assertThat(Numerals.brief("1.5", Decimal.COMMA)).isNaN();
        assertThat(Numerals.parse("1000000001", Decimal.DOT)).isNull();
    }

    @Test
    void aLoneCommaBeforeThreeDigitsGoesWithTheFile() {
        assertThat(Numerals.parse("1,234", Decimal.DOT)).isEqualTo(1234);
        assertThat(Numerals.parse("1,234", Decimal.COMMA)).isEqualTo(1.234);
        assertThat(Numerals.parse("1.234", Decimal.DOT)).isEqualTo(1.234);
        assertThat(Numerals.parse("1.234", Decimal.COMMA)).isEqualTo(1234);
        assertThat(Numerals.parse("0,123", Decimal.DOT)).isEqualTo(0.123);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "4l.5",
                "NaN",
                "Infinity",
                "-inf",
                "1e308",
                "1e400",
                "0x10",
                "1d",
                "1f",
                "1..2",
                "1,2,3",
                "12 34",
                "1.2.3",
                "--1",
                "1-2",
                "1/2",
                "ten",
                "1,23,456",
                "99999999999"
            })
    void refusesWhatIsNoNumberOrBeyondAnythingMeasured(String text) {
        assertThat(Numerals.parse(text, Decimal.DOT)).isNull();
    }

    @Test
    void refusesALongCellAtOnce() {
        assertThat(Numerals.parse("1,234".repeat(20_000), Decimal.DOT)).isNull();
        assertThat(Lengths.parse("1' ".repeat(30_000), LengthUnit.MM, Decimal.DOT))
                .isNull();
    }

    /** Inches and feet by definition, 25.4 and 304.8 mm; tolerance: rounding of doubles at a thousand. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "1040|1040",
                "12 mm|12",
                "1.2m|1200",
                "1,2 m|1200",
                "30cm|300",
                "3' 4 1/2\"|1028.7",
                "40 1/2\"|1028.7",
                "3'4.5\"|1028.7",
                "1/2\"|12.7",
                "-3' 6\"|-1066.8",
                "3'-4\"|1016",
                "3'|914.4",
                "3' 4|1016",
                "3 ft 4 in|1016",
                "3ft|914.4",
                "2 feet 6 inches|762",
                "40.5 in|1028.7",
                "40 1/2 in|1028.7",
                "3\u2032 4\u00BD\u2033|1028.7",
                "3\u2019 4 1/2\u201D|1028.7",
                "3' 4 1/2''|1028.7",
                "3\u00B4 4\"|1016",
                "4\u00BE\"|120.65"
            })
    void readsLengthsAsWrittenAtTheBoat(String text, double mm) {
        assertThat(Lengths.parse(text, LengthUnit.MM, Decimal.DOT)).isCloseTo(mm, within(1e-9));
    }

    @Test
    void aPlainNumberTakesTheSurveysUnit() {
        assertThat(Lengths.parse("2", LengthUnit.IN, Decimal.DOT)).isEqualTo(50.8);
        assertThat(Lengths.parse("2", LengthUnit.FT, Decimal.DOT)).isEqualTo(609.6);
        assertThat(Lengths.parse("2,5", LengthUnit.M, Decimal.COMMA)).isEqualTo(2500);
        assertThat(Lengths.parse("40 1/2", LengthUnit.IN, Decimal.DOT)).isCloseTo(1028.7, within(1e-9));
        assertThat(Lengths.parse("2", LengthUnit.CM, Decimal.DOT)).isEqualTo(20);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "abc",
                "3' x\"",
                "1/0\"",
                "4.5 1/2\"",
                "'",
                "\"",
                "3'' 4'",
                "1/2",
                "12 km",
                "1000001",
                "2 km",
                "1e7",
                "m",
                "NaN m",
                "3' 4' 5\""
            })
    void refusesWhatIsNoLength(String text) {
        assertThat(Lengths.parse(text, LengthUnit.MM, Decimal.DOT)).isNull();
    }
}
