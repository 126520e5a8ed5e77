package corewright.intake.text;

import java.util.List;

/**
 * @param number the physical line the record starts on
 * @param cells stripped
 */
public record SheetLine(long number, List<String> cells) {
    public String cell(int column) {
        return column < cells.size() ? cells.get(column) : "";
    }
}
