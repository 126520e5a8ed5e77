package corewright.drawing.kit;

import corewright.survey.Face;
import corewright.survey.Spot;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * From survey millimetres (x aft, y to starboard, on walls up) to paper millimetres (x right, y down), as the person sees the
 * face who works there. From above the bow lies to the left and starboard at the top; from below the bow lies to the left
 * and port at the top: the same numbers on the boat, mirrored on the paper.
 *
 * @param scale survey millimetres to one of paper: 20 for 1 : 20
 * @param datumX the datum on the paper
 * @param datumY the datum on the paper
 * @param yDown the survey's y runs down the paper
 */
public record PlanView(double scale, double datumX, double datumY, boolean yDown) {
    /** Seen from above, or square on. */
    public PlanView(double scale, double datumX, double datumY) {
        this(scale, datumX, datumY, false);
    }

    /** The view of a face that puts the middle of {@code extent} at (x, y). */
    public static PlanView centred(Face face, Envelope extent, double scale, double x, double y) {
        Coordinate middle = extent.centre();
        return new PlanView(scale, 0, 0, face.plusYPointsDown()).with(middle.x, middle.y, x, y);
    }

    /** The same scale, the survey's place at these of paper. */
    public PlanView with(double surveyX, double surveyY, double paperX, double paperY) {
        return new PlanView(scale, paperX - surveyX / scale, paperY - down() * surveyY / scale, yDown);
    }

    /** Down the paper for the survey's +y. */
    private int down() {
        return yDown ? 1 : -1;
    }

    /** The same, moved over the paper. */
    public PlanView moved(double right, double down) {
        return new PlanView(scale, datumX + right, datumY + down, yDown);
    }

    /** The same sheet at another scale, the datum where it was. */
    public PlanView scaled(double other) {
        return new PlanView(other, datumX, datumY, yDown);
    }

    public double x(double surveyX) {
        return datumX + surveyX / scale;
    }

    public double y(double surveyY) {
        return datumY + down() * surveyY / scale;
    }

    /** What stands this far right on the paper. */
    public double surveyX(double paperX) {
        return (paperX - datumX) * scale;
    }

    /** What stands this far down on the paper. */
    public double surveyY(double paperY) {
        return down() * (paperY - datumY) * scale;
    }

    public Point2D at(Spot spot) {
        return new Point2D.Double(x(spot.xMm()), y(spot.yMm()));
    }

    /** The place of the datum. */
    public Point2D datum() {
        return new Point2D.Double(datumX, datumY);
    }

    /** The geometry on paper, still as geometry. */
    public <G extends Geometry> G onPaper(G geometry) {
        AffineTransformation map = new AffineTransformation(1 / scale, 0, datumX, 0, down() / scale, datumY);
        @SuppressWarnings("unchecked") // a transformed geometry keeps its class
        G mapped = (G) map.transform(geometry);
        return mapped;
    }

    /** A geometry that is already on paper, as a shape: polygons closed, lines open, even-odd. */
    public static Shape shape(Geometry onPaper) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        append(path, onPaper);
        return path;
    }

    private static void append(Path2D path, Geometry geometry) {
        if (geometry instanceof Polygon polygon) {
            append(path, polygon.getExteriorRing().getCoordinates(), true);
            for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
                append(path, polygon.getInteriorRingN(i).getCoordinates(), true);
            }
        } else if (geometry instanceof LineString line) {
            append(path, line.getCoordinates(), line.isClosed());
        } else if (geometry.getNumGeometries() > 1 || geometry.getNumPoints() > 1) {
            for (int i = 0; i < geometry.getNumGeometries(); i++) {
                append(path, geometry.getGeometryN(i));
            }
        }
    }

    private static void append(Path2D path, Coordinate[] points, boolean closed) {
        int last = closed ? points.length - 1 : points.length;
        for (int i = 0; i < last; i++) {
            if (i == 0) {
                path.moveTo(points[i].x, points[i].y);
            } else {
                path.lineTo(points[i].x, points[i].y);
            }
        }
        if (closed && last > 0) {
            path.closePath();
        }
    }
}
