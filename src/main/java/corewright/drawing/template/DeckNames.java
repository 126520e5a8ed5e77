package corewright.drawing.template;

import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.PlaceNames;
import corewright.survey.Face;

/** Lines of the deck's own grid, by their distance from the datum. */
record DeckNames(Face face, Measure measure) {
    /** Between two lines that are named. */
    double stepMm() {
        return measure == Measure.METRIC ? 100 : 4 * Measure.MM_PER_INCH;
    }

    /** {@code 2.2 m aft}, {@code 88 in aft}. */
    String along(double xMm) {
        return Math.abs(xMm) < 0.5 ? "datum" : words(xMm, 0).split(", ", 2)[0];
    }

    /** {@code 0.6 m to starboard}. */
    String across(double yMm) {
        return Math.abs(yMm) < 0.5
                ? (face.wall() ? "datum" : "centreline")
                : words(0, yMm).split(", ", 2)[1];
    }

    /** {@code 2.2 m aft, 0.6 m to starboard}. */
    String place(double xMm, double yMm) {
        return words(xMm, yMm) + (xMm == 0 && yMm == 0 ? ": the datum" : "");
    }

    private String words(double xMm, double yMm) {
        return PlaceNames.of(face).measured(xMm, yMm, this::length);
    }

    private String length(double mm) {
        return measure == Measure.METRIC
                ? Figures.fixed(mm / 1000, 1) + " m"
                : Figures.fixed(mm / Measure.MM_PER_INCH, 0) + " in";
    }
}
