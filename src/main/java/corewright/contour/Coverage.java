package corewright.contour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/** Joins the pieces of a partition; their outer edges stay as they are, vertex for vertex. */
public final class Coverage {
    private Coverage() {}

    /**
     * Joins neighbours of equal label into connected polygons. Then each polygon below {@code minimumArea}, the smallest
     * first, takes the label of the neighbour with which it has the longest common edge and joins it; a small polygon
     * without a neighbour stays. In the order of each polygon's first piece.
     *
     * @param pieces polygons that meet vertex for vertex, as {@link LevelPartition} makes them
     */
    public static <T> List<Labelled<T>> dissolve(List<Labelled<T>> pieces, double minimumArea) {
        return dissolve(pieces, minimumArea, label -> true);
    }

    /**
     * The same, but a small polygon joins a neighbour whose label is wanted where it has one, however short their common edge: what
     * hangs together is not lost to the ground around it.
     */
    public static <T> List<Labelled<T>> dissolve(List<Labelled<T>> pieces, double minimumArea, Predicate<T> wanted) {
        Merging<T> merging = new Merging<>(pieces);
        merging.joinEqualNeighbours();
        merging.joinSmall(minimumArea, wanted);
        return merging.result();
    }

    /** The polygon inside the sides that only one of the polygons has. */
    private static Geometry union(List<Polygon> polygons) {
        Map<LineSegment, Integer> uses = new LinkedHashMap<>();
        polygons.forEach(polygon -> sides(polygon, side -> uses.merge(side, 1, Integer::sum)));
        Polygonizer polygonizer = new Polygonizer(true);
        uses.forEach((side, count) -> {
            if (count == 1) {
                polygonizer.add(side.toGeometry(polygons.get(0).getFactory()));
            }
        });
        return polygonizer.getGeometry().norm();
    }

    private static void sides(Polygon polygon, Consumer<LineSegment> use) {
        for (Coordinate[] ring : rings(polygon)) {
            for (int k = 1; k < ring.length; k++) {
                LineSegment side = new LineSegment(ring[k - 1], ring[k]);
                side.normalize();
                use.accept(side);
            }
        }
    }

    private static List<Coordinate[]> rings(Polygon polygon) {
        List<Coordinate[]> rings = new ArrayList<>();
        rings.add(polygon.getExteriorRing().getCoordinates());
        for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
            rings.add(polygon.getInteriorRingN(hole).getCoordinates());
        }
        return rings;
    }

    /** Groups of pieces that grow by joining; a group goes by the index of its first piece. */
    private static final class Merging<T> {
        private final List<Labelled<T>> pieces;
        private final List<T> labels = new ArrayList<>();
        private final int[] group;
        private final double[] area;
        /** Group → neighbouring group → length of their common edge. */
        private final List<Map<Integer, Double>> borders = new ArrayList<>();

        Merging(List<Labelled<T>> pieces) {
            this.pieces = pieces;
            this.group = new int[pieces.size()];
            this.area = new double[pieces.size()];
            for (int i = 0; i < pieces.size(); i++) {
                labels.add(pieces.get(i).label());
                group[i] = i;
                area[i] = pieces.get(i).polygon().getArea();
                borders.add(new TreeMap<>());
            }
            Map<LineSegment, Integer> owners = new HashMap<>();
            for (int i = 0; i < pieces.size(); i++) {
                int piece = i;
                sides(pieces.get(i).polygon(), side -> border(piece, side, owners));
            }
        }

        private void border(int piece, LineSegment side, Map<LineSegment, Integer> owners) {
            Integer other = owners.putIfAbsent(side, piece);
            if (other != null && other != piece) {
                borders.get(piece).merge(other, side.getLength(), Double::sum);
                borders.get(other).merge(piece, side.getLength(), Double::sum);
            }
        }

        void joinEqualNeighbours() {
            for (int i = 0; i < pieces.size(); i++) {
                if (group[i] == i) {
                    joinEqualNeighboursOf(i);
                }
            }
        }

        private int joinEqualNeighboursOf(int start) {
            int grown = start;
            boolean found = true;
            while (found) {
                found = false;
                for (int neighbour : borders.get(grown).keySet()) {
                    if (labels.get(neighbour).equals(labels.get(grown))) {
                        grown = join(grown, neighbour);
                        found = true;
                        break;
                    }
                }
            }
            return grown;
        }

        void joinSmall(double minimumArea, Predicate<T> wanted) {
            int small = smallest(minimumArea);
            while (small >= 0) {
                int neighbour = longestBorder(small, wanted);
                labels.set(small, labels.get(neighbour));
                joinEqualNeighboursOf(small);
                small = smallest(minimumArea);
            }
        }

        private int smallest(double minimumArea) {
            int best = -1;
            for (int i = 0; i < group.length; i++) {
                if (group[i] == i
                        && area[i] < minimumArea
                        && !borders.get(i).isEmpty()
                        && (best < 0 || area[i] < area[best])) {
                    best = i;
                }
            }
            return best;
        }

        /** The neighbour of the longest common edge, of those that are wanted where there is one. */
        private int longestBorder(int of, Predicate<T> wanted) {
            Comparator<Map.Entry<Integer, Double>> better = Comparator.comparing(
                            (Map.Entry<Integer, Double> b) -> wanted.test(labels.get(b.getKey())))
                    .thenComparing(Map.Entry::getValue)
                    .thenComparing(b -> -b.getKey());
            return borders.get(of).entrySet().stream()
                    .max(better)
                    .map(Map.Entry::getKey)
                    .orElseThrow();
        }

        private int join(int one, int two) {
            int kept = Math.min(one, two);
            int gone = Math.max(one, two);
            for (int i = 0; i < group.length; i++) {
                group[i] = group[i] == gone ? kept : group[i];
            }
            area[kept] += area[gone];
            Map<Integer, Double> moved = borders.set(gone, Map.of());
            for (Map.Entry<Integer, Double> border : moved.entrySet()) {
                borders.get(border.getKey()).remove(gone);
                if (border.getKey() != kept) {
                    borders.get(kept).merge(border.getKey(), border.getValue(), Double::sum);
                    borders.get(border.getKey()).merge(kept, border.getValue(), Double::sum);
                }
            }
            return kept;
        }

        List<Labelled<T>> result() {
            Map<Integer, List<Polygon>> members = new TreeMap<>();
            for (int i = 0; i < group.length; i++) {
                members.computeIfAbsent(group[i], g -> new ArrayList<>())
                        .add(pieces.get(i).polygon());
            }
            List<Labelled<T>> result = new ArrayList<>();
            members.forEach((g, polygons) -> {
                Geometry union = polygons.size() == 1 ? polygons.get(0) : union(polygons);
                for (int k = 0; k < union.getNumGeometries(); k++) {
                    result.add(new Labelled<>((Polygon) union.getGeometryN(k), labels.get(g)));
                }
            });
            return result;
        }
    }
}
