package corewright.intake;

import corewright.intake.text.LengthUnit;
import corewright.intake.text.Row;
import corewright.intake.text.Words;
import corewright.survey.Side;
import corewright.survey.Spot;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Resolves the cells that every reading has in common: id, face, meter, place. */
final class Places {
    private Places() {}

    /** The row's id, or file:line. */
    static String id(Row row) {
        String id = row.name("id");
        return id.isEmpty() ? row.origin().toString() : id;
    }

    /** The row's face, else the file's, else the only one; null after a complaint or where survey.yaml has none. */
    static @Nullable String face(Row row, String ofFile, List<String> faces) {
        return named(row, "face", ofFile, faces);
    }

    /** As {@link #face}. */
    static @Nullable String meter(Row row, String ofFile, List<String> meters) {
        return named(row, "meter", ofFile, meters);
    }

    static @Nullable Spot spot(Row row, String x, String y, @Nullable String face, LengthUnit unit) {
        Double xMm = row.length(x, unit);
        Double yMm = row.length(y, unit);
        return face == null || xMm == null || yMm == null ? null : new Spot(face, xMm, yMm);
    }

    /** The row's side of the deck, else the file's. */
    static Side side(Row row, FileEntry entry) {
        Side side = row.has("side") ? row.word("side", Side.class) : entry.side();
        return side == null ? entry.side() : side;
    }

    private static @Nullable String named(Row row, String column, String ofFile, List<String> known) {
        String name = row.has(column) ? row.text(column) : ofFile;
        if (name.isEmpty() && known.size() == 1) {
            return known.get(0);
        }
        if (known.contains(name)) {
            return name;
        }
        if (!known.isEmpty()) { // else survey.yaml has been complained of already
            row.expected(column, Words.or(known));
        }
        return null;
    }
}
