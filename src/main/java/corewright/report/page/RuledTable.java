package corewright.report.page;

import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Parts.Part;
import corewright.drawing.kit.Pen;
import java.util.ArrayList;
import java.util.List;

/** A table ruled between its rows; a marked row has heavy rules, no shading. Cells wrap within their column. */
public final class RuledTable {
    /** @param widthMm with the gap to the next column */
    public record Column(String head, double widthMm, Anchor anchor) {
        double textWidth() {
            return widthMm - (anchor == Anchor.RIGHT ? GAP_RIGHT : GAP);
        }
    }

    private record Row(List<String> cells, boolean marked) {}

    private static final double GAP = 2.5;

    /** Ranged right, the column's end keeps clear of a left-ranged neighbour. */
    private static final double GAP_RIGHT = 5;

    private static final double ABOVE = 1.3;
    private static final double BELOW = 1.3;
    private static final Pen HAIRLINE = Pen.FAINT;
    private static final Pen HEAD = Pen.MARK;
    private static final Pen MARKED = Pen.EDGE;

    private final List<Column> columns;
    private final List<Row> rows = new ArrayList<>();

    public RuledTable(List<Column> columns) {
        this.columns = List.copyOf(columns);
    }

    public void row(List<String> cells) {
        rows.add(new Row(List.copyOf(cells), false));
    }

    /** A row with heavy rules above and below. */
    public void markedRow(List<String> cells) {
        rows.add(new Row(List.copyOf(cells), true));
    }

    public int size() {
        return rows.size();
    }

    double headHeight() {
        return cellsHeight(heads()) + BELOW;
    }

    double rowHeight(int row) {
        return ABOVE + cellsHeight(rows.get(row).cells) + BELOW;
    }

    /** Height of head and all rows. */
    public double height() {
        return height(0, rows.size());
    }

    /** Height of head and some rows. */
    public double height(int first, int count) {
        double height = headHeight();
        for (int i = first; i < first + count; i++) {
            height += rowHeight(i);
        }
        return height;
    }

    /** How many rows from {@code first} on fit under a head. */
    public int fitting(int first, double heightMm) {
        double left = heightMm - headHeight() + Flow.ROUNDING;
        int next = first;
        while (next < rows.size() && left >= rowHeight(next)) {
            left -= rowHeight(next++);
        }
        return next - first;
    }

    /** Paints the head and some rows; returns the height taken. */
    public double paint(Paper paper, double left, double top, int first, int count) {
        paper.part(Part.TABLE, p -> {
            double y = top + headHeight();
            cells(p, heads(), left, top, Part.HEAD_CELL);
            rule(p, left, y, HEAD);
            for (int i = first; i < first + count; i++) {
                Row row = rows.get(i);
                cells(p, row.cells, left, y + ABOVE, Part.CELL);
                y += rowHeight(i);
                boolean markedNext = i + 1 < rows.size() && rows.get(i + 1).marked;
                rule(p, left, y, row.marked || markedNext ? MARKED : HAIRLINE);
            }
        });
        return height(first, count);
    }

    private List<String> heads() {
        return columns.stream().map(c -> Prose.bold(c.head)).toList();
    }

    private double cellsHeight(List<String> cells) {
        double height = 0;
        for (int i = 0; i < cells.size(); i++) {
            height = Math.max(
                    height, Prose.CELL.height(cells.get(i), columns.get(i).textWidth()));
        }
        return height;
    }

    private void cells(Paper paper, List<String> cells, double left, double top, Part part) {
        paper.part(Part.ROW, row -> {
            double x = left;
            for (int i = 0; i < cells.size(); i++) {
                Column column = columns.get(i);
                String words = cells.get(i);
                double at = x;
                row.part(part, p -> Prose.CELL.paint(p, words, at, top, column.textWidth(), column.anchor));
                x += column.widthMm;
            }
        });
    }

    private void rule(Paper paper, double left, double y, Pen pen) {
        double width = columns.stream().mapToDouble(Column::widthMm).sum();
        paper.line(pen, left, y, left + width, y);
    }
}
