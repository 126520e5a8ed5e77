package corewright.intake.text;

import java.util.ArrayList;
import java.util.List;

/**
 * @param number the physical line the record starts on
 * @param cells stripped
 */
public record SheetLine(long number, List<String> cells) {
    public String cell(int column) {
        return column < cells.size() ? cells.get(column) : "";
    }

    /** Whether it has anything to the right of so many columns. */
    public boolean isWiderThan(int columns) {
        return cells.stream().skip(columns).anyMatch(cell -> !cell.isEmpty());
    }

    /** The line with one cell mended. */
    public SheetLine with(int column, String text) {
        List<String> changed = new ArrayList<>(cells);
        while (changed.size() <= column) {
            changed.add("");
        }
        changed.set(column, text.strip());
        return new SheetLine(number, List.copyOf(changed));
    }
}
