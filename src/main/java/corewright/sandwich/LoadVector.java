package corewright.sandwich;

import corewright.overlay.Overlay;
import corewright.overlay.RectangleClip;
import corewright.sandwich.spec.Load;
import corewright.sandwich.spec.UnsupportedPanelException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

/**
 * Loads as forces on the nodes of the outer skin: pressure times N, integrated over exactly the part of each cell that is
 * loaded.
 */
final class LoadVector {
    private final Mesh mesh;
    private final STRtree index = new STRtree();
    private final GeometryFactory geometry = new GeometryFactory();
    private final double area;

    LoadVector(Mesh mesh) {
        this.mesh = mesh;
        double sum = 0;
        for (int c = 0; c < mesh.cells.length; c++) {
            index.insert(mesh.box(c), c);
            sum += mesh.shape(c).area();
        }
        index.build();
        area = sum;
    }

    /** A place in a cell, with a weight: a force, or a part of an area or a length. */
    record Spot(int cell, double r, double s, double x, double y, double weight) {}

    /** Area of all cells, mm². */
    double area() {
        return area;
    }

    /** Force on each node, positive inward. */
    double[] forces(List<Load> loads) {
        double[] forces = new double[mesh.nodes()];
        for (Load load : loads) {
            add(load, forces);
        }
        return forces;
    }

    private void add(Load load, double[] forces) {
        if (load instanceof Load.Pressure p) {
            for (int c = 0; c < mesh.cells.length; c++) {
                addCell(c, p.pressureKPa() * 1e-3, forces); // 1 kPa = 0.001 MPa
            }
        } else if (load instanceof Load.Force f) {
            spread(spotsOver(f.area()), f.forceN(), forces);
        } else if (load instanceof Load.Line l) {
            spread(spotsAlong(l.line()), l.forceN(), forces);
        } else if (load instanceof Load.Moment m) {
            addMoment(m, forces);
        }
    }

    /** A force spread over spots, at the nodes about them. */
    Map<Integer, Double> nodal(List<Spot> spots, double forceN) {
        double sum = spots.stream().mapToDouble(Spot::weight).sum();
        Map<Integer, Double> forces = new TreeMap<>();
        for (Spot spot : spots) {
            double[] shape = mesh.shape(spot.cell).corner(spot.r, spot.s);
            for (int a = 0; a < shape.length; a++) {
                forces.merge(mesh.cells[spot.cell][a], forceN * spot.weight / sum * shape[a], Double::sum);
            }
        }
        return forces;
    }

    private void addCell(int c, double pressureMPa, double[] forces) {
        CellShape cell = mesh.shape(c);
        for (double[] p : cell.fewPoints()) {
            double force = pressureMPa * p[2] * CellShape.determinant(cell.jacobian(p[0], p[1]));
            addSpot(new Spot(c, p[0], p[1], 0, 0, force), force, forces);
        }
    }

    private void addSpot(Spot spot, double force, double[] forces) {
        double[] shape = mesh.shape(spot.cell).corner(spot.r, spot.s);
        for (int a = 0; a < shape.length; a++) {
            forces[mesh.cells[spot.cell][a]] += force * shape[a];
        }
    }

    private void spread(List<Spot> spots, double total, double[] forces) {
        double sum = spots.stream().mapToDouble(Spot::weight).sum();
        if (!(sum > 0)) {
            throw new UnsupportedPanelException("a load lies outside the panel");
        }
        spots.forEach(s -> addSpot(s, total * s.weight / sum, forces));
    }

    /** Pressure {@code a (x - xc) + b (y - yc)} whose moments about the area's centre are the given ones. */
    private void addMoment(Load.Moment load, double[] forces) {
        List<Spot> spots = spotsOver(load.area());
        double sum = spots.stream().mapToDouble(Spot::weight).sum();
        if (!(sum > 0)) {
            throw new UnsupportedPanelException("a load lies outside the panel");
        }
        double xc = spots.stream().mapToDouble(s -> s.weight * s.x).sum() / sum;
        double yc = spots.stream().mapToDouble(s -> s.weight * s.y).sum() / sum;
        double xx = spots.stream()
                .mapToDouble(s -> s.weight * (s.x - xc) * (s.x - xc))
                .sum();
        double yy = spots.stream()
                .mapToDouble(s -> s.weight * (s.y - yc) * (s.y - yc))
                .sum();
        double xy = spots.stream()
                .mapToDouble(s -> s.weight * (s.x - xc) * (s.y - yc))
                .sum();
        double det = xx * yy - xy * xy;
        double a = (yy * load.mxNmm() - xy * load.myNmm()) / det;
        double b = (xx * load.myNmm() - xy * load.mxNmm()) / det;
        spots.forEach(s -> addSpot(s, s.weight * (a * (s.x - xc) + b * (s.y - yc)), forces));
    }

    /** Points that integrate N exactly over the part of an area that lies on the mesh; weights in mm². */
    List<Spot> spotsOver(Geometry loaded) {
        List<Spot> spots = new ArrayList<>();
        boolean rectangle = loaded.isRectangle();
        PreparedGeometry area = PreparedGeometryFactory.prepare(loaded);
        for (int c : cellsNear(loaded.getEnvelopeInternal())) {
            if (rectangle && mesh.shape(c).upright()) { // a foot: hundreds of them make a map
                addOverlap(c, loaded.getEnvelopeInternal(), spots);
                continue;
            }
            if (rectangle) {
                addConvex(c, RectangleClip.clip(polygon(c), loaded.getEnvelopeInternal()), spots);
                continue;
            }
            Polygon cell = polygon(c);
            if (area.covers(cell)) { // most cells of a region: nothing to cut
                addWhole(c, cell, spots);
                continue;
            }
            Geometry part = Overlay.intersection(cell, loaded);
            for (int k = 0; k < part.getNumGeometries(); k++) {
                if (part.getGeometryN(k) instanceof Polygon p && p.getArea() > 0) {
                    Geometry triangles = PolygonTriangulator.triangulate(p);
                    for (int t = 0; t < triangles.getNumGeometries(); t++) {
                        addTriangle(c, triangles.getGeometryN(t).getCoordinates(), spots);
                    }
                }
            }
        }
        return spots;
    }

    /** Two by two Gauss points of the rectangle that two upright rectangles share. */
    private void addOverlap(int c, Envelope loaded, List<Spot> spots) {
        CellShape cell = mesh.shape(c);
        double x0 = Math.max(cell.x[0], loaded.getMinX());
        double x1 = Math.min(cell.x[1], loaded.getMaxX());
        double y0 = Math.max(cell.y[0], loaded.getMinY());
        double y1 = Math.min(cell.y[3], loaded.getMaxY());
        if (x1 <= x0 || y1 <= y0) {
            return;
        }
        for (double[] g : CellShape.gauss(2)) {
            double x = (x0 + x1 + g[0] * (x1 - x0)) / 2;
            double r = (2 * x - cell.x[0] - cell.x[1]) / cell.ex(0);
            for (double[] h : CellShape.gauss(2)) {
                double y = (y0 + y1 + h[0] * (y1 - y0)) / 2;
                double s = (2 * y - cell.y[0] - cell.y[3]) / cell.ey(1);
                spots.add(new Spot(c, r, s, x, y, (x1 - x0) * (y1 - y0) / 4));
            }
        }
    }

    private void addWhole(int c, Polygon cell, List<Spot> spots) {
        if (mesh.shape(c).upright()) {
            addOverlap(c, cell.getEnvelopeInternal(), spots);
        } else {
            addConvex(c, cell.getCoordinates(), spots);
        }
    }

    private void addConvex(int c, Coordinate[] ring, List<Spot> spots) {
        for (int k = 2; k < ring.length; k++) {
            addTriangle(c, new Coordinate[] {ring[0], ring[k - 1], ring[k]}, spots);
        }
    }

    /** Three points: exact for quadratics. */
    private void addTriangle(int c, Coordinate[] t, List<Spot> spots) {
        double third = Math.abs((t[1].x - t[0].x) * (t[2].y - t[0].y) - (t[2].x - t[0].x) * (t[1].y - t[0].y)) / 6;
        if (third == 0) {
            return;
        }
        for (int k = 0; k < 3; k++) {
            double x = (4 * t[k].x + t[(k + 1) % 3].x + t[(k + 2) % 3].x) / 6;
            double y = (4 * t[k].y + t[(k + 1) % 3].y + t[(k + 2) % 3].y) / 6;
            addSpot(c, x, y, third, spots);
        }
    }

    private void addSpot(int c, double x, double y, double weight, List<Spot> spots) {
        double[] at = mesh.shape(c).locate(x, y);
        spots.add(new Spot(c, at[0], at[1], x, y, weight));
    }

    private List<Spot> spotsAlong(Geometry line) {
        List<Spot> spots = new ArrayList<>();
        for (int c : cellsNear(line.getEnvelopeInternal())) {
            Geometry part = Overlay.intersection(polygon(c), line);
            for (int k = 0; k < part.getNumGeometries(); k++) {
                Coordinate[] p = part.getGeometryN(k).getCoordinates();
                for (int i = 1; i < p.length; i++) {
                    for (double[] g : CellShape.gauss(2)) {
                        double f = (1 + g[0]) / 2;
                        addSpot(
                                c,
                                p[i - 1].x + f * (p[i].x - p[i - 1].x),
                                p[i - 1].y + f * (p[i].y - p[i - 1].y),
                                p[i].distance(p[i - 1]) / 2,
                                spots);
                    }
                }
            }
        }
        return spots;
    }

    /** The cell that holds a point and where in it; the nearest cell if a curved edge's chord leaves the point just out. */
    Optional<Spot> locate(double x, double y) {
        Envelope box = new Envelope(new Coordinate(x, y));
        box.expandBy(1e-6);
        Spot best = null;
        double least = 0.5; // of a cell's half width: how far a chord may lie inside its arc
        for (int c : cellsNear(box)) {
            CellShape cell = mesh.shape(c);
            double[] at = cell.locate(x, y);
            double outside = cell.outside(at);
            if (outside < least) {
                least = outside;
                best = new Spot(c, at[0], at[1], x, y, 1);
            }
        }
        return Optional.ofNullable(best);
    }

    private List<Integer> cellsNear(Envelope box) {
        List<Integer> cells = new ArrayList<>();
        index.query(box, c -> cells.add((Integer) c));
        cells.sort(null);
        return cells;
    }

    private Polygon polygon(int c) {
        int[] corners = mesh.cells[c];
        Coordinate[] ring = new Coordinate[corners.length + 1];
        for (int a = 0; a <= corners.length; a++) {
            int v = corners[a % corners.length];
            ring[a] = new Coordinate(mesh.x[v], mesh.y[v]);
        }
        return geometry.createPolygon(ring);
    }
}
