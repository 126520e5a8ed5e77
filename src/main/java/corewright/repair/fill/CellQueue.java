package corewright.repair.fill;

import java.util.Arrays;

/** Cells in the order in which they came. */
final class CellQueue {
    private int[] cells = new int[64];
    private int head;
    private int tail;

    void clear() {
        head = 0;
        tail = 0;
    }

    void add(int cell) {
        if (tail == cells.length) {
            cells = Arrays.copyOf(cells, 2 * tail);
        }
        cells[tail++] = cell;
    }

    boolean isEmpty() {
        return head == tail;
    }

    int poll() {
        return cells[head++];
    }

    int size() {
        return tail - head;
    }

    /** The one that is so many places from the head. */
    int at(int place) {
        return cells[head + place];
    }
}
