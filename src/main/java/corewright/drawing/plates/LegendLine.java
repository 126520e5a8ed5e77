package corewright.drawing.plates;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pattern;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Shapes;
import java.util.List;

/**
 * @param swatch a pattern, which needs more height than a mark
 */
public record LegendLine(boolean swatch, LegendSample sample, List<String> words) {
    public LegendLine {
        words = List.copyOf(words);
    }

    /** A patch of a pattern, framed as its regions are. */
    public static void swatch(Paper paper, Pattern pattern, Box box) {
        pattern.swatch(paper, Shapes.rectangle(box));
        paper.draw(box.shape(), pattern == Pattern.UNDECIDED ? Pen.UNDECIDED : Pen.MARK);
    }
}
