package corewright.drawing.kit;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.survey.Spot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlaceNamesTest {
    private final PlaceNames names = PlaceNames.of(corewright.desktop.state.NewSurvey.of(
                    "boat",
                    "foredeck",
                    java.time.LocalDate.of(2026, 4, 2),
                    new org.locationtech.jts.geom.Envelope(0, 3400, -1250, 1250))
            .face("foredeck"));

    /** The examples of the house's own description of the voice grid: letters every 500 mm aft, no I, no O. */
    @ParameterizedTest
    @CsvSource({
        "2250, 600, 'E, starboard 2', '2.25 m aft, 0.60 m to starboard'",
        "100, -1, 'A, port 1', '0.10 m aft, on the centreline'",
        "0, 0, 'A, starboard 1', '0.00 m aft, on the centreline'",
        "500, -600, 'B, port 2', '0.50 m aft, 0.60 m to port'"
    })
    void placesAreCalledByLetterAndRow(double x, double y, String name, String measured) {
        assertThat(names.at(x, y)).isEqualTo(name);
        assertThat(names.measured(x, y, mm -> Figures.fixed(mm / 1000, 2) + " m"))
                .isEqualTo(measured);
    }

    @ParameterizedTest
    @CsvSource({"E s2", "'e, stbd 2'", "'E, starboard 2'", "Estbd2"})
    void aPlaceIsFoundHoweverItIsCalled(String called) {
        assertThat(names.find(called)).contains(new Spot("foredeck", 2250, 750));
    }

    @Test
    void whatIsNoPlaceIsNotFound() {
        assertThat(names.find("Z s2")).isEmpty();
        assertThat(names.find("somewhere")).isEmpty();
    }
}
