package corewright.sandwich;

import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Support;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;

/** How the edges of a mesh are held: each boundary edge takes the support of the side of the outline it lies on. */
final class Edges {
    /** Sides that meet at less than this count as one smooth edge, along their mean direction. */
    private static final double SMOOTH = Math.cos(Math.toRadians(20));

    /** Whether the deflection of each node is held. */
    final boolean[] deflection;

    /** Directions in the plane in which each node is held, unit vectors square to each other, none to two. */
    final List<List<double[]>> plane = new ArrayList<>();

    /** Mean tangents of edges that are held along themselves, before they are put together. */
    private final List<List<double[]>> tangents = new ArrayList<>();

    Edges(PanelSpec panel, Mesh mesh) {
        deflection = new boolean[mesh.nodes()];
        for (int v = 0; v < mesh.nodes(); v++) {
            plane.add(new ArrayList<>());
            tangents.add(new ArrayList<>());
        }
        for (int[] edge : mesh.boundary) {
            hold(mesh, edge, support(panel, mesh, edge));
        }
        for (int v = 0; v < mesh.nodes(); v++) {
            combine(tangents.get(v), plane.get(v));
        }
    }

    private void hold(Mesh mesh, int[] edge, Support support) {
        if (support == Support.FREE) {
            return;
        }
        double ex = mesh.x[edge[1]] - mesh.x[edge[0]];
        double ey = mesh.y[edge[1]] - mesh.y[edge[0]];
        double length = Math.hypot(ex, ey);
        for (int v : edge) {
            deflection[v] = true;
            if (support == Support.SIMPLE_HARD) {
                tangents.get(v).add(new double[] {ex / length, ey / length});
            } else if (support == Support.CLAMPED) {
                plane.set(v, new ArrayList<>(List.of(new double[] {1, 0}, new double[] {0, 1})));
            }
        }
    }

    private static void combine(List<double[]> tangents, List<double[]> held) {
        if (held.size() == 2 || tangents.isEmpty()) {
            return;
        }
        double[] first = tangents.get(0);
        for (double[] other : tangents) {
            if (Math.abs(first[0] * other[0] + first[1] * other[1]) < SMOOTH) {
                held.addAll(List.of(new double[] {1, 0}, new double[] {0, 1})); // a corner
                return;
            }
        }
        double sx = tangents.stream().mapToDouble(t -> t[0]).sum();
        double sy = tangents.stream().mapToDouble(t -> t[1]).sum();
        double length = Math.hypot(sx, sy);
        held.add(new double[] {sx / length, sy / length});
    }

    /** The support of the nearest side; the outline's own sides before those of openings. */
    private static Support support(PanelSpec panel, Mesh mesh, int[] edge) {
        Side side = nearest(panel.outline().getExteriorRing(), middle(mesh, edge));
        return side.distance() < toOpening(panel, mesh, edge)
                ? panel.edge(side.number())
                : panel.openings().support();
    }

    /** Whether a coaming runs along a boundary edge, where the panel has one. */
    static boolean atCoaming(PanelSpec panel, Mesh mesh, int[] edge) {
        Side side = nearest(panel.outline().getExteriorRing(), middle(mesh, edge));
        return toOpening(panel, mesh, edge) <= side.distance()
                || panel.openings().sides().contains(side.number());
    }

    private static double toOpening(PanelSpec panel, Mesh mesh, int[] edge) {
        double best = Double.POSITIVE_INFINITY;
        for (int hole = 0; hole < panel.outline().getNumInteriorRing(); hole++) {
            LinearRing ring = panel.outline().getInteriorRingN(hole);
            best = Math.min(best, nearest(ring, middle(mesh, edge)).distance());
        }
        return best;
    }

    private static Coordinate middle(Mesh mesh, int[] edge) {
        return new Coordinate((mesh.x[edge[0]] + mesh.x[edge[1]]) / 2, (mesh.y[edge[0]] + mesh.y[edge[1]]) / 2);
    }

    private record Side(int number, double distance) {}

    private static Side nearest(LinearRing ring, Coordinate p) {
        Coordinate[] c = ring.getCoordinates();
        Side best = new Side(0, Double.POSITIVE_INFINITY);
        for (int k = 0; k + 1 < c.length; k++) {
            double distance = Distance.pointToSegment(p, c[k], c[k + 1]);
            if (distance < best.distance()) {
                best = new Side(k, distance);
            }
        }
        return best;
    }
}
