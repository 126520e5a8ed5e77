package corewright.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;

/** The few whole numbers that a file keeps of itself. */
final class State {
    static final String SCHEMA_VERSION = "schema_version";
    /** How many edits of the journal are in effect; those beyond it were taken back. */
    static final String UNDO_CURSOR = "undo_cursor";

    private State() {}

    /** The number, -1 where there is none. */
    static long read(Connection connection, String name) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("SELECT value FROM survey_file WHERE name = ?")) {
            select.setString(1, name);
            try (ResultSet row = select.executeQuery()) {
                return row.next() ? row.getLong(1) : -1;
            }
        }
    }

    static void write(Connection connection, String name, long value) throws SQLException {
        try (PreparedStatement update =
                connection.prepareStatement("UPDATE survey_file SET value = ? WHERE name = ?")) {
            update.setLong(1, value);
            update.setString(2, name);
            update.executeUpdate();
        }
    }
}
