package corewright.store;

import corewright.survey.Photo;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Where the bytes of photographs come from while a survey file is made. */
public interface Pictures {
    /** Larger ones are not taken into the file. */
    int LARGEST_BYTES = 32 << 20;

    /** No picture at all. */
    Pictures NONE = name -> null;

    /** The names of all pictures of a survey: photographs, and the logo of the letterhead. */
    static List<String> names(Survey survey) {
        String logo = survey.settings().letterhead().logo();
        Stream<String> photos = survey.photos().stream().map(Photo::file);
        return Stream.concat(photos, logo.isEmpty() ? Stream.empty() : Stream.of(logo))
                .toList();
    }

    /** The bytes of the picture of that name, or null where there are none to be had. */
    byte @Nullable [] content(String name) throws IOException;

    /** The pictures inside a folder; names that lead outside it, and pictures too large, are left. */
    static Pictures in(Path folder) {
        return name -> {
            Path root = folder.toRealPath();
            Path path = root.resolve(name.replace('\\', '/'));
            if (!Files.isRegularFile(path) || !path.toRealPath().startsWith(root)) {
                return null;
            }
            return Files.size(path) <= LARGEST_BYTES ? Files.readAllBytes(path) : null;
        };
    }
}
