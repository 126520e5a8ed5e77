package corewright.repair.fill;

import corewright.repair.mix.ReachLaw;
import corewright.repair.pattern.Cavity;
import corewright.repair.pattern.Slope;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Resin;
import java.util.List;

/**
 * Where the mix of a plan gets to: every shot pushed in, in working order, while the earlier ones rise.
 *
 * <p>(1) A hole takes the liquid of its share, {@code pack / X} of the cavity it serves, while its cup's work time lasts;
 * one clock a cup; what it does not take goes into the next hole of the cup. Holes and vents let air out until mix stands
 * in them. (2) Meanwhile what already stands in the cavity thickens and rises, each cup at its own age: the cups of a day
 * rise one after another, and drive the air before them. Enclosed air is squeezed up to the tool's pressure, by the rise
 * up to that of the sealed cavity.
 */
public final class FillSimulation {
    private FillSimulation() {}

    /**
     * One filling of a hole.
     *
     * @param hole its id
     * @param cell of the hole
     * @param liquidMm3 to be placed
     * @param mixAtS when its cup is mixed, on the day's clock; holes of one cup share it
     * @param nozzle resistance of a long nozzle, see {@link ReachLaw#nozzleResistance}; 0 where a hole is drilled
     */
    public record Shot(String hole, int cell, double liquidMm3, double mixAtS, double nozzle) {}

    /**
     * What is held back for places at which no mix shows when all else is in and has risen. In order; twice where it still
     * does not show.
     *
     * @param mostMm3 liquid that is held back
     * @param cupMm3 liquid in a cup
     * @param largerBy liquid into a cavity as large as one in ten over that of the plan: what holes of later cups get where
     *     none of the places shows at which mix of the cups before is due
     */
    public record Reserve(List<Dose> doses, double mostMm3, double cupMm3, double largerBy) {
        static final Reserve NONE = new Reserve(List.of(), 0, 1, 1);

        public Reserve {
            doses = List.copyOf(doses);
        }
    }

    /**
     * Liquid at most into a place, a hole or a vent.
     *
     * @param dueS when mix is due there by the plan; NaN where it is not
     * @param watched ids of the holes for which this is the next vent: they get more where it does not show in time
     */
    public record Dose(int cell, double liquidMm3, double dueS, List<String> watched) {
        public Dose {
            watched = List.copyOf(watched);
        }
    }

    /**
     * What came of it, by flat index of the cavity.
     *
     * @param arrivalS on the day's clock, NaN where the mix does not get to
     * @param owner number of the shot that filled the cell, -1 where none
     * @param filled filled after the rise
     * @param pocket number of the enclosed air at the end, -1 elsewhere
     * @param placedMm3 liquid that each shot could place
     * @param liquidIn liquid in the cell at the end, cubic millimetres
     * @param shown whether mix showed at each place of the reserve, before any of it was poured
     * @param reserveMm3 liquid that was poured of the reserve
     * @param ways how the air got out
     */
    @SuppressWarnings("ArrayRecordComponent") // within one computation, never compared
    public record Result(
            double[] arrivalS,
            int[] owner,
            double[] filled,
            int[] pocket,
            double[] placedMm3,
            double emptyShare,
            double liquidMm3,
            double[] liquidIn,
            boolean[] shown,
            double reserveMm3,
            AirWays ways) {}

    /**
     * What is filled with what.
     *
     * @param outlets cells of vents and accesses; the shots' own drilled holes are outlets too
     * @param heightMm by flat index
     */
    @SuppressWarnings("ArrayRecordComponent")
    public record Setting(
            Cavity cavity, double[] heightMm, int[] outlets, Resin resin, Drilling drilling, double temperatureC) {
        /** Height of every cell above the survey's datum. */
        public static double[] heights(Cavity cavity, Slope slope, double tiltDeg) {
            double[] height = new double[cavity.size()];
            double rise = slope.sloping() ? Math.sin(Math.toRadians(tiltDeg)) : 0;
            for (int c = 0; c < height.length; c++) {
                height[c] = rise * slope.height(cavity.centre(c));
            }
            return height;
        }
    }
}
