package corewright.report.owner;

import corewright.assessment.Assessment;
import corewright.damage.Condition;
import corewright.damage.FaceDamage;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Parts.Part;
import corewright.drawing.kit.Pattern;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.plates.LegendLine;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How to read the owner's map: only what the map uses, in plain words. */
final class OwnerLegend {
    private static final Type WORDS = new Type(Typeface.TEXT, 8);
    private static final Type TAG = new Type(Typeface.TEXT_BOLD, 7);
    private static final double SWATCH_WIDTH = 8.1;
    private static final double SWATCH_HEIGHT = 5;
    private static final double LINE = 6.4;
    private static final double BESIDE = 1.9;
    private static final double APART = 6;

    private record Entry(String words, Sample sample) {
        double width() {
            return SWATCH_WIDTH + BESIDE + WORDS.width(words);
        }
    }

    private interface Sample {
        void paint(Paper paper, double x, double y);
    }

    private OwnerLegend() {}

    /** Height of the entries in rows of that width. */
    static double height(Assessment assessment, FaceDamage face, double widthMm) {
        return lay(null, entries(assessment, face), 0, 0, widthMm);
    }

    /** Paints them in rows. */
    static void paint(Paper paper, Assessment assessment, FaceDamage face, Box box) {
        paper.part(Part.PARAGRAPH, p -> lay(p, entries(assessment, face), box.x(), box.y(), box.width()));
    }

    private static double lay(@Nullable Paper paper, List<Entry> entries, double left, double top, double widthMm) {
        double x = left;
        double y = top;
        for (Entry entry : entries) {
            if (x > left && x + entry.width() > left + widthMm) {
                x = left;
                y += LINE;
            }
            if (paper != null) {
                entry.sample.paint(paper, x, y);
                paper.text(
                        entry.words,
                        x + SWATCH_WIDTH + BESIDE,
                        y + (SWATCH_HEIGHT + WORDS.capMm()) / 2,
                        WORDS,
                        Anchor.LEFT);
            }
            x += entry.width() + APART;
        }
        return entries.isEmpty() ? 0 : y + LINE - top;
    }

    private static List<Entry> entries(Assessment assessment, FaceDamage face) {
        List<Entry> entries = new ArrayList<>();
        for (Condition condition : Condition.values()) {
            if (condition != Condition.SOUND && face.regions().stream().anyMatch(r -> r.condition() == condition)) {
                entries.add(new Entry(OwnerWords.briefly(condition), swatch(Pattern.of(condition))));
            }
        }
        if (!face.undecided().isEmpty()) {
            entries.add(new Entry("not decided yet", swatch(Pattern.UNDECIDED)));
        }
        if (!face.regions().isEmpty()) {
            entries.add(new Entry(
                    "cannot be ruled out",
                    (p, x, y) ->
                            p.line(Pen.POSSIBLE, x, y + SWATCH_HEIGHT / 2, x + SWATCH_WIDTH, y + SWATCH_HEIGHT / 2)));
        }
        if (!OwnerMap.tags(assessment, face.face().name()).isEmpty()) {
            entries.add(new Entry("read here next", (p, x, y) -> tag(p, x + 0.5, y + SWATCH_HEIGHT / 2)));
        }
        return entries;
    }

    private static Sample swatch(Pattern pattern) {
        return (p, x, y) -> LegendLine.swatch(p, pattern, new Box(x, y, SWATCH_WIDTH, SWATCH_HEIGHT));
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
