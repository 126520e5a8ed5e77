package corewright.mutation;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/** Changes an input at random: bytes, lines, cells, YAML nodes, whole files. The same seed gives the same change. */
final class Mutator {
    /** Pieces that have upset readers of these formats. */
    private static final List<String> NASTY = List.of(
            "\"",
            "'",
            ",",
            ";",
            "\t",
            "\n",
            "\r",
            "\0",
            "\uFEFF",
            "&a ",
            "*a",
            "[",
            "]",
            "{",
            "}",
            "!!map ",
            "? ",
            "- ",
            ": ",
            "#",
            "|",
            ">",
            "%",
            "@",
            "`",
            "~",
            "null",
            "NaN",
            "-inf",
            "-",
            "1e308",
            "-1e308",
            "1e-320",
            "0x1p3",
            "((((",
            "))))",
            " EMPTY",
            "POINT",
            "POINT(1e308 -1e308)",
            "POINT(NaN 1)",
            "LINESTRING(0 0,0 0)",
            "POLYGON((0 0,1 1,0 0))",
            "GEOMETRYCOLLECTION(",
            ">100",
            "100+",
            "+",
            "=1+1",
            "@SUM(A1)",
            "3' 4 1/2\"",
            "1/0\"",
            "\u00BD",
            "\u2028",
            "\u202E",
            "\u0007",
            "\u001B[2J",
            "\uD83D\uDE00",
            "\uFFFF",
            "../",
            "../../etc/passwd",
            "/dev/zero",
            "C:\\x",
            "file:///etc/hosts",
            ".",
            "face",
            "x",
            "9".repeat(400),
            "a".repeat(5000),
            "<<: *a",
            "...",
            "---",
            "---\n",
            "&a [*a]",
            "\"\\uD800\"",
            "\"\\x07\"",
            "[".repeat(200),
            "{a: ".repeat(40),
            "SECTION",
            "ENTITIES",
            "1e999",
            "<!DOCTYPE x>",
            "&e;",
            "-0",
            "1,2,3",
            "true",
            "2026-02-30",
            "foredeck",
            "nodata_value",
            "ncols 2000000000",
            "-9999",
            "1_000",
            "0b1");

    /** Longer than anybody writes; now and then. */
    private static final List<String> ENORMOUS = List.of(
            " ".repeat(100_000),
            ",".repeat(100_000),
            "1".repeat(100_000),
            "a".repeat(90_000),
            "\0".repeat(90_000),
            "GEOMETRYCOLLECTION(".repeat(20_000),
            "((".repeat(20_000),
            "[".repeat(20_000),
            "<g>".repeat(20_000),
            "translate(1".repeat(9_000),
            "0 0,".repeat(60_000));

    private final Random random;
    private boolean takesAway;

    Mutator(long seed) {
        this.random = new Random(seed);
    }

    /** One change of the files, or a few of the files. */
    Map<String, byte[]> mutated(Map<String, byte[]> original) {
        Map<String, byte[]> files = new TreeMap<>(original);
        int times = random.nextInt(4) > 0 ? 1 : 2 + random.nextInt(3);
        for (int i = 0; i < times && !files.isEmpty(); i++) {
            List<String> names = List.copyOf(files.keySet());
            String name = names.get(random.nextInt(names.size()));
            if (names.size() > 1 && random.nextInt(12) == 0) {
                wholeFile(files, name, names.get(random.nextInt(names.size())));
            } else {
                byte[] bytes = files.getOrDefault(name, new byte[0]);
                byte[] changed = content(bytes, name);
                takesAway |= lines(changed) < lines(bytes);
                files.put(name, changed);
            }
        }
        return files;
    }

    /** Whether the change may have taken a whole row or thing away, so that nobody can know of it. */
    boolean takesAway() {
        return takesAway;
    }

    private void wholeFile(Map<String, byte[]> files, String name, String other) {
        byte[] bytes = files.getOrDefault(name, new byte[0]);
        byte[] others = files.getOrDefault(other, new byte[0]);
        switch (random.nextInt(6)) {
            case 0 -> files.remove(name);
            case 1 -> {
                files.remove(name);
                files.put(name + (random.nextBoolean() ? ".txt" : "\u00E9"), bytes);
            }
            case 2 -> {
                files.put(name, others);
                files.put(other, bytes);
            }
            case 3 -> files.put(name, new byte[0]); // an empty table is no table
            case 4 -> files.put(name, joined(bytes, bytes.length, others, bytes.length));
            default -> files.put(name, noise());
        }
    }

    /** Lines with something in them. */
    private static long lines(byte[] bytes) {
        long lines = 0;
        boolean empty = true;
        for (byte b : bytes) {
            if (b == '\n' || b == '\r') {
                empty = true;
            } else if (empty && b > ' ') {
                lines++;
                empty = false;
            }
        }
        return lines;
    }

    private byte[] noise() {
        byte[] noise = new byte[random.nextInt(4000)];
        random.nextBytes(noise);
        return noise;
    }

    private byte[] content(byte[] bytes, String name) {
        return switch (random.nextInt(name.endsWith(".yaml") ? 12 : 10)) {
            case 0, 1, 2 -> bytes(bytes);
            case 3, 4 -> lines(text(bytes)).getBytes(StandardCharsets.UTF_8);
            case 5 -> columns(text(bytes)).getBytes(StandardCharsets.UTF_8);
            case 6, 7, 8 -> cells(text(bytes)).getBytes(StandardCharsets.UTF_8);
            case 9 -> rarely(bytes);
            default -> yaml(text(bytes)).getBytes(StandardCharsets.UTF_8);
        };
    }

    private byte[] bytes(byte[] bytes) {
        int at = random.nextInt(bytes.length + 1);
        int end = Math.min(bytes.length, at + random.nextInt(30));
        return switch (random.nextInt(6)) {
            case 0 -> Arrays.copyOf(bytes, at);
            case 1 -> joined(bytes, at, new byte[0], end);
            case 2 -> joined(bytes, at, Arrays.copyOfRange(bytes, at, end), at);
            case 3 -> joined(bytes, at, new byte[] {(byte) random.nextInt(256)}, Math.min(bytes.length, at + 1));
            case 4 -> joined(bytes, at, bytes, at);
            default -> joined(bytes, at, nasty().getBytes(StandardCharsets.UTF_8), random.nextBoolean() ? at : end);
        };
    }

    private String lines(String text) {
        List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
        int at = random.nextInt(lines.size());
        int other = random.nextInt(lines.size());
        switch (random.nextInt(7)) {
            case 0 -> lines.remove(at);
            case 1 -> lines.add(at, lines.get(other));
            case 2 -> Collections.swap(lines, at, other);
            case 3 -> Collections.shuffle(lines, random);
            case 4 -> lines.addAll(at, Collections.nCopies(1 + random.nextInt(500), lines.get(at)));
            case 5 -> {
                lines.set(at, nasty());
                takesAway = true;
            }
            default -> lines.set(at, lines.get(at).replace(' ', '\t'));
        }
        return String.join("\n", lines);
    }

    private String cells(String text) {
        List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
        int at = random.nextInt(lines.size());
        String separator = lines.get(at).indexOf(';') >= 0 ? ";" : lines.get(at).indexOf(',') >= 0 ? "," : " ";
        List<String> cells = new ArrayList<>(List.of(lines.get(at).split(separator, -1)));
        int cell = random.nextInt(cells.size());
        switch (random.nextInt(6)) {
            case 0, 1, 2 -> cells.set(cell, nasty());
            case 3 -> cells.remove(cell);
            case 4 -> cells.add(cell, cells.get(random.nextInt(cells.size())));
            default -> Collections.swap(cells, cell, random.nextInt(cells.size()));
        }
        lines.set(at, String.join(separator, cells));
        return String.join("\n", lines);
    }

    /** A column out of every line, emptied, doubled, or changed for another; without regard to quotes. */
    private String columns(String text) {
        String separator = text.indexOf(';') >= 0 ? ";" : ",";
        int column = random.nextInt(6);
        int other = random.nextInt(6);
        int kind = random.nextInt(4);
        List<String> lines = new ArrayList<>();
        for (String line : text.split("\n", -1)) {
            List<String> cells = new ArrayList<>(List.of(line.split(separator, -1)));
            if (Math.max(column, other) < cells.size()) {
                switch (kind) {
                    case 0 -> cells.remove(column);
                    case 1 -> cells.set(column, "");
                    case 2 -> cells.add(other, cells.get(column));
                    default -> Collections.swap(cells, column, other);
                }
            }
            lines.add(String.join(separator, cells));
        }
        return String.join("\n", lines);
    }

    private String yaml(String text) {
        List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
        int at = random.nextInt(lines.size());
        String line = lines.get(at);
        int colon = line.indexOf(": ", random.nextInt(line.length() + 1));
        String head = colon < 0 ? line : line.substring(0, colon + 2);
        lines.set(
                at,
                switch (random.nextInt(7)) {
                    case 0 -> head + nasty();
                    case 1 -> "  " + line;
                    case 2 -> line.strip();
                    case 3 -> head + "[" + line.substring(head.length()) + "]";
                    case 4 -> head + "{ name: " + line.substring(head.length()) + " }";
                    case 5 -> head + "&a " + line.substring(head.length()) + "\nfaces: *a";
                    default -> line.replaceFirst("[0-9.]+", String.valueOf(random.nextGaussian() * 1e4));
                });
        return String.join("\n", lines);
    }

    /** Encodings, and now and then a file of many megabytes. */
    private byte[] rarely(byte[] bytes) {
        return switch (random.nextInt(8)) {
            case 0 -> text(bytes).getBytes(StandardCharsets.UTF_16);
            case 1 -> text(bytes).getBytes(StandardCharsets.UTF_16LE);
            case 2 -> ("\uFEFF\uFEFF" + text(bytes)).getBytes(StandardCharsets.UTF_8);
            case 3 -> text(bytes).replace("\n", "\r").getBytes(StandardCharsets.ISO_8859_1);
            case 4 -> text(bytes).replace(',', ';').replace('.', ',').getBytes(StandardCharsets.UTF_8);
            default -> random.nextInt(10) == 0 ? huge(bytes) : bytes(bytes);
        };
    }

    /** The last line or the whole again and again, up to a random size. */
    private byte[] huge(byte[] bytes) {
        String text = text(bytes);
        String last = text.substring(text.stripTrailing().lastIndexOf('\n') + 1);
        String unit = random.nextBoolean() && !last.isEmpty() ? last : text + "\n";
        int size = 1 << (16 + random.nextInt(10));
        return (text + unit.repeat(Math.max(1, size / unit.length()))).getBytes(StandardCharsets.UTF_8);
    }

    private String nasty() {
        return random.nextInt(60) == 0
                ? ENORMOUS.get(random.nextInt(ENORMOUS.size()))
                : NASTY.get(random.nextInt(NASTY.size()));
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    /** The bytes before {@code at}, then {@code middle}, then those from {@code from} on. */
    private static byte[] joined(byte[] bytes, int at, byte[] middle, int from) {
        byte[] joined = Arrays.copyOf(bytes, at + middle.length + bytes.length - from);
        System.arraycopy(middle, 0, joined, at, middle.length);
        System.arraycopy(bytes, from, joined, at + middle.length, bytes.length - from);
        return joined;
    }
}
