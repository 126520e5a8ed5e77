package corewright.store;

import corewright.survey.Edit;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/** Every edit with its inverse, and how many of them are in effect. Runs inside the caller's transaction. */
final class Journal {
    private final Path file;
    private final Connection connection;
    private long cursor;
    private long size;

    Journal(Path file, Connection connection) throws SQLException {
        this.file = file;
        this.connection = connection;
        refresh();
    }

    /** After a transaction that came to nothing. */
    void refresh() throws SQLException {
        try (Statement select = connection.createStatement();
                ResultSet row = select.executeQuery("SELECT coalesce(max(fid), 0) FROM edits")) {
            size = row.getLong(1);
        }
        cursor = Math.max(0, Math.min(size, State.read(connection, State.UNDO_CURSOR)));
    }

    boolean canUndo() {
        return cursor > 0;
    }

    boolean canRedo() {
        return cursor < size;
    }

    /** Adds an edit; what was taken back before it is forgotten. */
    void add(Edit edit, Edit inverse) throws SQLException {
        try (Statement forget = connection.createStatement()) {
            forget.executeUpdate("DELETE FROM edits WHERE fid > " + cursor);
        }
        String sql = "INSERT INTO edits (fid, edit, inverse) VALUES (?, ?, ?)";
        try (PreparedStatement insert = connection.prepareStatement(sql)) {
            insert.setLong(1, cursor + 1);
            insert.setString(2, Json.write(edit));
            insert.setString(3, Json.write(inverse));
            insert.executeUpdate();
        }
        size = cursor + 1;
        moveTo(size);
    }

    /** What takes the last edit back. */
    Edit undo() throws SQLException, StoreException {
        return edit("inverse", cursor);
    }

    /** The edit that was taken back last. */
    Edit redo() throws SQLException, StoreException {
        return edit("edit", cursor + 1);
    }

    void step(int by) throws SQLException {
        moveTo(cursor + by);
    }

    private void moveTo(long edits) throws SQLException {
        cursor = edits;
        State.write(connection, State.UNDO_CURSOR, cursor);
    }

    private Edit edit(String column, long fid) throws SQLException, StoreException {
        try (Statement select = connection.createStatement();
                ResultSet row = select.executeQuery("SELECT " + column + " FROM edits WHERE fid = " + fid)) {
            return Json.read(row.next() ? "" + row.getString(1) : "");
        } catch (IllegalArgumentException e) {
            throw new StoreException(file, "table edits, row " + fid + ": " + e.getMessage(), e);
        }
    }
}
