package corewright.desktop.plan;

import corewright.assessment.Ages;
import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import corewright.damage.Surfaces;
import corewright.desktop.state.Units;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.PlaceNames;

/** Every quantity at a place, each with its standard error. */
public final class Readout {
    private Readout() {}

    /**
     * One line for the foot of the plan; the place alone where nothing is known of it.
     *
     * @param ages whether the figures are those of before the last change, which the line then says
     */
    public static String at(Assessment assessment, String face, double xMm, double yMm, Units units, Ages ages) {
        String line = at(assessment, face, xMm, yMm, units);
        if (!ages.oldMap()) {
            return line;
        }
        return line.isEmpty() ? "The map is " + Ages.WORDS : line + "   (" + Ages.WORDS + ")";
    }

    private static String at(Assessment assessment, String face, double xMm, double yMm, Units units) {
        FaceDamage damage = assessment.damage().face(face);
        PlaceNames names = PlaceNames.of(damage.face());
        String name = names.at(xMm, yMm);
        if (name.isEmpty()) {
            return "";
        }
        String place = name + "   " + names.measured(xMm, yMm, units::place);
        Surfaces s = damage.surfaces();
        double index = s.moistureIndex().cellAt(xMm, yMm);
        if (Double.isNaN(index)) {
            return place;
        }
        return place + "   moisture index " + Figures.fixed(index, 0) + " ± "
                + Figures.fixed(s.moistureIndexSd().cellAt(xMm, yMm), 0) + " (wet from 100)   wet "
                + ofTen(s.pWet().cellAt(xMm, yMm)) + "   loose "
                + ofTen(s.pLoose().cellAt(xMm, yMm)) + "   void "
                + units.depthFigure(s.voidDepthMm().cellAt(xMm, yMm)) + " ± "
                + units.depth(s.voidDepthSdMm().cellAt(xMm, yMm));
    }

    /** A probability as cases of ten, as an owner would be told. */
    static String ofTen(double p) {
        if (p < 0.05) {
            return "hardly";
        }
        return p > 0.95 ? "surely" : Figures.fixed(10 * p, 0) + " in 10";
    }
}
