package corewright.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The list of what a run wrote into a folder, name and SHA-256 of each file, as {@code sha256sum --check} reads it. A
 * file is a run's own if the list names it and it is still what the list says; all else is somebody's.
 */
final class OutputList {
    static final String NAME = "outputs.sha256";

    private static final Pattern LINE = Pattern.compile("([0-9a-f]{64})  ([^\\\\]{1,1000})");
    private static final long LARGEST_BYTES = 1 << 20;

    private final Map<String, String> hashes;

    private OutputList(Map<String, String> hashes) {
        this.hashes = hashes;
    }

    /** Writes the list of everything that is in a folder now. */
    static void write(Path folder) throws IOException {
        StringBuilder list = new StringBuilder();
        for (Path file : files(folder)) {
            String name = name(folder, file);
            if (!name.equals(NAME)) {
                list.append(hash(file)).append("  ").append(name).append('\n');
            }
        }
        Files.writeString(folder.resolve(NAME), list, StandardCharsets.UTF_8);
    }

    /** Whether a folder has such a list. */
    static boolean isIn(Path folder) {
        return Files.isRegularFile(folder.resolve(NAME), LinkOption.NOFOLLOW_LINKS);
    }

    /** The list of a folder; empty where there is none, or none of this form. */
    static OutputList read(Path folder) throws IOException {
        Map<String, String> hashes = new TreeMap<>();
        Path file = folder.resolve(NAME);
        if (isIn(folder) && Files.size(file) <= LARGEST_BYTES) {
            String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
            for (String line : text.split("\n", -1)) {
                Matcher matcher = LINE.matcher(line);
                if (matcher.matches()) {
                    hashes.put(matcher.group(2), matcher.group(1));
                }
            }
        }
        return new OutputList(hashes);
    }

    /** Files of a folder, by their place in it, that are not the run's own: not on the list, or changed since. */
    List<String> strangers(Path folder) throws IOException {
        List<String> strangers = new ArrayList<>();
        for (Path file : files(folder)) {
            String name = name(folder, file);
            String hash = hashes.get(name);
            boolean regular = Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
            boolean own = regular && (name.equals(NAME) || (hash != null && hash.equals(hash(file))));
            if (!own) {
                strangers.add(name);
            }
        }
        return strangers;
    }

    /** Everything but folders; links are not followed. */
    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(p -> !Files.isDirectory(p, LinkOption.NOFOLLOW_LINKS))
                    .sorted()
                    .toList();
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static String name(Path folder, Path file) {
        return folder.relativize(file).toString().replace('\\', '/');
    }

    private static String hash(Path file) throws IOException {
        try {
            MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
            try (InputStream in = new DigestInputStream(Files.newInputStream(file), sha256)) {
                in.transferTo(OutputStream.nullOutputStream());
            }
            return HexFormat.of().formatHex(sha256.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
