package corewright.field;

import java.util.ArrayList;
import java.util.List;

/** Bins with the direction they stand in: what a fit looks at. */
final class Lags {
    private record At(Bin bin, double dx, double dy) {}

    private final List<At> all = new ArrayList<>();

    static Lags of(List<Bin> bins) {
        Lags lags = new Lags();
        lags.add(bins, 0);
        return lags;
    }

    void add(List<Bin> bins, double azimuthDeg) {
        double cos = Math.cos(Math.toRadians(azimuthDeg));
        double sin = Math.sin(Math.toRadians(azimuthDeg));
        for (Bin b : bins) {
            if (b.pairs() > 0 && b.lag() > 0 && Double.isFinite(b.lag()) && b.gamma() >= 0 && b.gamma() < 1e300) {
                all.add(new At(b, b.lag() * cos, b.lag() * sin));
            }
        }
    }

    int size() {
        return all.size();
    }

    double dx(int i) {
        return all.get(i).dx();
    }

    double dy(int i) {
        return all.get(i).dy();
    }

    double gamma(int i) {
        return all.get(i).bin().gamma();
    }

    /** Pairs over squared lag. */
    double weight(int i) {
        Bin b = all.get(i).bin();
        return b.pairs() / (b.lag() * b.lag());
    }

    double first() {
        return all.stream().mapToDouble(a -> a.bin().lag()).min().orElseThrow();
    }

    double last() {
        return all.stream().mapToDouble(a -> a.bin().lag()).max().orElseThrow();
    }
}
