package corewright.cli;

import corewright.intake.text.Complaint;
import corewright.intake.text.Decimals;
import corewright.intake.text.Notes;
import corewright.intake.text.RefusedException;
import corewright.intake.text.Sheet;
import corewright.intake.text.SheetLine;
import corewright.intake.text.Text;
import corewright.intake.text.Words;
import corewright.survey.Origin;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Named columns of numbers from a CSV file, for the expert commands.
 *
 * <p>Names are matched without regard to case; dialect and encoding are found as for a survey's files. Where the
 * separator is no comma, a decimal comma is understood. Blank lines are skipped.
 */
public final class NumberTable {
    /** Squares and cubes of larger ones would leave the range of a double once summed; nothing measured comes near. */
    private static final double LARGEST = 1e30;

    private final String file;
    private final List<String> names;
    private final double[][] columns;
    private final long[] lines;

    private NumberTable(String file, List<String> names, double[][] columns, long[] lines) {
        this.file = file;
        this.names = names;
        this.columns = columns;
        this.lines = lines;
    }

    /**
     * Reads these columns.
     *
     * @throws RefusedException with every complaint of the file: unreadable, a column missing, cells that are no numbers, no
     *     row at all
     */
    public static NumberTable read(Path path, List<String> names) throws RefusedException {
        String file = String.valueOf(path.getFileName());
        return new Reading(file, names).read(path);
    }

    /** A copy of one of the columns asked for. */
    public double[] column(String name) {
        return columns[names.indexOf(name)].clone();
    }

    /** Where a row stands. */
    public Origin origin(int row) {
        return new Origin(file, lines[row]);
    }

    /** One pass over one file, collecting what is wrong with it. */
    private static final class Reading {
        private final String file;
        private final List<String> names;
        private final Notes notes;

        Reading(String file, List<String> names) {
            this.file = file;
            this.names = List.copyOf(names);
            this.notes = new Notes(file);
        }

        NumberTable read(Path path) throws RefusedException {
            Sheet sheet = sheet(path);
            notes.refuseIfAnyComplaint();
            if (sheet == null || sheet.lines().size() < 2) {
                notes.complain(new Origin(file, 0), "", "expected at least one row below the header");
            }
            if (sheet == null || sheet.lines().isEmpty()) {
                notes.refuseIfAnyComplaint();
                throw new IllegalStateException("a file without a header was not complained of");
            }
            int[] at = header(sheet.lines().get(0));
            notes.refuseIfAnyComplaint(); // without its columns no cell can be judged
            return table(sheet, at);
        }

        private @Nullable Sheet sheet(Path path) {
            try {
                String text = Text.read(path, file, Text.LARGEST_BYTES, notes);
                return text == null ? null : Sheet.parse(file, text, this::isWanted, notes);
            } catch (IOException e) {
                notes.complain(new Origin(file, 0), "", "cannot be read: " + e.getMessage());
                return null;
            }
        }

        private boolean isWanted(String header) {
            return names.stream().anyMatch(header::equalsIgnoreCase);
        }

        private int[] header(SheetLine header) {
            int[] at = new int[names.size()];
            Origin origin = new Origin(file, header.number());
            for (int c = 0; c < at.length; c++) {
                String name = names.get(c);
                at[c] = -1;
                for (int i = 0; i < header.cells().size(); i++) {
                    if (header.cell(i).equalsIgnoreCase(name)) {
                        if (at[c] >= 0) {
                            notes.complain(origin, name, "two columns have this name");
                        }
                        at[c] = i;
                    }
                }
                if (at[c] < 0) {
                    notes.expected(origin, name, Words.listed(header.cells()), "a column of this name");
                }
            }
            return at;
        }

        private NumberTable table(Sheet sheet, int[] at) throws RefusedException {
            List<SheetLine> rows = sheet.lines().subList(1, sheet.lines().size());
            double[][] columns = new double[at.length][rows.size()];
            long[] numbers = new long[rows.size()];
            int width = sheet.lines().get(0).cells().size();
            for (int r = 0; r < numbers.length; r++) {
                SheetLine row = rows.get(r);
                Origin origin = new Origin(file, row.number());
                numbers[r] = row.number();
                if (row.isWiderThan(width)) {
                    String problem = "found " + row.cells().size() + " cells, expected " + width;
                    notes.complain(origin, "", problem);
                    continue;
                }
                for (int c = 0; c < at.length; c++) {
                    String cell = row.cell(at[c]);
                    columns[c][r] = number(sheet.separator() == ',' ? cell : cell.replace(',', '.'));
                    if (Double.isNaN(columns[c][r])) {
                        notes.complain(Complaint.of(origin, names.get(c), cell, "a number"));
                    }
                }
            }
            notes.refuseIfAnyComplaint();
            return new NumberTable(file, names, columns, numbers);
        }
    }

    /** NaN for what is not a plain decimal number of a size that can be reckoned with. */
    private static double number(String cell) {
        Double number = Decimals.parse(cell.replace('\u2212', '-'), LARGEST); // the typographic minus
        return number == null ? Double.NaN : number;
    }
}
