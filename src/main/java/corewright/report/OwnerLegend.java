package corewright.report;

import corewright.assessment.Assessment;
import corewright.damage.Condition;
import corewright.damage.FaceDamage;
import corewright.drawing.Box;
import corewright.drawing.Paper;
import corewright.drawing.Paper.Anchor;
import corewright.drawing.Pattern;
import corewright.drawing.Pen;
import corewright.drawing.Type;
import corewright.drawing.Typeface;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** How to read the owner's map: only what the map uses, in plain words. */
final class OwnerLegend {
    private static final Type WORDS = new Type(Typeface.TEXT, 8);
    private static final Type TAG = new Type(Typeface.TEXT_BOLD, 7);
    private static final double SWATCH_WIDTH = 8.1;
    private static final double SWATCH_HEIGHT = 5;
    private static final double LINE = 6.4;
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private OwnerLegend() {}

    static void paint(Paper paper, Assessment assessment, FaceDamage face, Box box) {
        double y = box.y() + 1;
        for (Condition condition : Condition.values()) {
            if (condition != Condition.SOUND && face.regions().stream().anyMatch(r -> r.condition() == condition)) {
                swatch(paper, Pattern.of(condition), Pen.MARK, box.x(), y);
                y = words(paper, OwnerWords.briefly(condition), box, y);
            }
        }
        if (!face.undecided().isEmpty()) {
            swatch(paper, Pattern.UNDECIDED, Pen.UNDECIDED, box.x(), y);
            y = words(paper, "not decided yet", box, y);
        }
        if (!face.regions().isEmpty()) {
            paper.line(Pen.POSSIBLE, box.x(), y + SWATCH_HEIGHT / 2, box.x() + SWATCH_WIDTH, y + SWATCH_HEIGHT / 2);
            y = words(paper, "cannot be ruled out", box, y);
        }
        String name = face.face().name();
        if (assessment.next().stream().anyMatch(n -> n.spot().face().equals(name))) {
            tag(paper, box.x() + 0.5, y + SWATCH_HEIGHT / 2);
            words(paper, "read here next", box, y);
        }
    }

    private static double words(Paper paper, String words, Box box, double y) {
        List<String> lines = WORDS.wrap(words, box.width() - SWATCH_WIDTH - 1.9);
        double baseline = y + (SWATCH_HEIGHT + WORDS.capMm()) / 2 - (lines.size() - 1) * WORDS.leadMm() / 2;
        for (int i = 0; i < lines.size(); i++) {
            paper.text(lines.get(i), box.x() + SWATCH_WIDTH + 1.9, baseline + i * WORDS.leadMm(), WORDS, Anchor.LEFT);
        }
        return y + Math.max(LINE, lines.size() * WORDS.leadMm() + 1.2);
    }

    private static void swatch(Paper paper, Pattern pattern, Pen edge, double x, double y) {
        Polygon area = GEOMETRY.createPolygon(new Coordinate[] {
            new Coordinate(x, y),
            new Coordinate(x + SWATCH_WIDTH, y),
            new Coordinate(x + SWATCH_WIDTH, y + SWATCH_HEIGHT),
            new Coordinate(x, y + SWATCH_HEIGHT),
            new Coordinate(x, y)
        });
        Rectangle2D frame = new Rectangle2D.Double(x, y, SWATCH_WIDTH, SWATCH_HEIGHT);
        Shape before = paper.graphics().getClip();
        paper.graphics().clip(frame);
        pattern.paint(paper, area, new Point2D.Double(x, y));
        paper.graphics().setClip(before);
        paper.draw(frame, edge);
    }

    private static void tag(Paper paper, double x, double y) {
        Path2D outline = new Path2D.Double();
        outline.moveTo(x, y);
        outline.lineTo(x + 1.7, y - 1.75);
        outline.lineTo(x + 6.5, y - 1.75);
        outline.lineTo(x + 6.5, y + 1.75);
        outline.lineTo(x + 1.7, y + 1.75);
        outline.closePath();
        paper.draw(outline, Pen.MARK);
        paper.text("?1", x + 3.9, y + TAG.capMm() / 2, TAG, Anchor.CENTRE);
    }
}
