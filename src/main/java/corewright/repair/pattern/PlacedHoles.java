package corewright.repair.pattern;

import corewright.repair.plan.Hole;
import corewright.survey.Spot;
import java.util.Arrays;
import java.util.Map;
import java.util.function.IntPredicate;
import org.locationtech.jts.geom.Coordinate;

/** Where mix is put into a space, on its raster, before the holes are numbered. */
public final class PlacedHoles {
    public final Cavity cavity;
    public final DrillPlaces places;
    /** Cells of holes and of the nozzle's mouth, ascending. */
    public final int[] cells;
    /** By flat index, of a hole or the nozzle's mouth there. */
    public final double[] holeReachMm;

    public final Travel.Field field;
    public final LockedHoles locked;
    /** What a long nozzle fills, by cell, in the order of work. */
    public final Map<Integer, Hole.Nozzle> nozzles;

    PlacedHoles(CoverTask task, int[] cells, LockedHoles locked, Map<Integer, Hole.Nozzle> nozzles) {
        cavity = task.cavity();
        places = task.places();
        this.cells = cells;
        holeReachMm = task.holeReachMm();
        field = task.travel()
                .from(
                        cells,
                        Arrays.stream(cells).mapToDouble(c -> holeReachMm[c]).toArray());
        this.locked = locked;
        this.nozzles = nozzles;
    }

    /** The cells at which a hole is drilled. */
    public int[] drilled() {
        return Arrays.stream(cells).filter(c -> !nozzles.containsKey(c)).toArray();
    }

    /** Where the hole of a cell is drilled: the middle, or just where a person put it. */
    public Coordinate place(int cell) {
        Spot put = locked.spots().get(cell);
        return put == null ? cavity.centre(cell) : put.coordinate();
    }

    /** The same as it is marked: a person measures whole millimetres. */
    public Coordinate mark(int cell) {
        Coordinate at = place(cell);
        return new Coordinate(Math.rint(at.x), Math.rint(at.y));
    }

    /** Where the vent of a cell is drilled, likewise. */
    public Coordinate vent(int cell) {
        Spot put = locked.vents().get(cell);
        return put == null ? cavity.centre(cell) : put.coordinate();
    }

    public boolean covers(int cell) {
        return field.cost[cell] <= 1 + 1e-9;
    }

    /** Cells that the expanded mix gets to; none where there is no hole. */
    long covered() {
        return Arrays.stream(cavity.cells).filter(this::covers).count();
    }

    /**
     * Share of some cells that the expanded mix gets to, 1 of none: from a hole within its reach, or in the flow where the hole there is
     * left out as mix of others gets to it.
     *
     * @param kept by position in {@link #cells}
     * @param filled cells that the mix gets to in the flow
     */
    public double coveredFraction(IntPredicate which, IntPredicate kept, IntPredicate filled) {
        long all = Arrays.stream(cavity.cells).filter(which).count();
        long covered = Arrays.stream(cavity.cells)
                .filter(which)
                .filter(c -> covers(c) && (kept.test(field.owner[c]) || filled.test(c)))
                .count();
        return all == 0 ? 1 : (double) covered / all;
    }

    /** The cavity shared out: each cell to the hole nearest to it inside the cavity, in the air where no way leads. */
    public double[] served(double cavityMm3) {
        double[] served = new double[cells.length];
        double whole = 0;
        for (int c : cavity.cells) {
            int owner = field.owner[c] >= 0 ? field.owner[c] : nearest(c);
            served[owner] += cavity.gapMm[c];
            whole += cavity.gapMm[c];
        }
        for (int i = 0; i < served.length; i++) {
            served[i] *= cavityMm3 / whole;
        }
        return served;
    }

    private int nearest(int cell) {
        int best = 0;
        Coordinate at = cavity.centre(cell);
        for (int i = 1; i < cells.length; i++) {
            best = at.distance(cavity.centre(cells[i])) < at.distance(cavity.centre(cells[best])) ? i : best;
        }
        return best;
    }
}
