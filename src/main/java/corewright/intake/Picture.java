package corewright.intake;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Whether a picture can be shown, from its header alone: a small file may claim a size that fills the memory when decoded.
 *
 * <p>PNG: ISO/IEC 15948, chapter 11.2.2 (IHDR comes first). JPEG: ISO/IEC 10918-1, annex B (the frame header holds the size).
 */
public final class Picture {
    /** A camera of 60 million pixels; decoded at four bytes each, 256 MB. */
    private static final long MOST_PIXELS = 64_000_000;

    private static final long LARGEST_BYTES = 64L << 20;
    private static final long PNG = 0x89504E470D0A1A0AL;
    private static final int IHDR = 0x49484452;
    private static final String OTHER = "is not a PNG or JPEG picture";

    private Picture() {}

    /** Why a file cannot be shown, to follow its name; empty where it can. */
    public static String problem(Path file) throws IOException {
        if (Files.size(file) > LARGEST_BYTES) {
            return "has " + Files.size(file) + " bytes, expected at most " + LARGEST_BYTES;
        }
        try (DataInputStream in = new DataInputStream(new BufferedInputStream(Files.newInputStream(file)))) {
            long[] size = size(in);
            if (size[0] < 1 || size[1] < 1) {
                return OTHER;
            }
            return size[0] > MOST_PIXELS / size[1]
                    ? "has " + size[0] + " x " + size[1] + " pixels, expected at most " + MOST_PIXELS
                    : "";
        } catch (EOFException e) {
            return OTHER;
        }
    }

    /** Width and height, 0 where the file is neither. */
    private static long[] size(DataInputStream in) throws IOException {
        int first = in.readUnsignedShort();
        if (first == 0xFFD8) {
            return jpeg(in);
        }
        boolean png = first == (int) (PNG >>> 48)
                && in.readUnsignedShort() == (int) (PNG >>> 32 & 0xFFFF)
                && in.readInt() == (int) PNG
                && in.readInt() == 13
                && in.readInt() == IHDR;
        return png ? new long[] {in.readInt() & 0xFFFFFFFFL, in.readInt() & 0xFFFFFFFFL} : new long[2];
    }

    /** Skips segments up to the frame header, SOF0 to SOF15 but for DHT, JPG and DAC, which share the range. */
    private static long[] jpeg(DataInputStream in) throws IOException {
        while (in.readUnsignedByte() == 0xFF) {
            int marker = in.readUnsignedByte();
            while (marker == 0xFF) {
                marker = in.readUnsignedByte(); // fill bytes
            }
            int length = in.readUnsignedShort();
            if (marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC) {
                in.readUnsignedByte(); // bits a sample
                long height = in.readUnsignedShort();
                return new long[] {in.readUnsignedShort(), height};
            }
            if (length < 2 || marker == 0xD9 || marker == 0xDA) {
                break;
            }
            in.skipNBytes(length - 2L);
        }
        return new long[2];
    }
}
