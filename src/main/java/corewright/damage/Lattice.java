package corewright.damage;

import corewright.field.Places;
import java.util.LinkedHashMap;
import java.util.Map;

/** Cells of a bay gathered in squares, so that few enough places stand for all of them when fields are drawn. */
final class Lattice {
    /** Square of each cell, in the order given. */
    final int[] nodeOf;

    final int nodes;
    private final BayFields fields;
    private final Frame frame;
    private final int[] slots;

    /**
     * Squares of a growing side until they are few enough.
     *
     * @param slots positions in the bay's cells
     * @param most squares
     */
    Lattice(BayFields fields, Frame frame, int[] slots, int most) {
        this.fields = fields;
        this.frame = frame;
        this.slots = slots;
        nodeOf = new int[slots.length];
        int side = (int) Math.max(1, Math.sqrt((double) slots.length / most));
        int squares = label(side);
        while (squares > most) {
            squares = label(++side);
        }
        nodes = squares;
    }

    private int label(int side) {
        int columns = frame.empty().columns();
        Map<Integer, Integer> squares = new LinkedHashMap<>();
        for (int k = 0; k < slots.length; k++) {
            int cell = fields.cells[slots[k]];
            int square = (cell / columns / side) * columns + cell % columns / side;
            nodeOf[k] = squares.computeIfAbsent(square, s -> squares.size());
        }
        return squares.size();
    }

    /** What a slot of the bay has: a coordinate, a term of a drift. */
    interface Term {
        double at(int slot);
    }

    /** The middle of each square's cells, with the means of the terms of their drift. */
    Places places(Term... terms) {
        double[][] drift = new double[terms.length][];
        for (int i = 0; i < terms.length; i++) {
            drift[i] = means(terms[i]);
        }
        return new Places(
                means(slot -> frame.x(fields.cells[slot])), means(slot -> frame.y(fields.cells[slot])), drift);
    }

    private double[] means(Term term) {
        double[] means = new double[nodes];
        int[] members = new int[nodes];
        for (int k = 0; k < slots.length; k++) {
            members[nodeOf[k]]++;
            means[nodeOf[k]] += term.at(slots[k]);
        }
        for (int node = 0; node < nodes; node++) {
            means[node] /= members[node];
        }
        return means;
    }

    /** The middle one, in reading order, of each square's slots. */
    int[] middleSlots() {
        int[] members = new int[nodes];
        for (int node : nodeOf) {
            members[node]++;
        }
        int[] seen = new int[nodes];
        int[] middle = new int[nodes];
        for (int k = 0; k < slots.length; k++) {
            int node = nodeOf[k];
            if (seen[node]++ == members[node] / 2) {
                middle[node] = slots[k];
            }
        }
        return middle;
    }
}
