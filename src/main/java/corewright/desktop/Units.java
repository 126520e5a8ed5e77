package corewright.desktop;

import corewright.drawing.Figures;

/** How quantities are shown; what is stored does not change. Factors: NIST SP 811 (2008), appendix B.8. */
public enum Units {
    METRIC,
    US;

    private static final double MM_PER_INCH = 25.4;
    private static final double MM2_PER_FOOT2 = 92_903.04;
    private static final double MM3_PER_QUART = 946_352.946;

    /** An area, 0.17 m² or 1.8 ft². */
    public String area(double mm2) {
        return this == METRIC ? Figures.area(mm2) : Figures.fixed(mm2 / MM2_PER_FOOT2, 1) + " ft²";
    }

    /** A depth or thickness, 5.2 mm or 0.20 in. */
    public String depth(double mm) {
        return depthFigure(mm) + " " + depthUnit();
    }

    /** The figure of {@link #depth} alone. */
    public String depthFigure(double mm) {
        return this == METRIC ? Figures.fixed(mm, 1) : Figures.fixed(mm / MM_PER_INCH, 2);
    }

    public String depthUnit() {
        return this == METRIC ? "mm" : "in";
    }

    /** A length on deck, 300 mm or 11.8 in. */
    public String length(double mm) {
        return this == METRIC ? Figures.atMost(mm, 0) + " mm" : Figures.fixed(mm / MM_PER_INCH, 1) + " in";
    }

    /** A distance on deck as a bare number, in metres or feet. */
    public double deck(double mm) {
        return mm / (this == METRIC ? 1000 : 12 * MM_PER_INCH);
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
        return this == METRIC ? typed : typed * MM_PER_INCH;
    }

    /** What a person would type for millimetres. */
    public double typed(double mm) {
        return this == METRIC ? mm : mm / MM_PER_INCH;
    }

    /** An empty space, in litres or US quarts, as a bare number. */
    public double volume(double mm3) {
        return mm3 / (this == METRIC ? 1e6 : MM3_PER_QUART);
    }

    public String volumeUnit() {
        return this == METRIC ? "litres" : "US quarts";
    }

    public String temperature(double celsius) {
        return this == METRIC ? Figures.fixed(celsius, 0) + " °C" : Figures.fixed(celsius * 9 / 5 + 32, 0) + " °F";
    }
}
