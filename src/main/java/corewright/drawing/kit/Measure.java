package corewright.drawing.kit;

import corewright.survey.Survey;
import corewright.survey.settings.Settings.Terms;

/**
 * The units in which figures are shown; everything stored is metric. Factors: NIST SP 811 (2008),
 * appendix B.8.
 */
public enum Measure {
    METRIC,
    US;

    public static final double MM_PER_INCH = 25.4;
    private static final double MM2_PER_FOOT2 = 92_903.04;
    private static final double MM3_PER_QUART = 946_352.946;
    private static final double KG_PER_POUND = 0.453_592_37;

    /** As a survey's reader asked. */
    public static Measure of(Survey survey) {
        return survey.settings().terms().display() == Terms.Display.US ? US : METRIC;
    }

    /** A sentence that is written in metric units, its figures in these. */
    public String say(String metric) {
        return this == METRIC ? metric : Said.us(metric);
    }

    /** A place or size on deck as a bare number: 431 or 16.97. */
    public String lengthFigure(double mm) {
        return Figures.fixed(this == METRIC ? mm : mm / MM_PER_INCH, this == METRIC ? 0 : 2);
    }

    /** A place on deck in metres or feet, as a bare number. */
    public double deck(double mm) {
        return mm / (this == METRIC ? 1000 : 12 * MM_PER_INCH);
    }

    public String deckUnit() {
        return this == METRIC ? "m" : "ft";
    }

    /** Square metres or square feet, a bare number. */
    public double areaOf(double mm2) {
        return mm2 / (this == METRIC ? 1e6 : MM2_PER_FOOT2);
    }

    public String areaUnit() {
        return this == METRIC ? "m²" : "ft²";
    }

    public String volumeUnit() {
        return this == METRIC ? "litres" : "quarts";
    }

    /** An area, 0.17 m² or 1.8 ft². */
    public String area(double mm2) {
        return this == METRIC ? Figures.area(mm2) : areaFigure(mm2) + " ft²";
    }

    /** Square millimetres of the figure that {@link #area} shows, so that sums are those of the figures to be read. */
    public double shownArea(double mm2) {
        return this == METRIC ? 1e6 * Figures.shownArea(mm2) : Math.rint(10 * areaOf(mm2)) / 10 * MM2_PER_FOOT2;
    }

    /** The figure of a large area alone. */
    public String areaFigure(double mm2) {
        return this == METRIC ? Figures.fixed(mm2 / 1e6, 2) : Figures.fixed(mm2 / MM2_PER_FOOT2, 1);
    }

    /** A depth or thickness, 5.2 or 0.20. */
    public String depthFigure(double mm) {
        return this == METRIC ? Figures.fixed(mm, 1) : Figures.fixed(mm / MM_PER_INCH, 2);
    }

    /** A depth that must not be passed: rounded down, as {@link #say} does after "past". */
    public String stopFigure(double mm) {
        return this == METRIC ? depthFigure(mm) : Figures.fixed(Math.floor(100 * mm / MM_PER_INCH) / 100, 2);
    }

    /** A deflection as it is known, two digits: 4.3, 20 or 0.17, 0.79. */
    public String deflectionFigure(double mm) {
        double value = this == METRIC ? mm : mm / MM_PER_INCH;
        return Figures.fixed(value, this == METRIC ? (mm < 1 ? 2 : mm < 10 ? 1 : 0) : value < 0.1 ? 3 : 2);
    }

    public String depthUnit() {
        return this == METRIC ? "mm" : "in";
    }

    /** An empty space, in litres or US quarts, as a bare number. */
    public double volume(double mm3) {
        return mm3 / (this == METRIC ? 1e6 : MM3_PER_QUART);
    }

    /** The figure of {@link #volume}: two decimals under ten, one above. */
    public String volumeFigure(double mm3) {
        double volume = volume(mm3);
        return Figures.fixed(volume, volume < 9.995 ? 2 : 1);
    }

    /** A weight in kilograms or pounds. */
    public double weight(double kg) {
        return this == METRIC ? kg : kg / KG_PER_POUND;
    }

    public String weightUnit() {
        return this == METRIC ? "kg" : "lb";
    }

    public String volumeSign() {
        return this == METRIC ? "L" : "qt";
    }
}
