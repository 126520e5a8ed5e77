package corewright.contour;

import java.util.Arrays;
import org.locationtech.jts.geom.Coordinate;

/** Numbers places from 0: equal coordinates, equal number. */
final class Places {
    private final double[] x;
    private final double[] y;
    /** By the hash of a place, in the next free seat: its number + 1. */
    private final int[] seats;

    private int size;

    /** @param most how many different places there can be */
    Places(int most) {
        x = new double[most];
        y = new double[most];
        seats = new int[Integer.highestOneBit(Math.max(1, most)) * 4];
    }

    int number(double px, double py) {
        int seat = seat(px, py);
        while (seats[seat] > 0) {
            int known = seats[seat] - 1;
            if (x[known] == px && y[known] == py) {
                return known;
            }
            seat = seat + 1 & seats.length - 1;
        }
        x[size] = px;
        y[size] = py;
        seats[seat] = size + 1;
        return size++;
    }

    int size() {
        return size;
    }

    double x(int place) {
        return x[place];
    }

    double y(int place) {
        return y[place];
    }

    Coordinate at(int place) {
        return new Coordinate(x[place], y[place]);
    }

    /** An array with one number for each place. */
    int[] filled(int value) {
        int[] numbers = new int[size];
        Arrays.fill(numbers, value);
        return numbers;
    }

    private int seat(double px, double py) {
        long bits = Double.doubleToLongBits(px) * 0x9E3779B97F4A7C15L + Double.doubleToLongBits(py);
        bits = (bits ^ bits >>> 32)
                * 0x9E3779B97F4A7C15L; // Knuth's multiplicative hash, The Art of Computer Programming 6.4
        return (int) (bits >>> 33) & seats.length - 1;
    }
}
