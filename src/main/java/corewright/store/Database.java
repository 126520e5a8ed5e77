package corewright.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.JournalMode;
import org.sqlite.SQLiteConfig.Pragma;
import org.sqlite.SQLiteConfig.SynchronousMode;
import org.sqlite.SQLiteConfig.TransactionMode;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Connections to a survey file, and what the database's failures mean in words. */
final class Database {
    /** "GPKG", at byte 68 (OGC 12-128r18, requirement 2). */
    static final int APPLICATION_ID = 0x47504B47;
    /** GeoPackage 1.3. */
    static final int USER_VERSION = 10300;

    private static final String MAGIC = "SQLite format 3\0";
    private static final int HEADER = 100;
    private static final int APPLICATION_ID_AT = 68;
    /** A picture of this size fills a screen many times over; nothing else comes near. */
    static final int LARGEST_VALUE = 64 << 20;

    /** Negative means KiB; holds the order of some million rows, so that one edit need not fetch it again. */
    private static final int CACHE_KIB = -32_000;

    private Database() {}

    /**
     * A file to be read and written, or only read. Where a process was killed in the middle of an edit, the first to open
     * the file takes back what was half done, a reader too; hence the right to write where there is one.
     */
    static Connection connect(Path file, boolean readOnly) throws SQLException {
        SQLiteConfig config = config();
        config.setReadOnly(readOnly && !Files.isWritable(file));
        if (!readOnly) {
            config.setJournalMode(JournalMode.DELETE);
            config.setTransactionMode(TransactionMode.IMMEDIATE); // what a transaction reads stays so until it writes
        }
        // as an address: in a plain path the driver takes what follows a question mark for settings
        Connection connection = connect("jdbc:sqlite:" + file.toAbsolutePath().toUri(), config);
        queryOnly(connection, readOnly);
        return connection;
    }

    /** An empty database in memory. */
    static Connection inMemory() throws SQLException {
        return connect("jdbc:sqlite::memory:", config());
    }

    private static SQLiteConfig config() {
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout(2000);
        config.setSynchronous(SynchronousMode.FULL);
        config.setCacheSize(CACHE_KIB);
        config.setPragma(Pragma.LIMIT_LENGTH, String.valueOf(LARGEST_VALUE));
        config.setPragma(Pragma.LIMIT_ATTACHED, "0");
        return config;
    }

    private static Connection connect(String address, SQLiteConfig config) throws SQLException {
        Connection connection = DriverManager.getConnection(address, config.toProperties());
        try (Statement pragma = connection.createStatement()) {
            pragma.execute("PRAGMA trusted_schema = OFF");
            pragma.execute("PRAGMA cell_size_check = ON");
        }
        return connection;
    }

    static void queryOnly(Connection connection, boolean on) throws SQLException {
        try (Statement pragma = connection.createStatement()) {
            pragma.execute("PRAGMA query_only = " + (on ? "ON" : "OFF"));
        }
    }

    /**
     * Runs a statement by itself. Transactions of edits are begun and ended so: the driver's own commit begins the next
     * transaction at once, and fails where that does, though all was written.
     */
    static void execute(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    /**
     * Writes what stands there already. A journal that was left by a process killed before it had anything in it, and so
     * is of no use to anybody, goes with it.
     */
    static void touch(Connection connection) throws SQLException {
        execute(connection, "PRAGMA application_id = " + APPLICATION_ID);
    }

    /** Changes when another connection commits to the file. */
    static long dataVersion(Connection connection) throws SQLException {
        try (Statement pragma = connection.createStatement();
                ResultSet row = pragma.executeQuery("PRAGMA data_version")) {
            return row.getLong(1);
        }
    }

    /** Marks a new, empty file as a GeoPackage. */
    static void mark(Connection connection) throws SQLException {
        try (Statement pragma = connection.createStatement()) {
            pragma.execute("PRAGMA application_id = " + APPLICATION_ID);
            pragma.execute("PRAGMA user_version = " + USER_VERSION);
        }
    }

    /** Whether it is a file at all; a pipe or device is never opened, as that may wait without end. */
    static void checkKind(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            throw new StoreException(file, "is a folder, expected a survey file");
        }
        if (!Files.exists(file)) {
            throw new StoreException(file, "there is no such file");
        }
        if (!Files.isRegularFile(file)) {
            throw new StoreException(file, "is a pipe or device, expected a survey file");
        }
    }

    /** Looks at the first bytes, before any of it is taken for a database. */
    static void checkHeader(Path file) throws IOException {
        byte[] head;
        try (InputStream in = Files.newInputStream(file)) {
            head = in.readNBytes(HEADER);
        }
        boolean database =
                head.length == HEADER && new String(head, 0, MAGIC.length(), StandardCharsets.ISO_8859_1).equals(MAGIC);
        if (!database) {
            throw new StoreException(file, "is no survey file (a GeoPackage), or its beginning is lost");
        }
        if (ByteBuffer.wrap(head).getInt(APPLICATION_ID_AT) != APPLICATION_ID) {
            throw new StoreException(file, "is a database, but not marked as a GeoPackage, so it is no survey file");
        }
    }

    /** Reads through every table of a survey, as it were opened for years to come; tables of others are not read. */
    static void checkIntegrity(Connection connection, Path file, List<String> tables)
            throws SQLException, StoreException {
        try (Statement pragma = connection.createStatement()) {
            for (String table : tables) {
                try (ResultSet row = pragma.executeQuery("PRAGMA quick_check(" + table + ")")) {
                    String answer = row.next() ? "" + row.getString(1) : "";
                    answer = answer.replace("*** in database main ***\n", "");
                    if (!answer.equals("ok")) {
                        throw new StoreException(file, "is damaged (" + Scalar.shown(answer) + ")");
                    }
                }
            }
        }
    }

    /** The failure as a sentence that says what to do. */
    static StoreException explain(Path file, SQLException failure) {
        return new StoreException(file, words(failure), failure);
    }

    private static String words(SQLException failure) {
        SQLiteErrorCode code =
                failure instanceof SQLiteException known ? known.getResultCode() : SQLiteErrorCode.UNKNOWN_ERROR;
        String name = code.name();
        String elsewhere = "; nothing of it was written, save a copy elsewhere";
        if (code == SQLiteErrorCode.SQLITE_READONLY_DBMOVED) {
            return "was moved or deleted while open" + elsewhere;
        }
        if (name.startsWith("SQLITE_FULL")) {
            return "the disk is full" + elsewhere;
        }
        if (name.startsWith("SQLITE_READONLY") || name.startsWith("SQLITE_CANTOPEN")) {
            return "the file or its folder cannot be written" + elsewhere;
        }
        if (name.startsWith("SQLITE_BUSY") || name.startsWith("SQLITE_LOCKED")) {
            return "another program is writing to it; close that or try again";
        }
        if (name.startsWith("SQLITE_CORRUPT") || name.startsWith("SQLITE_NOTADB")) {
            return "is damaged (" + Scalar.shown("" + failure.getMessage()) + ")";
        }
        if (name.startsWith("SQLITE_IOERR")) {
            return "the disk failed (" + failure.getMessage() + ")" + elsewhere;
        }
        if (name.startsWith("SQLITE_TOOBIG")) {
            return "holds a value larger than " + (LARGEST_VALUE >> 20) + " MB, which is the limit";
        }
        return "cannot be read as a survey file (" + Scalar.shown("" + failure.getMessage()) + ")";
    }
}
