package corewright.intake.text;

import corewright.survey.Origin;
import corewright.survey.Subject;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** A text file's characters, whatever it was saved as: UTF-8, UTF-16 either way round, or Latin-1. */
public final class Text {
    /** Half a million readings with all their digits; with what is made of them, 512 MB of memory are enough. */
    public static final long LARGEST_BYTES = 64L << 20;

    /** More control characters than one in this many are noise, not typing. */
    private static final int NOISE = 50;

    private Text() {}

    /** The text with every line ending as {@code \n} and without control characters; null after a complaint. */
    public static @Nullable String read(Path path, String name, long largestBytes, Notes notes) throws IOException {
        byte[] bytes = bytes(path, name, largestBytes, notes);
        if (bytes == null) {
            return null;
        }
        String text = decode(bytes);
        if (text == null || isNoise(text)) {
            notes.complain(new Origin(name, 0), "", "the file is not readable text, expected UTF-8, UTF-16 or Latin-1");
            return null;
        }
        return cleaned(text.replace("\r\n", "\n").replace('\r', '\n').replace('\f', ' '), name, notes);
    }

    /**
     * What a file holds; null after a complaint. A device or a pipe would be waited on for ever and is never opened.
     *
     * @throws IOException where the disk fails
     */
    static byte @Nullable [] bytes(Path path, String name, long largestBytes, Notes notes) throws IOException {
        Origin whole = new Origin(name, 0);
        if (!Files.exists(path)) {
            notes.complain(whole, "", "no such file");
        } else if (!Files.isRegularFile(path)) {
            notes.complain(whole, "", Files.isDirectory(path) ? "is a folder" : "is not a file but a device or a pipe");
        } else if (!Files.isReadable(path)) {
            notes.complain(whole, "", "may not be read");
        } else if (Files.size(path) > largestBytes) {
            notes.complain(whole, "", "the file has " + Files.size(path) + " bytes, expected at most " + largestBytes);
        } else {
            return Files.readAllBytes(path);
        }
        return null;
    }

    private static String cleaned(String text, String name, Notes notes) {
        int first = Clean.firstHarmful(text);
        if (first < 0) {
            return text;
        }
        long line = 1 + text.substring(0, first).chars().filter(c -> c == '\n').count();
        notes.doubt(
                new Origin(name, line),
                Subject.CONTROL_CHARACTERS,
                name + " holds characters that cannot be printed, here the first.",
                "Each is read as \uFFFD.");
        return Clean.of(text);
    }

    private static @Nullable String decode(byte[] bytes) {
        if (starts(bytes, 0xEF, 0xBB, 0xBF)) {
            return strictly(bytes, 3, StandardCharsets.UTF_8);
        }
        if (starts(bytes, 0xFF, 0xFE)) {
            return strictly(bytes, 2, StandardCharsets.UTF_16LE);
        }
        if (starts(bytes, 0xFE, 0xFF)) {
            return strictly(bytes, 2, StandardCharsets.UTF_16BE);
        }
        if (isAscii(bytes)) {
            return new String(bytes, StandardCharsets.US_ASCII);
        }
        Charset wide = zeroesEveryOtherByte(bytes);
        if (wide != null) {
            return strictly(bytes, 0, wide);
        }
        String utf8 = strictly(bytes, 0, StandardCharsets.UTF_8);
        // Windows-1252 is Latin-1 with typographic quotes where Latin-1 has control characters.
        return utf8 != null ? utf8 : strictly(bytes, 0, Charset.forName("windows-1252"));
    }

    private static boolean isAscii(byte[] bytes) {
        for (byte b : bytes) {
            if (b <= 0) {
                return false;
            }
        }
        return true;
    }

    /** UTF-16 without a mark: nearly all characters of a CSV are ASCII, so one byte of each pair is zero. */
    private static @Nullable Charset zeroesEveryOtherByte(byte[] bytes) {
        int pairs = Math.min(bytes.length, 4096) / 2;
        int first = 0;
        int second = 0;
        for (int i = 0; i < pairs; i++) {
            first += bytes[2 * i] == 0 ? 1 : 0;
            second += bytes[2 * i + 1] == 0 ? 1 : 0;
        }
        if (second > 0.8 * pairs && first == 0) {
            return StandardCharsets.UTF_16LE;
        }
        return first > 0.8 * pairs && second == 0 ? StandardCharsets.UTF_16BE : null;
    }

    private static @Nullable String strictly(byte[] bytes, int skip, Charset charset) {
        try {
            return charset.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes, skip, bytes.length - skip))
                    .toString();
        } catch (CharacterCodingException e) {
            return null; // not in this encoding; the caller tries the next or complains
        }
    }

    private static boolean isNoise(String text) {
        long odd = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            odd += Character.isISOControl(c) && c != '\n' && c != '\r' && c != '\t' && c != '\f' ? 1 : 0;
        }
        return text.indexOf('\0') >= 0 || odd * NOISE > text.length();
    }

    private static boolean starts(byte[] bytes, int... mark) {
        if (bytes.length < mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if ((bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }
}
