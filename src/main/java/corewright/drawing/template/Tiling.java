package corewright.drawing.template;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.PlanView;
import corewright.drawing.kit.Shapes;
import corewright.repair.plan.Hole;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;

/**
 * Sheets laid side by side over a job, on the paper of {@link Job#view}.
 *
 * @param tiles that hold something: a hole's ring or a line of a cut
 */
public record Tiling(int columns, int rows, List<Tile> tiles) {
    /** About a hole everything that has to be whole. */
    public static final double RING = 20;

    private static final double SHIFT = 4;

    /** Beyond a cut, so that its line is whole. */
    private static final double BESIDE_CUT = 4;

    public Tiling {
        tiles = List.copyOf(tiles);
    }

    /** @param frame on the paper of the whole job */
    public record Tile(int column, int row, Box frame) {
        /** Letters run aft, numbers down the paper: B1. */
        public String name() {
            int letters = 26;
            String last = String.valueOf((char) ('A' + column % letters));
            return (column < letters ? last : (char) ('A' + column / letters - 1) + last) + (row + 1);
        }
    }

    /** What must lie on a sheet. */
    private record Needs(List<Box> rings, Optional<Geometry> cut) {
        boolean on(Box frame) {
            return rings.stream().anyMatch(frame::meets)
                    || cut.map(c -> Shapes.rectangle(frame).intersects(c)).orElse(false);
        }

        Box extent() {
            return Stream.concat(rings.stream(), cut.stream().map(c -> Box.of(
                                    PlanView.shape(c).getBounds2D())
                            .grown(BESIDE_CUT)))
                    .reduce(Box::and)
                    .orElseThrow();
        }
    }

    /** Everything of a job that must lie on a sheet. */
    public static Box extent(Job job) {
        return needs(job).extent();
    }

    private static Needs needs(Job job) {
        PlanView view = job.view();
        List<Box> rings = Stream.concat(
                        job.holes().stream().filter(Hole::drilled).map(Hole::spot), job.drying().stream())
                .map(s -> Box.round(view.x(s.xMm()), view.y(s.yMm()), RING / 2))
                .toList();
        return new Needs(rings, job.cut().map(c -> view.onPaper(c).getBoundary()));
    }

    /** The fewest sheets that a grid of them takes; of those the one whose seams cut the fewest rings. */
    public static Tiling of(Job job, Leaf leaf) {
        Needs needs = needs(job);
        Box extent = needs.extent();
        Box frame = leaf.frame();
        int columns = count(extent.width(), frame.width());
        int rows = count(extent.height(), frame.height());
        double spareX = columns * frame.width() - extent.width();
        double spareY = rows * frame.height() - extent.height();
        // the middle first, so that a job of one sheet stands in the middle of it
        List<Tile> best = List.of();
        double least = Double.POSITIVE_INFINITY;
        for (double dx : shifts(spareX)) {
            for (double dy : shifts(spareY)) {
                List<Tile> tiles = new ArrayList<>();
                for (int c = 0; c < columns; c++) {
                    for (int r = 0; r < rows; r++) {
                        Box at = new Box(
                                extent.x() - dx + c * frame.width(),
                                extent.y() - dy + r * frame.height(),
                                frame.width(),
                                frame.height());
                        if (needs.on(at)) {
                            tiles.add(new Tile(c, r, at));
                        }
                    }
                }
                double cost = tiles.size() + 0.001 * cutRings(needs.rings, tiles);
                if (cost < least) {
                    least = cost;
                    best = tiles;
                }
            }
        }
        return new Tiling(columns, rows, best);
    }

    private static int count(double extent, double frame) {
        return Math.max(1, (int) Math.ceil(extent / frame - 1e-9));
    }

    private static List<Double> shifts(double spare) {
        List<Double> shifts = new ArrayList<>(List.of(spare / 2));
        for (double shift = 0; shift <= spare; shift += Math.max(SHIFT, spare / 20)) {
            shifts.add(shift);
        }
        return shifts;
    }

    /** Rings that do not lie whole on one sheet. */
    private static long cutRings(List<Box> rings, List<Tile> tiles) {
        return rings.stream()
                .filter(ring -> tiles.stream().noneMatch(t -> t.frame().holds(ring)))
                .count();
    }

    public Optional<Tile> at(int column, int row) {
        return tiles.stream()
                .filter(t -> t.column() == column && t.row() == row)
                .findFirst();
    }
}
