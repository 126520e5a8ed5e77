package corewright.survey;

/**
 * Where a record was read from, so that every finding can point at it.
 *
 * @param file name inside the survey folder
 * @param line first line is 1; 0 where the whole file is meant
 */
public record Origin(String file, long line) {
    @Override
    public String toString() {
        return line > 0 ? file + ":" + line : file;
    }
}
