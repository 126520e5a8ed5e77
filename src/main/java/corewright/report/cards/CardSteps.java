package corewright.report.cards;

import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.report.page.Prose;
import java.util.List;

/** Numbered steps of a card, each with its figure and boxes to tick or to write in. */
final class CardSteps {
    private static final Type NUMBER = new Type(Typeface.TEXT_BOLD, 14);
    private static final Type FIGURE = new Type(Typeface.TEXT_BOLD, 15);
    private static final Prose WORDS = new Prose(10, 4.3);
    private static final double NUMBER_WIDE = 8;
    private static final double FIGURE_WIDE = 20;
    private static final double WRITE = 15;
    private static final double PAD = 1.5;

    private CardSteps() {}

    /**
     * A step.
     *
     * @param figure large beside it, empty where there is none
     * @param boxes 1 to tick; more to write in
     */
    record Step(String words, String figure, int boxes) {
        double boxesWide() {
            return boxes > 1 ? boxes * (WRITE + 1.5) : CardSheet.BOX;
        }

        double wordsWide(double width) {
            return width - NUMBER_WIDE - boxesWide() - (figure.isEmpty() ? 3 : FIGURE_WIDE + 3);
        }

        double height(double width) {
            return Math.max(CardSheet.BOX, WORDS.height(words, wordsWide(width))) + 2 * PAD;
        }
    }

    static double height(List<Step> steps, double width) {
        return steps.stream().mapToDouble(s -> s.height(width)).sum();
    }

    /** Paints them from {@code top} down and returns where they end. */
    static double paint(Paper paper, List<Step> steps, int first, double left, double top, double width) {
        double y = top;
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            double height = step.height(width);
            paper.text(String.valueOf(first + i), left, CardSheet.level(NUMBER, y, height), NUMBER, Anchor.LEFT);
            double words = WORDS.height(step.words, step.wordsWide(width));
            WORDS.paint(
                    paper,
                    step.words,
                    left + NUMBER_WIDE,
                    y + (height - words) / 2,
                    step.wordsWide(width),
                    Anchor.LEFT);
            double boxes = left + width - step.boxesWide();
            paper.text(step.figure, boxes - 2.5, CardSheet.level(FIGURE, y, height), FIGURE, Anchor.RIGHT);
            for (int b = 0; b < step.boxes; b++) {
                double wide = step.boxes > 1 ? WRITE : CardSheet.BOX;
                CardSheet.box(paper, boxes + b * (WRITE + 1.5), y + (height - CardSheet.BOX) / 2, wide);
            }
            y += height;
            paper.line(Pen.FAINT, left, y, left + width, y);
        }
        return y;
    }
}
