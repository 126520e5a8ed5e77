package corewright.intake.text;

import corewright.intake.text.Numerals.Decimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * How a spreadsheet wrote a CSV file.
 *
 * @param separator between cells
 * @param start where the first record begins: after a {@code sep=;} line, if there is one
 */
public record Dialect(char separator, int start) {
    private static final Pattern SEP_LINE = Pattern.compile("\\s*\"?sep=([;,\t])\"?[ \t]*(?:\n|$)");
    private static final Pattern BOTH = Pattern.compile("[+\u2212-]?[0-9]{1,3}(?:([.,' \u00A0])[0-9]{3})+([.,])[0-9]+");

    /**
     * The separator whose cells in the first line are most often names this file can use, or numbers (a cross-tab);
     * where two do equally well the rarer character wins, as commas also stand inside cells.
     */
    public static Dialect detect(String text, Predicate<String> knows) {
        var named = SEP_LINE.matcher(text);
        if (named.lookingAt()) {
            return new Dialect(named.group(1).charAt(0), named.end());
        }
        String header = firstLine(text);
        char best = ',';
        long most = -1;
        for (char separator : new char[] {'\t', ';', ','}) {
            List<String> cells = split(header, separator);
            long useful = cells.stream()
                    .filter(c -> knows.test(c) || Lengths.parse(c, LengthUnit.MM, Decimal.DOT) != null)
                    .count();
            long score = 1000 * useful + (useful > 0 || cells.size() < 2 ? 0 : 1);
            if (score > most) {
                most = score;
                best = separator;
            }
        }
        return new Dialect(best, 0);
    }

    /** Decides what {@code 1,234} means by the cells of this file that leave no doubt. */
    public Decimal decimal(List<SheetLine> lines) {
        Votes votes = new Votes();
        for (SheetLine line : lines) {
            for (String cell : line.cells()) {
                votes.count(cell);
            }
        }
        if (votes.comma != votes.dot) {
            return votes.comma > votes.dot ? Decimal.COMMA : Decimal.DOT;
        }
        if (votes.comma == 0 && votes.eitherDot > 0 && votes.eitherComma == 0) {
            return Decimal.DOT;
        }
        return separator == ',' ? Decimal.DOT : Decimal.COMMA;
    }

    /** Cells that say which sign is decimal, and those that may be either. */
    private static final class Votes {
        private int comma;
        private int dot;
        private int eitherComma;
        private int eitherDot;

        void count(String cell) {
            int comma = cell.indexOf(',');
            int dot = cell.indexOf('.');
            if ((comma < 0 && dot < 0) || cell.length() > 30) {
                return;
            }
            int sign = Math.max(comma, dot);
            if ((comma < 0 || dot < 0) && isNumberWithOneSign(cell, sign)) {
                boolean either = Numerals.couldBeThousands(unsigned(cell));
                this.comma += comma >= 0 && !either ? 1 : 0;
                this.dot += dot >= 0 && !either ? 1 : 0;
                eitherComma += comma >= 0 && either ? 1 : 0;
                eitherDot += dot >= 0 && either ? 1 : 0;
                return;
            }
            var both = BOTH.matcher(cell);
            if (both.matches() && !both.group(1).equals(both.group(2))) {
                this.comma += both.group(2).equals(",") ? 1 : 0;
                this.dot += both.group(2).equals(".") ? 1 : 0;
            }
        }

        /** Digits, the sign, digits; nearly every cell of a file is looked at, so no pattern is used. */
        private static boolean isNumberWithOneSign(String cell, int sign) {
            int from = cell.length() - unsigned(cell).length();
            for (int i = from; i < cell.length(); i++) {
                if (i != sign && (cell.charAt(i) < '0' || cell.charAt(i) > '9')) {
                    return false;
                }
            }
            return sign > from && sign < cell.length() - 1;
        }

        private static String unsigned(String cell) {
            return "+-\u2212".indexOf(cell.charAt(0)) >= 0 ? cell.substring(1) : cell;
        }
    }

    /** The first line that is not blank; a header with a line break inside quotes is cut short, which is enough. */
    private static String firstLine(String text) {
        int from = 0;
        while (from < text.length()) {
            int end = text.indexOf('\n', from);
            String line = text.substring(from, end < 0 ? text.length() : end);
            if (!line.isBlank()) {
                return line.length() > 100_000 ? line.substring(0, 100_000) : line;
            }
            from = end < 0 ? text.length() : end + 1;
        }
        return "";
    }

    private static List<String> split(String line, char separator) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == separator && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString().strip());
        return cells;
    }
}
