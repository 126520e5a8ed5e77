package corewright.store;

import corewright.store.Table.Drawn;
import corewright.survey.Edit;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Materials;
import corewright.survey.Part;
import corewright.survey.Survey;
import corewright.survey.settings.Settings;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Makes in the tables the change that an edit makes in a survey. Runs inside the caller's transaction. */
final class Rows {
    /** Between neighbours: room for 40 insertions at the same place before the list is numbered anew, and for millions of rows. */
    private static final long STEP = 1L << 40;

    private final Connection connection;

    Rows(Connection connection) {
        this.connection = connection;
    }

    /** Everything, into empty tables. */
    void insertAll(Survey survey) throws SQLException {
        for (Part<?> part : Part.all()) {
            fill(part, survey);
        }
    }

    /** @param before the survey that the edit is made in */
    void apply(Edit edit, Survey before) throws SQLException {
        if (edit instanceof Edit.Insert<?> insert) {
            insert(insert, before);
            stamp(insert.part());
        } else if (edit instanceof Edit.Remove<?> remove) {
            remove(remove.part(), remove.at(), before);
            stamp(remove.part());
        } else if (edit instanceof Edit.Replace<?> replace) {
            replace(replace, before);
            stamp(replace.part());
        } else if (edit instanceof Edit.Together together) {
            Survey now = before;
            for (Edit each : together.edits()) {
                apply(each, now);
                now = each.apply(now);
            }
        }
    }

    /** The standard wants to know when a table last changed. */
    private void stamp(Part<?> part) throws SQLException {
        String sql =
                "UPDATE gpkg_contents SET last_change = strftime('%Y-%m-%dT%H:%M:%fZ', 'now') WHERE table_name = ?";
        try (PreparedStatement update = connection.prepareStatement(sql)) {
            update.setString(1, part.equals(Part.MATERIALS) ? Table.CORES.name() : part.name());
            update.executeUpdate();
        }
    }

    private <T> void fill(Part<T> part, Survey survey) throws SQLException {
        if (part.equals(Part.MATERIALS)) {
            materials(survey.materials());
        } else if (part.equals(Part.SETTINGS)) {
            settings(survey.settings());
        } else {
            append(Table.of(part), part.of(survey));
            if (part.equals(Part.FACES)) {
                for (Face face : survey.faces()) {
                    features(face);
                }
            }
        }
    }

    private <T> void insert(Edit.Insert<T> edit, Survey before) throws SQLException {
        Part<T> part = edit.part();
        int size = part.of(before).size();
        if (edit.item() instanceof Feature feature) {
            put(Table.PLAN_FEATURES, part.face(), size, edit.at(), new Drawn(part.face(), feature));
            return;
        }
        put(Table.of(part), "", size, edit.at(), edit.item());
        if (edit.item() instanceof Face face) {
            features(face);
        }
    }

    private void remove(Part<?> part, int at, Survey before) throws SQLException {
        if (part.equals(Part.FACES)) {
            deleteFeatures(before.faces().get(at));
        }
        String table = part.type() == Feature.class ? Table.PLAN_FEATURES.name() : part.name();
        long position = position(table, part.face(), part.of(before).size(), at);
        update("DELETE FROM " + table + where(part.face(), "position = ?"), part.face(), position);
    }

    private <T> void replace(Edit.Replace<T> edit, Survey before) throws SQLException {
        Part<T> part = edit.part();
        if (edit.item() instanceof Materials materials) {
            materials(materials);
        } else if (edit.item() instanceof Settings settings) {
            settings(settings);
        } else if (edit.item() instanceof Feature feature) {
            set(Table.PLAN_FEATURES, part, edit.at(), new Drawn(part.face(), feature), before);
        } else {
            if (edit.item() instanceof Face face) {
                deleteFeatures(before.faces().get(edit.at()));
                features(face);
            }
            set(Table.of(part), part, edit.at(), edit.item(), before);
        }
    }

    private <T> void set(Table<T> table, Part<?> part, int at, T item, Survey before) throws SQLException {
        long position = position(table.name(), part.face(), part.of(before).size(), at);
        String columns = table.quotedColumns().replace(",", " = ?,") + " = ?";
        String sql = "UPDATE " + table.name() + " SET " + columns + where(part.face(), "position = ?");
        @Nullable Object[] row = table.row().apply(item);
        try (PreparedStatement update = connection.prepareStatement(sql)) {
            bind(update, row);
            int next = row.length + 1;
            if (!part.face().isEmpty()) {
                update.setString(next++, part.face());
            }
            update.setLong(next, position);
            update.executeUpdate();
        }
    }

    private void features(Face face) throws SQLException {
        append(
                Table.PLAN_FEATURES,
                face.features().stream().map(f -> new Drawn(face.name(), f)).toList());
    }

    private void deleteFeatures(Face face) throws SQLException {
        try (PreparedStatement delete = connection.prepareStatement("DELETE FROM plan_features WHERE face = ?")) {
            delete.setString(1, face.name());
            delete.executeUpdate();
        }
    }

    private void materials(Materials materials) throws SQLException {
        empty("skins");
        empty("cores");
        append(
                Table.SKINS,
                materials.skins().values().stream()
                        .sorted(by(Materials.Skin::name))
                        .toList());
        append(
                Table.CORES,
                materials.cores().values().stream()
                        .sorted(by(Materials.Core::name))
                        .toList());
    }

    private static <T> Comparator<T> by(Function<T, String> name) {
        return Comparator.comparing(name);
    }

    private void settings(Settings settings) throws SQLException {
        empty("resins");
        append(Table.RESINS, settings.resins());
        empty("settings");
        String sql = "INSERT INTO settings (section, name, value) VALUES (?, ?, ?)";
        try (PreparedStatement insert = connection.prepareStatement(sql)) {
            for (SettingsTable.Value value : SettingsTable.values(settings)) {
                insert.setString(1, value.section());
                insert.setString(2, value.name());
                insert.setString(3, value.value());
                insert.addBatch();
            }
            insert.executeBatch();
        }
    }

    /** Into a table, or a face's part of it, that is empty so far. */
    <T> void append(Table<T> table, List<T> items) throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement(insertInto(table))) {
            long position = 0;
            for (T item : items) {
                @Nullable Object[] row = table.row().apply(item);
                bind(insert, row);
                position += STEP;
                insert.setLong(row.length + 1, position);
                insert.addBatch();
                if (position % (1000 * STEP) == 0) {
                    insert.executeBatch();
                }
            }
            insert.executeBatch();
        }
    }

    private <T> void put(Table<T> table, String face, int size, int at, T item) throws SQLException {
        long position = free(table.name(), face, size, at);
        try (PreparedStatement insert = connection.prepareStatement(insertInto(table))) {
            @Nullable Object[] row = table.row().apply(item);
            bind(insert, row);
            insert.setLong(row.length + 1, position);
            insert.executeUpdate();
        }
    }

    private static String insertInto(Table<?> table) {
        return "INSERT INTO " + table.name() + " (" + table.quotedColumns() + ", position) VALUES ("
                + "?, ".repeat(table.columns().size()) + "?)";
    }

    /** A position before that of the thing at {@code at}. */
    private long free(String table, String face, int size, int at) throws SQLException {
        if (size == 0) {
            return STEP;
        }
        if (at == size) {
            return position(table, face, size, size - 1) + STEP;
        }
        if (at == 0) {
            return position(table, face, size, 0) - STEP;
        }
        long[] around = positions(table, face, size, at - 1, 2);
        if (around[1] - around[0] > 1) {
            return around[0] + (around[1] - around[0]) / 2;
        }
        renumber(table, face);
        return at * STEP + STEP / 2;
    }

    private void renumber(String table, String face) throws SQLException {
        String sql = "UPDATE " + table + " SET position = " + STEP + " * n FROM (SELECT fid AS f, row_number() OVER "
                + "(ORDER BY position) AS n FROM " + table + where(face, "") + ") WHERE fid = f";
        try (PreparedStatement update = connection.prepareStatement(sql)) {
            if (!face.isEmpty()) {
                update.setString(1, face);
            }
            update.executeUpdate();
        }
    }

    private long position(String table, String face, int size, int at) throws SQLException {
        return positions(table, face, size, at, 1)[0];
    }

    /** Where things stand, {@code count} of {@code size} from the one at {@code at} on; counted from the nearer end. */
    private long[] positions(String table, String face, int size, int at, int count) throws SQLException {
        boolean fromEnd = at > size / 2;
        String sql = "SELECT position FROM " + table + where(face, "") + " ORDER BY position" + (fromEnd ? " DESC" : "")
                + " LIMIT ? OFFSET ?";
        long[] positions = new long[count];
        try (PreparedStatement select = connection.prepareStatement(sql)) {
            int next = 1;
            if (!face.isEmpty()) {
                select.setString(next++, face);
            }
            select.setInt(next, count);
            select.setInt(next + 1, fromEnd ? size - count - at : at);
            try (ResultSet found = select.executeQuery()) {
                for (int i = 0; i < count; i++) {
                    if (!found.next()) {
                        throw new SQLException("row " + at + " of " + size + " is not in table " + table);
                    }
                    positions[fromEnd ? count - 1 - i : i] = found.getLong(1);
                }
            }
        }
        return positions;
    }

    private static String where(String face, String more) {
        if (face.isEmpty()) {
            return more.isEmpty() ? "" : " WHERE " + more;
        }
        return " WHERE face = ?" + (more.isEmpty() ? "" : " AND " + more);
    }

    private void update(String sql, String face, long position) throws SQLException {
        try (PreparedStatement update = connection.prepareStatement(sql)) {
            int next = 1;
            if (!face.isEmpty()) {
                update.setString(next++, face);
            }
            update.setLong(next, position);
            update.executeUpdate();
        }
    }

    private void empty(String table) throws SQLException {
        try (PreparedStatement delete = connection.prepareStatement("DELETE FROM " + table)) {
            delete.executeUpdate();
        }
    }

    private static void bind(PreparedStatement statement, @Nullable Object[] row) throws SQLException {
        for (int i = 0; i < row.length; i++) {
            Object value = row[i];
            if (value instanceof Double number) {
                statement.setDouble(i + 1, number);
            } else if (value instanceof Long whole) {
                statement.setLong(i + 1, whole);
            } else if (value instanceof byte[] bytes) {
                statement.setBytes(i + 1, bytes);
            } else {
                statement.setString(i + 1, (String) value);
            }
        }
    }
}
