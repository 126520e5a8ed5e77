package corewright.store;

import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.Origin;
import corewright.survey.Subject;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.sqlite.SQLiteConnection;
import org.sqlite.core.DB;

/**
 * What other programs have made of the tables, against the scripts that make them here: refused where reading or writing
 * would give something else than meant, or run something; removed, before work, where the tables are whole without it.
 */
final class Strangers {
    /** Of the standard, the two that we write to. */
    private static final Set<String> STANDARD = Set.of("gpkg_contents", "gpkg_geometry_columns");

    /** Words that make a table compute, compare or refuse something; a table may have as many as its script has. */
    private static final Set<String> RULES = Set.of(
            "as",
            "check",
            "collate",
            "conflict",
            "constraint",
            "default",
            "foreign",
            "generated",
            "references",
            "strict",
            "unique",
            "virtual",
            "without");

    /** A comment, a text, a name in any of the three quotes, a word or number, or one other character. */
    private static final Pattern TOKEN =
            Pattern.compile("--[^\\n]*+|/\\*(?:[^*]|\\*(?!/))*+(?:\\*/)?|'(?:[^']|'')*+'|\"((?:[^\"]|\"\")*+)\""
                    + "|`((?:[^`]|``)*+)`|\\[([^\\]]*+)\\]|\\w++|\\S");

    /**
     * A column as the database describes it.
     *
     * @param key its place in the primary key, 0 where none
     * @param hidden 0 for one that is stored
     */
    private record Column(String type, boolean notNull, int key, int hidden) {}

    /** The database that the scripts of each version make. */
    private static final Map<Integer, byte[]> MADE = new ConcurrentHashMap<>();

    private final Path file;
    private final Connection found;
    private final Connection expected;
    private final List<Finding> notes = new ArrayList<>();

    private Strangers(Path file, Connection found, Connection expected) {
        this.file = file;
        this.found = found;
        this.expected = expected;
    }

    /** Whether the one table can be read that says which version the file is of. */
    static void checkState(Connection connection, Path file) throws SQLException, StoreException {
        try (Connection reference = reference(0)) {
            new Strangers(file, connection, reference).check("survey_file");
        }
    }

    /**
     * Compares every table of a version; answers what is not understood but does no harm.
     *
     * @throws StoreException naming the table and column, where one is missing or is not what the script makes
     */
    static List<Finding> check(Connection connection, Path file, int version) throws SQLException, StoreException {
        try (Connection reference = reference(version)) {
            Strangers strangers = new Strangers(file, connection, reference);
            for (String table : tables(reference)) {
                strangers.check(table);
            }
            return strangers.notes;
        }
    }

    /** Removes every trigger, and the indexes on our tables that the scripts do not make; ours are made again. */
    static void remove(Connection connection, int version) throws SQLException {
        try (Connection reference = reference(version);
                Statement statement = connection.createStatement()) {
            for (String name : names(connection, "SELECT name FROM sqlite_schema WHERE type = 'trigger'")) {
                statement.executeUpdate("DROP TRIGGER " + quoted(name));
            }
            List<String> tables = tables(reference);
            Map<String, String> ours = indexes(reference, tables);
            Map<String, String> theirs = indexes(connection, tables);
            for (Map.Entry<String, String> index : theirs.entrySet()) {
                if (!tokens(index.getValue()).equals(tokens(ours.getOrDefault(index.getKey(), "")))) {
                    statement.executeUpdate("DROP INDEX " + quoted(index.getKey()));
                }
            }
            for (String sql : ours.values()) {
                statement.executeUpdate(sql.replaceFirst("INDEX", "INDEX IF NOT EXISTS"));
            }
        }
    }

    /** What the scripts make, in memory; run once for each version, as it is asked for several times an opening. */
    private static Connection reference(int version) throws SQLException {
        Connection reference = Database.inMemory();
        DB database = reference.unwrap(SQLiteConnection.class).getDatabase();
        byte[] made = MADE.get(version);
        if (made == null) {
            Schema.createTables(reference, version);
            MADE.put(version, database.serialize("main"));
        } else {
            database.deserialize("main", made);
        }
        return reference;
    }

    /** The tables that a version has and that are read or written. */
    static List<String> tables(int version) throws SQLException {
        try (Connection reference = reference(version)) {
            return tables(reference);
        }
    }

    private static List<String> tables(Connection connection) throws SQLException {
        return names(connection, "SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name").stream()
                .filter(name -> !name.startsWith("sqlite_"))
                .filter(name -> STANDARD.contains(name) || !name.startsWith("gpkg_"))
                .toList();
    }

    private void check(String table) throws SQLException, StoreException {
        String sql = sql(found, table);
        List<String> tokens = tokens(sql);
        if (tokens.size() < 2 || !tokens.get(1).equals("table")) {
            throw new StoreException(file, "table " + table + " is missing; the file is damaged");
        }
        List<String> script = tokens(sql(expected, table));
        if (tokens.equals(script)) {
            return;
        }
        checkColumns(table);
        for (String word : new TreeSet<>(RULES)) {
            long more = count(tokens, word) - count(script, word);
            if (more > 0) {
                throw new StoreException(
                        file,
                        "table " + table + " has a rule of another program (" + word.toUpperCase(Locale.ROOT)
                                + "), so it is not safe to open");
            }
        }
    }

    private void checkColumns(String table) throws SQLException, StoreException {
        Map<String, Column> columns = columns(found, table);
        Map<String, Column> wanted = columns(expected, table);
        for (Map.Entry<String, Column> each : wanted.entrySet()) {
            Column column = columns.remove(each.getKey());
            String place = "table " + table + ", column " + each.getKey();
            if (column == null) {
                throw new StoreException(file, place + ": is missing; the file is damaged");
            }
            refuseCalculated(place, column);
            if (!column.type().equals(each.getValue().type())
                    || column.key() != each.getValue().key()) {
                throw new StoreException(
                        file,
                        place + ": is of type " + words(column) + ", expected " + words(each.getValue())
                                + "; another program has changed it");
            }
        }
        for (Map.Entry<String, Column> other : columns.entrySet()) {
            String place = "table " + table + ", column " + other.getKey();
            refuseCalculated(place, other.getValue());
            if (other.getValue().notNull()) {
                throw new StoreException(file, place + ": is of another program and must be filled, so it is not safe");
            }
            Origin origin = new Origin("table " + table, 0);
            String message = "Column " + other.getKey() + " of table " + table + " is not known to this program.";
            notes.add(new Finding(
                    Finding.Severity.HINT,
                    origin,
                    new About.OfFile(origin),
                    Subject.UNREAD_COLUMN,
                    message,
                    "What is in it is not used."));
        }
    }

    private void refuseCalculated(String place, Column column) throws StoreException {
        if (column.hidden() != 0) {
            throw new StoreException(file, place + ": is calculated, so it is not safe to open");
        }
    }

    private static String words(Column column) {
        return (column.type().isEmpty() ? "none" : column.type()) + (column.key() > 0 ? " and a key" : "");
    }

    private static Map<String, Column> columns(Connection connection, String table) throws SQLException {
        Map<String, Column> columns = new LinkedHashMap<>();
        String sql = "SELECT name, type, \"notnull\", pk, hidden FROM pragma_table_xinfo(?)";
        try (PreparedStatement select = connection.prepareStatement(sql)) {
            select.setString(1, table);
            try (ResultSet rows = select.executeQuery()) {
                while (rows.next()) {
                    Column column = new Column(
                            rows.getString(2).toUpperCase(Locale.ROOT),
                            rows.getBoolean(3),
                            rows.getInt(4),
                            rows.getInt(5));
                    columns.put(rows.getString(1).toLowerCase(Locale.ROOT), column);
                }
            }
        }
        return columns;
    }

    /** Indexes on some tables, without those that a table's own rules make. */
    private static Map<String, String> indexes(Connection connection, List<String> tables) throws SQLException {
        Map<String, String> indexes = new LinkedHashMap<>();
        try (Statement select = connection.createStatement();
                ResultSet rows = select.executeQuery(
                        "SELECT name, sql, lower(tbl_name) FROM sqlite_schema WHERE type = 'index' AND sql IS NOT NULL")) {
            while (rows.next()) {
                if (tables.contains(rows.getString(3))) {
                    indexes.put(rows.getString(1), rows.getString(2));
                }
            }
        }
        return indexes;
    }

    private static String sql(Connection connection, String table) throws SQLException {
        String sql = "SELECT sql FROM sqlite_schema WHERE type = 'table' AND name = ? COLLATE NOCASE";
        try (PreparedStatement select = connection.prepareStatement(sql)) {
            select.setString(1, table);
            try (ResultSet row = select.executeQuery()) {
                return row.next() ? "" + row.getString(1) : "";
            }
        }
    }

    private static List<String> names(Connection connection, String sql) throws SQLException {
        List<String> names = new ArrayList<>();
        try (Statement select = connection.createStatement();
                ResultSet rows = select.executeQuery(sql)) {
            while (rows.next()) {
                names.add(rows.getString(1));
            }
        }
        return names;
    }

    /** The words of a statement, as the database tells them apart: without comments, quotes of names and case. */
    private static List<String> tokens(String sql) {
        List<String> tokens = new ArrayList<>();
        Matcher matcher = TOKEN.matcher(sql);
        while (matcher.find()) {
            String token = matcher.group();
            if (token.startsWith("--") || token.startsWith("/*")) {
                continue;
            }
            for (int quote = 1; quote <= 3; quote++) {
                if (matcher.group(quote) != null) {
                    token = matcher.group(quote);
                }
            }
            tokens.add(token.startsWith("'") ? token : token.toLowerCase(Locale.ROOT));
        }
        return tokens;
    }

    private static long count(List<String> tokens, String word) {
        return tokens.stream().filter(word::equals).count();
    }

    private static String quoted(String name) {
        return '`' + name.replace("`", "``") + '`';
    }
}
