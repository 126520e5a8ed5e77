package corewright.drawing.kit;

/**
 * The units in which figures are shown; everything stored and every printed sheet is metric. Factors: NIST SP 811 (2008),
 * appendix B.8.
 */
public enum Measure {
    METRIC,
    US;

    public static final double MM_PER_INCH = 25.4;
    private static final double MM2_PER_FOOT2 = 92_903.04;
    private static final double MM3_PER_QUART = 946_352.946;

    /** An area, 0.17 m² or 1.8 ft². */
    public String area(double mm2) {
        return this == METRIC ? Figures.area(mm2) : areaFigure(mm2) + " ft²";
    }

    /** The figure of a large area alone. */
    public String areaFigure(double mm2) {
        return this == METRIC ? Figures.fixed(mm2 / 1e6, 2) : Figures.fixed(mm2 / MM2_PER_FOOT2, 1);
    }

    /** A depth or thickness, 5.2 or 0.20. */
    public String depthFigure(double mm) {
        return this == METRIC ? Figures.fixed(mm, 1) : Figures.fixed(mm / MM_PER_INCH, 2);
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

    public String volumeSign() {
        return this == METRIC ? "L" : "qt";
    }
}
