package corewright.desktop.state;

import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.report.page.Wording;
import corewright.survey.Survey;

/** How quantities are shown; what is stored does not change. */
public enum Units {
    METRIC(Measure.METRIC),
    US(Measure.US);

    private static final int FLUID_OUNCES_PER_QUART = 32;

    private final Measure measure;

    Units(Measure measure) {
        this.measure = measure;
    }

    /** Those that a survey's reader asked for. */
    public static Units of(Survey survey) {
        return Measure.of(survey) == Measure.US ? US : METRIC;
    }

    /** As the plan's own words use them. */
    public Measure measure() {
        return measure;
    }

    /** An area, 0.17 m² or 1.8 ft². */
    public String area(double mm2) {
        return measure.area(mm2);
    }

    /** The area of everything together, as roughly as the owner's report has it, 6.0 m² or 65 ft². */
    public String wholeArea(double mm2) {
        return Wording.known(measure.areaOf(mm2)) + " " + measure.areaUnit();
    }

    /** A depth or thickness, 5.2 mm or 0.20 in. */
    public String depth(double mm) {
        return depthFigure(mm) + " " + depthUnit();
    }

    /** The figure of {@link #depth} alone. */
    public String depthFigure(double mm) {
        return measure.depthFigure(mm);
    }

    public String depthUnit() {
        return measure.depthUnit();
    }

    /** A length on deck, 300 mm or 11.8 in. */
    public String length(double mm) {
        return this == METRIC ? Figures.atMost(mm, 0) + " mm" : Figures.fixed(mm / Measure.MM_PER_INCH, 1) + " in";
    }

    /** A distance on deck as a bare number, in metres or feet. */
    public double deck(double mm) {
        return mm / (this == METRIC ? 1000 : 12 * Measure.MM_PER_INCH);
    }

    /** How far a place lies from the datum: 2.25 m or 7.38 ft. */
    public String place(double mm) {
        return Figures.fixed(deck(mm), 2) + " " + deckUnit();
    }

    public String deckUnit() {
        return this == METRIC ? "m" : "ft";
    }

    /** Millimetres of what a person typed in these units. */
    public double mm(double typed) {
        return this == METRIC ? typed : typed * Measure.MM_PER_INCH;
    }

    /** What a person would type for millimetres. */
    public double typed(double mm) {
        return this == METRIC ? mm : mm / Measure.MM_PER_INCH;
    }

    /** An empty space, in litres or US quarts, as a bare number. */
    public double volume(double mm3) {
        return measure.volume(mm3);
    }

    public String volumeUnit() {
        return this == METRIC ? "litres" : "US quarts";
    }

    /** A little volume, 30 ml or 1.0 fl oz. */
    public String dash(double mm3) {
        return this == METRIC
                ? Figures.fixed(mm3 / 1000, 0) + " ml"
                : Figures.fixed(measure.volume(mm3) * FLUID_OUNCES_PER_QUART, 1) + " fl oz";
    }

    /** A little area, 120 cm² or 19 in². */
    public String patch(double mm2) {
        return this == METRIC
                ? Figures.fixed(mm2 / 100, 0) + " cm²"
                : Figures.fixed(mm2 / (Measure.MM_PER_INCH * Measure.MM_PER_INCH), 0) + " in²";
    }

    /** The load of one foot; 1 kN is 224.8 lbf (NIST SP 811, appendix B.8), 100 mm are 3.94 in. */
    public String foot() {
        return this == METRIC ? "1 kN on 100 x 100 mm" : "225 lbf on 3.9 x 3.9 in";
    }

    public String temperature(double celsius) {
        return Figures.fixed(degrees(celsius), 0) + (this == METRIC ? " °C" : " °F");
    }

    /** A temperature as a bare number. */
    public double degrees(double celsius) {
        return this == METRIC ? celsius : celsius * 9 / 5 + 32;
    }

    /** Degrees Celsius of what a person typed. */
    public double celsius(double typed) {
        return this == METRIC ? typed : (typed - 32) * 5 / 9;
    }
}
