package corewright.desktop.photos;

import corewright.desktop.state.EditLog;
import corewright.intake.Picture;
import corewright.survey.Edit;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Photo;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Iterator;
import java.util.Optional;
import java.util.function.Function;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.jspecify.annotations.Nullable;

/** Photographs pinned to places: taken in within limits, found again by touch, looked at small. */
public final class Photos {
    private Photos() {}

    /** The bytes of a PNG or JPEG; refused with a sentence where it is neither or too large to be decoded. */
    public static byte[] read(Path file) throws IOException {
        String problem = Picture.problem(file);
        if (!problem.isEmpty()) {
            throw new IOException(file.getFileName() + " " + problem);
        }
        return Files.readAllBytes(file);
    }

    /**
     * Keeps the bytes with the survey and pins them to a place; a name already in use gets a number. So does one that was
     * in use for another picture: taking that away may be undone.
     */
    public static Function<Survey, @Nullable Edit> pin(
            EditLog log, Path file, byte[] content, Spot spot, String caption) {
        return survey -> {
            try {
                String name = freeName(survey, log, String.valueOf(file.getFileName()), content);
                log.putPicture(name, content);
                return Edit.add(survey, Part.PHOTOS, new Photo(new Origin("window", 0), name, spot, caption.strip()));
            } catch (IOException e) {
                throw new UncheckedIOException(e.getMessage(), e);
            }
        };
    }

    private static String freeName(Survey survey, EditLog log, String file, byte[] content) throws IOException {
        int dot = file.lastIndexOf('.');
        String stem = "photos/" + (dot < 0 ? file : file.substring(0, dot));
        String ending = dot < 0 ? "" : file.substring(dot);
        String name = stem + ending;
        for (int n = 2; taken(survey, log, name, content); n++) {
            name = stem + "-" + n + ending;
        }
        return name;
    }

    private static boolean taken(Survey survey, EditLog log, String name, byte[] content) throws IOException {
        byte[] kept = log.picture(name);
        return survey.photos().stream().anyMatch(p -> p.file().equals(name))
                || (kept != null && !Arrays.equals(kept, content));
    }

    /** Other words for a photograph. */
    public static Function<Survey, @Nullable Edit> caption(Photo photo, String words) {
        return survey -> Edit.replace(
                survey, Part.PHOTOS, photo, new Photo(photo.origin(), photo.file(), photo.spot(), words.strip()));
    }

    public static Function<Survey, @Nullable Edit> remove(Photo photo) {
        return survey -> Edit.remove(survey, Part.PHOTOS, photo);
    }

    /** The photograph pinned nearest to a place, within reach. */
    public static Optional<Photo> near(Survey survey, String face, double xMm, double yMm, double reachMm) {
        return survey.photos().stream()
                .filter(p -> p.spot().face().equals(face) && distance(p, xMm, yMm) <= reachMm)
                .min(Comparator.comparingDouble(p -> distance(p, xMm, yMm)));
    }

    private static double distance(Photo photo, double xMm, double yMm) {
        return Math.hypot(photo.spot().xMm() - xMm, photo.spot().yMm() - yMm);
    }

    /**
     * A photograph decoded to no more than about twice a width: lines and columns are left out while it is read, so that
     * the full picture never stands in memory.
     */
    public static BufferedImage small(byte[] content, int width) throws IOException {
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(content))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                throw new IOException("The photograph is not a PNG or JPEG picture.");
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true, true);
                ImageReadParam every = reader.getDefaultReadParam();
                int step = Math.max(1, reader.getWidth(0) / width);
                every.setSourceSubsampling(step, step, 0, 0);
                return reader.read(0, every);
            } finally {
                reader.dispose();
            }
        }
    }
}
