package corewright.report.owner;

import corewright.assessment.Assessment;
import corewright.damage.Condition;
import corewright.damage.FaceDamage;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Pattern;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.plates.LegendLine;
import java.awt.geom.Path2D;
import java.util.List;

/** How to read the owner's map: only what the map uses, in plain words. */
final class OwnerLegend {
    private static final Type WORDS = new Type(Typeface.TEXT, 8);
    private static final Type TAG = new Type(Typeface.TEXT_BOLD, 7);
    private static final double SWATCH_WIDTH = 8.1;
    private static final double SWATCH_HEIGHT = 5;
    private static final double LINE = 6.4;

    private OwnerLegend() {}

    static void paint(Paper paper, Assessment assessment, FaceDamage face, Box box) {
        double y = box.y() + 1;
        for (Condition condition : Condition.values()) {
            if (condition != Condition.SOUND && face.regions().stream().anyMatch(r -> r.condition() == condition)) {
                LegendLine.swatch(paper, Pattern.of(condition), new Box(box.x(), y, SWATCH_WIDTH, SWATCH_HEIGHT));
                y = words(paper, OwnerWords.briefly(condition), box, y);
            }
        }
        if (!face.undecided().isEmpty()) {
            LegendLine.swatch(paper, Pattern.UNDECIDED, new Box(box.x(), y, SWATCH_WIDTH, SWATCH_HEIGHT));
            y = words(paper, "not decided yet", box, y);
        }
        if (!face.regions().isEmpty()) {
            paper.line(Pen.POSSIBLE, box.x(), y + SWATCH_HEIGHT / 2, box.x() + SWATCH_WIDTH, y + SWATCH_HEIGHT / 2);
            y = words(paper, "cannot be ruled out", box, y);
        }
        if (!OwnerMap.tags(assessment, face.face().name()).isEmpty()) {
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
