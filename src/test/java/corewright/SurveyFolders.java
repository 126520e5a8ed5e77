package corewright;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Writes small survey folders for tests. {@link #minimal} is a valid survey without any finding: one rectangular face of
 * 900 x 600 mm, 24 moisture readings (wet at the starboard end), 24 taps (hollow there too) and 3 probes.
 *
 * <p>Every method that changes a file answers the same object, so that a test reads as a list of changes.
 */
public final class SurveyFolders {
    public static final String YAML = """
            format: 1
            name: "Test deck"
            surveyed: 2026-04-02
            units: { length: mm, depth: mm, temperature: C }
            faces:
              - { name: foredeck, tilt_deg: 3, uphill_deg: 180 }
            files: { plan: plan.csv, moisture: moisture.csv, taps: taps.csv, probes: probes.csv }
            meters:
              - { name: A, full_scale: 100, dry: 10, wet: 25 }
            laminates:
              - { name: deck, outer_skin_mm: 3.0, core_mm: 12.5, inner_skin_mm: 2.5, skin: e-glass-polyester, core: balsa-150 }
            """;

    public static final String PLAN = """
            face,kind,name,wkt,metal,load_bearing,keepout,edge,laminate
            foredeck,outline,deck edge,"POLYGON((0 0,900 0,900 600,0 600,0 0))",,,,,deck
            foredeck,fitting,cleat,POINT(450 300),yes,yes,60,,
            """;

    public static final String PROBES = """
            id,x,y,void_depth,core_state
            P1,100,100,0,dry
            P2,480,540,4.5,rotted
            P3,700,200,0,dry
            """;

    private final Path folder;

    private SurveyFolders(Path folder) {
        this.folder = folder;
    }

    /** A valid survey in a new folder {@code survey} below {@code parent}. */
    public static SurveyFolders minimal(Path parent) {
        try {
            return new SurveyFolders(Files.createDirectory(parent.resolve("survey")))
                    .with("survey.yaml", YAML)
                    .with("plan.csv", PLAN)
                    .with("moisture.csv", moisture())
                    .with("taps.csv", taps())
                    .with("probes.csv", PROBES);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public Path path() {
        return folder;
    }

    /** Writes a file, in UTF-8. */
    public SurveyFolders with(String file, String text) {
        return with(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Writes a file, byte for byte. */
    public SurveyFolders with(String file, byte[] bytes) {
        try {
            Path path = folder.resolve(file);
            Files.createDirectories(path.getParent());
            Files.write(path, bytes);
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public SurveyFolders without(String file) {
        try {
            Files.delete(folder.resolve(file));
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Replaces every {@code from} in a file; there must be one. */
    public SurveyFolders replacing(String file, String from, String to) {
        String text = text(file);
        if (!text.contains(from)) {
            throw new IllegalArgumentException(file + " does not hold: " + from);
        }
        return with(file, text.replace(from, to));
    }

    /** Adds lines at the end of a file. */
    public SurveyFolders adding(String file, String lines) {
        return with(file, text(file) + lines);
    }

    public String text(String file) {
        try {
            return Files.readString(folder.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** 24 readings 150 mm apart from (75, 75); 40 or more where y exceeds 450, else dry. */
    private static String moisture() {
        StringBuilder text = new StringBuilder("id,x,y,value,meter\n");
        for (int i = 0; i < 24; i++) {
            int x = 75 + 150 * (i % 6);
            int y = 75 + 150 * (i / 6);
            text.append(String.format(Locale.ROOT, "M%d,%d,%d,%d,A\n", i + 1, x, y, y > 450 ? 40 + i % 5 : 8 + i % 3));
        }
        return text.toString();
    }

    private static String taps() {
        StringBuilder text = new StringBuilder("id,x,y,sound\n");
        for (int i = 0; i < 24; i++) {
            int x = 70 + 150 * (i % 6);
            int y = 70 + 150 * (i / 6);
            text.append(String.format(Locale.ROOT, "T%d,%d,%d,%s\n", i + 1, x, y, y > 450 ? "hollow" : "sound"));
        }
        return text.toString();
    }
}
