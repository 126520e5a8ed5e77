package corewright.drawing.marks;

import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.PlanView;
import corewright.drawing.kit.Shapes;
import corewright.drawing.kit.Tone;
import corewright.overlay.Overlay;
import java.awt.Shape;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.linearref.LengthIndexedLine;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** How the deck itself is drawn: edge, openings, dividers, supports, and the line of a cut. All geometry is on paper. */
public final class StructureMarks {
    /** Rails of the ladder. */
    static final double DIVIDER_WIDTH = 1.1;

    private static final double RUNG_EVERY = 3;
    private static final double OPENING_INSET = 0.9;
    private static final double CUT_CASING = 1.5;
    private static final double ON_EDGE = 0.6;

    /** Lines this near are the same: a tenth of the thinnest. */
    private static final double NEARLY = 0.02;

    public static final Pen MAP_ENDS = Pen.REACH;

    private StructureMarks() {}

    public static void outline(Paper paper, Polygon outline) {
        paper.draw(PlanView.shape(outline.getExteriorRing()), Pen.EDGE);
    }

    /** A part of a face: the deck's edge, and broken where the map ends but not the deck. */
    public static void outline(Paper paper, Polygon part, Polygon whole) {
        Geometry edge = whole.getBoundary().buffer(NEARLY);
        line(paper, Overlay.difference(part.getBoundary(), edge), MAP_ENDS);
        line(paper, Overlay.intersection(part.getBoundary(), edge), Pen.EDGE);
    }

    private static void line(Paper paper, Geometry line, Pen pen) {
        if (!line.isEmpty()) {
            paper.draw(PlanView.shape(line), pen);
        }
    }

    /** Edge 0.50, inner line 0.18 at 0.9, crossed 0.18 from corner to corner of what is left inside. */
    public static void opening(Paper paper, Polygon opening) {
        Shape edge = PlanView.shape(opening);
        paper.fill(edge, Tone.WHITE);
        Geometry inner = opening.buffer(-OPENING_INSET, 8);
        if (!inner.isEmpty()) {
            paper.draw(PlanView.shape(inner), Pen.FAINT);
            cross(paper, inner);
        }
        paper.draw(edge, Pen.EDGE);
    }

    private static void cross(Paper paper, Geometry inner) {
        Coordinate[] box = inner.getEnvelope().getCoordinates();
        if (box.length < 5) {
            return;
        }
        for (int i = 0; i < 2; i++) {
            Geometry diagonal = Shapes.FACTORY.createLineString(new Coordinate[] {box[i], box[i + 2]});
            Geometry inside = Overlay.intersection(diagonal, inner);
            if (!inside.isEmpty()) {
                paper.draw(PlanView.shape(inside), Pen.FAINT);
            }
        }
    }

    /** A ladder: rails 0.25, 1.1 apart, rungs every 3. Patterns stop at it. */
    public static void divider(Paper paper, LineString line) {
        Geometry body = flat(line, DIVIDER_WIDTH / 2);
        paper.fill(PlanView.shape(body), Tone.WHITE);
        paper.draw(PlanView.shape(body), Pen.PATTERN);
        LengthIndexedLine along = new LengthIndexedLine(line);
        for (double at = RUNG_EVERY / 2; at < line.getLength(); at += RUNG_EVERY) {
            Coordinate a = along.extractPoint(at, DIVIDER_WIDTH / 2);
            Coordinate b = along.extractPoint(at, -DIVIDER_WIDTH / 2);
            paper.line(Pen.PATTERN, a.x, a.y, b.x, b.y);
        }
    }

    private static Geometry flat(LineString line, double half) {
        BufferParameters ends = new BufferParameters();
        ends.setEndCapStyle(BufferParameters.CAP_FLAT);
        ends.setJoinStyle(BufferParameters.JOIN_MITRE);
        return BufferOp.bufferOp(line, half, ends);
    }

    /** Under the deck: 0.50, broken 6 / 1 / 1 / 1; along the deck's edge a bulkhead, solid 0.90. */
    public static void support(Paper paper, LineString line, Polygon outline) {
        paper.draw(PlanView.shape(line), onEdge(line, outline) ? Pen.BULKHEAD : Pen.SUPPORT);
    }

    /** The parts of a line that lie on the deck: whoever draws a plan may run a beam past its edge. */
    public static List<LineString> onDeck(LineString line, Polygon outline) {
        Geometry inside = Overlay.intersection(line, outline.buffer(ON_EDGE));
        List<LineString> parts = new ArrayList<>();
        for (int i = 0; i < inside.getNumGeometries(); i++) {
            if (inside.getGeometryN(i) instanceof LineString part && !part.isEmpty()) {
                parts.add(part);
            }
        }
        return parts;
    }

    public static boolean onEdge(LineString line, Polygon outline) {
        return outline.getExteriorRing().buffer(ON_EDGE).covers(line);
    }

    /** 0.70, broken 7 / 1.2 / 1 / 1.2, on a casing of 1.5. */
    public static void cut(Paper paper, Geometry cut) {
        Shape edge = PlanView.shape(cut);
        paper.casing(edge, CUT_CASING);
        paper.draw(edge, Pen.CUT);
    }

    /** The ring no hole may be drilled in. */
    public static void keepOut(Paper paper, Geometry area) {
        paper.draw(PlanView.shape(area), Pen.KEEP_OUT);
    }

    /** Solid laminate, no core: a faint edge with single rising lines far apart would read as damage, so edge only. */
    public static void quietEdge(Paper paper, Geometry area) {
        paper.draw(PlanView.shape(area), Pen.FAINT);
    }
}
