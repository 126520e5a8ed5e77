package corewright.contour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiConsumer;
import org.locationtech.jts.geom.Coordinate;

/** Pieces of cell edges, joined to straight runs so that polygons get no vertex where nothing happens. */
final class Runs {
    /** A piece of an edge: along x at a fixed y, or along y at a fixed x. */
    private record Run(boolean alongX, double fixed, double from, double to) {
        Coordinate at(double along) {
            return alongX ? new Coordinate(along, fixed) : new Coordinate(fixed, along);
        }

        boolean isContinuedBy(Run next) {
            return next.alongX == alongX && next.fixed == fixed && next.from == to;
        }
    }

    private final List<Run> runs = new ArrayList<>();

    /** Adds a piece that runs along x or along y. */
    void add(Coordinate p, Coordinate q) {
        runs.add(
                p.y == q.y
                        ? new Run(true, p.y, Math.min(p.x, q.x), Math.max(p.x, q.x))
                        : new Run(false, p.x, Math.min(p.y, q.y), Math.max(p.y, q.y)));
    }

    void forEach(BiConsumer<Coordinate, Coordinate> line) {
        runs.sort(Comparator.comparing(Run::alongX)
                .thenComparingDouble(Run::fixed)
                .thenComparingDouble(Run::from));
        for (int i = 0; i < runs.size(); ) {
            Run run = runs.get(i++);
            while (i < runs.size() && run.isContinuedBy(runs.get(i))) {
                run = new Run(run.alongX, run.fixed, run.from, runs.get(i++).to);
            }
            line.accept(run.at(run.from), run.at(run.to));
        }
    }
}
