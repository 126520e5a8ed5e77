package corewright.mutation;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.sqlite.SQLiteConnection;

/**
 * Changes a survey file at random: its tables through SQL, values of cells, pages and bytes. Nothing takes a row or a
 * word away by a statement that means just that, so that whatever is missing after was lost.
 */
final class SurveyFileMutator {
    private static final int NESTED = 20_000;

    /** Values that have upset readers, as SQL; {@code $} is the column. */
    private static final List<String> VALUES = List.of(
            "NULL",
            "0",
            "1",
            "-1",
            "1e308",
            "-1e308",
            "1e-320",
            "9e999",
            "-9e999",
            "9223372036854775807",
            "-9223372036854775808",
            "''",
            "' '",
            "char(0)",
            "'a' || char(0) || 'b'",
            "char(27) || '[2J' || char(8238)",
            "char(10) || 'no finding.'",
            "'../../etc/passwd'",
            "'=1+1'",
            "'NaN'",
            "'2026-02-30'",
            "'+999999999-12-31'",
            "'foredeck'",
            "replace(hex(zeroblob(45000)), '00', 'ab')",
            "replace(hex(zeroblob(60000)), '00', '[[')",
            "'[' || replace(hex(zeroblob(3000)), '00', '{\"a\":[')",
            "zeroblob(100000)",
            "X'4750'",
            "X'FFFE00D8'",
            "CAST(X'C3288080' AS TEXT)",
            "CAST($ AS BLOB)",
            "CAST($ AS TEXT)",
            "CAST($ AS REAL)",
            "$ || 'x'",
            "upper($)",
            "' ' || $",
            "-$",
            "$ * 1e6",
            "$ / 1e9",
            "substr($, 1, length($) / 2)",
            "$ || $");

    /** Changes of a table {@code T} and its column {@code C}. */
    private static final List<String> SCHEMES = List.of(
            "ALTER TABLE T DROP COLUMN C",
            "ALTER TABLE T RENAME COLUMN C TO other",
            "ALTER TABLE T RENAME TO other",
            "DROP TABLE T",
            "ALTER TABLE T ADD COLUMN other TEXT",
            "ALTER TABLE T ADD COLUMN other REAL NOT NULL DEFAULT 1",
            "ALTER TABLE T ADD COLUMN other AS (C || 'x')",
            "ALTER TABLE T ADD COLUMN other TEXT CHECK (length(other) < 9)",
            "CREATE TRIGGER other AFTER INSERT ON T BEGIN DELETE FROM T; END",
            "CREATE INDEX other ON T (C) WHERE C IS NULL",
            "CREATE UNIQUE INDEX other ON T (C, fid)",
            "CREATE VIEW other AS SELECT * FROM T",
            "ALTER TABLE T RENAME TO other; CREATE VIEW T AS SELECT * FROM other LIMIT 1",
            "ALTER TABLE T RENAME TO other; CREATE TABLE T AS SELECT * FROM other",
            "ALTER TABLE T RENAME TO other; CREATE TABLE T AS SELECT * FROM other LIMIT 1",
            "ALTER TABLE T RENAME TO other; CREATE VIRTUAL TABLE T USING fts5(C)",
            "CREATE VIRTUAL TABLE other USING rtree(id, a, b)",
            "PRAGMA user_version = 7",
            "PRAGMA application_id = 7",
            "DELETE FROM gpkg_contents",
            "UPDATE survey_file SET schema_version = schema_version - 1",
            "UPDATE survey_file SET schema_version = 0",
            "UPDATE survey_file SET schema_version = 99",
            "UPDATE survey_file SET undo_cursor = 7",
            "PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = replace(sql, '`C`', 'C') WHERE name = 'T'",
            "PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = replace(sql, 'TEXT', 'REAL') WHERE name = 'T'",
            "PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = replace(sql, 'C ', 'D ') WHERE name = 'T'",
            "PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = replace(sql, ')', ') STRICT') WHERE name = 'T'",
            "PRAGMA writable_schema = ON; UPDATE sqlite_schema SET name = upper(name), tbl_name = upper(name) WHERE name = 'T'",
            "PRAGMA writable_schema = ON; UPDATE sqlite_schema SET rootpage = rootpage + 1 WHERE name = 'T'",
            "PRAGMA writable_schema = ON; UPDATE sqlite_schema SET rootpage = (SELECT rootpage FROM sqlite_schema WHERE name ="
                    + " 'edits') WHERE name = 'T'",
            "PRAGMA writable_schema = ON; UPDATE sqlite_schema SET rootpage = (SELECT max(rootpage) FROM sqlite_schema) WHERE"
                    + " name = 'T'");

    private final Random random;

    SurveyFileMutator(long seed) {
        this.random = new Random(seed);
    }

    /** One change of the file, or a few; the database refuses some, which are not counted. */
    byte[] mutated(byte[] original) {
        byte[] bytes = original;
        int times = random.nextInt(4) > 0 ? 1 : 2 + random.nextInt(3);
        for (int i = 0; i < times || Arrays.equals(bytes, original); i++) {
            bytes = switch (random.nextInt(10)) {
                case 0, 1, 2 -> sql(bytes, false);
                case 3, 4, 5, 6 -> sql(bytes, true);
                case 7, 8 -> page(bytes);
                default -> ends(bytes);
            };
        }
        return bytes;
    }

    /** The file after a statement; as it was where the database does not take that or cannot read the file any more. */
    private byte[] sql(byte[] bytes, boolean cells) {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite::memory:");
                Statement statement = connection.createStatement()) {
            SQLiteConnection database = connection.unwrap(SQLiteConnection.class);
            database.getDatabase().deserialize("main", bytes);
            String table = pick(names(
                    statement,
                    "SELECT name FROM sqlite_schema WHERE type = 'table'"
                            + " AND name NOT LIKE 'sqlite%' ORDER BY name"));
            String column = pick(names(statement, "SELECT name FROM pragma_table_info('" + table + "')"));
            String sql = cells
                    ? cells(table, column)
                    : pick(SCHEMES)
                            .replaceAll("\\bT\\b", table)
                            .replaceAll("`C`|\\bC\\b", column.equals("check") ? "fid" : column);
            for (String each : sql.split("; (?!END)")) {
                statement.execute(each);
            }
            return database.getDatabase().serialize("main");
        } catch (SQLException e) {
            return bytes;
        }
    }

    private String cells(String table, String column) {
        String name = '`' + column + '`';
        String value = random.nextInt(8) == 0 ? geometry() : pick(VALUES).replace("$", name);
        String update = "UPDATE `" + table + "` SET " + (random.nextInt(8) == 0 ? "geom" : name) + " = " + value;
        return switch (random.nextInt(4)) {
            case 0 -> update;
            case 1 -> update + " WHERE rowid = (SELECT max(rowid) FROM `" + table + "`)";
            default -> update + " WHERE rowid % 7 = " + random.nextInt(7);
        };
    }

    /** A geometry nested deeply, one that claims more points than it has, or one with points that are none. */
    private String geometry() {
        int kind = random.nextInt(4);
        ByteBuffer wkb = ByteBuffer.allocate(8 + 9 * NESTED + 64).order(ByteOrder.LITTLE_ENDIAN);
        wkb.put("GP\0\1".getBytes(java.nio.charset.StandardCharsets.US_ASCII)).putInt(-1);
        for (int i = 0; kind == 0 && i < NESTED; i++) {
            wkb.put((byte) 1).putInt(7).putInt(1);
        }
        if (kind == 1) {
            wkb.put((byte) 1).putInt(2 + random.nextInt(6)).putInt(Integer.MAX_VALUE);
        } else {
            double odd = random.nextBoolean() ? Double.NaN : 1e300;
            wkb.put((byte) 1).putInt(1).putDouble(kind == 2 ? odd : 10).putDouble(kind == 2 ? 5 : odd);
        }
        byte[] bytes = Arrays.copyOf(wkb.array(), wkb.position());
        return "X'" + java.util.HexFormat.of().formatHex(bytes) + "'";
    }

    /** Bytes of one page, mostly of its head, where it says what it holds; or whole pages. */
    private byte[] page(byte[] original) {
        byte[] bytes = original.clone();
        int size =
                bytes.length < 100 ? 512 : Math.max(512, ByteBuffer.wrap(bytes).getShort(16) & 0xFFFF);
        int pages = Math.max(1, bytes.length / size);
        int page = random.nextInt(pages);
        int at = page * size;
        int other = random.nextInt(pages) * size;
        switch (random.nextInt(8)) {
            case 0 -> Arrays.fill(bytes, at, Math.min(bytes.length, at + size), (byte) 0);
            case 1 -> System.arraycopy(original, other, bytes, at, Math.min(size, bytes.length - Math.max(at, other)));
            case 2 -> {
                int length = Math.min(size, bytes.length - Math.max(at, other));
                System.arraycopy(original, other, bytes, at, length);
                System.arraycopy(original, at, bytes, other, length);
            }
            case 3, 4 -> spoil(bytes, at + random.nextInt(64));
            case 5 -> spoil(bytes, random.nextInt(100));
            default -> {
                for (int i = 0; i <= random.nextInt(8); i++) {
                    spoil(bytes, at + random.nextInt(size));
                }
            }
        }
        return bytes;
    }

    private void spoil(byte[] bytes, int at) {
        if (at < bytes.length) {
            bytes[at] = (byte)
                    switch (random.nextInt(4)) {
                        case 0 -> random.nextInt(256);
                        case 1 -> bytes[at] ^ (1 << random.nextInt(8));
                        case 2 -> bytes[at] - 1;
                        default -> bytes[at] + 1;
                    };
        }
    }

    /** Cut short, or with more behind. */
    private byte[] ends(byte[] bytes) {
        return random.nextBoolean()
                ? Arrays.copyOf(bytes, random.nextInt(bytes.length + 1))
                : Arrays.copyOf(bytes, bytes.length + random.nextInt(9000));
    }

    private String pick(List<String> of) {
        return of.isEmpty() ? "fid" : of.get(random.nextInt(of.size()));
    }

    private static List<String> names(Statement statement, String sql) throws SQLException {
        List<String> names = new ArrayList<>();
        try (ResultSet rows = statement.executeQuery(sql)) {
            while (rows.next()) {
                names.add(rows.getString(1));
            }
        }
        return names;
    }
}
