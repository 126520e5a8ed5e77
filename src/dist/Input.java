import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipFile;

/** What the packager takes in: the program's jar, and the names of the classes that an archive made on the target machine shall hold. */
final class Input {
    private static final List<String> ARCHIVED = List.of(
            "corewright/",
            "javafx/",
            "com/sun/javafx/",
            "com/sun/glass/",
            "com/sun/prism/",
            "com/sun/scenario/",
            "com/sun/marlin/",
            "org/locationtech/jts/",
            "org/apache/commons/csv/",
            "org/sqlite/",
            "org/yaml/snakeyaml/",
            "com/fasterxml/jackson/",
            "picocli/");

    public static void main(String[] args) throws IOException {
        Path dist = Path.of("target/dist");
        if (Files.exists(dist)) {
            try (Stream<Path> old = Files.walk(dist)) {
                for (Path path : old.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
        Path input = Files.createDirectories(dist.resolve("input"));
        Path jar = input.resolve("corewright.jar");
        Files.copy(Path.of("target/corewright.jar"), jar, StandardCopyOption.REPLACE_EXISTING);
        Path ofTheRuntime = Path.of(System.getProperty("java.home"), "lib", "classlist");
        try (ZipFile zip = new ZipFile(jar.toFile());
                Stream<String> runtime = Files.lines(ofTheRuntime)) {
            Stream<String> ours = zip.stream()
                    .map(entry -> entry.getName())
                    .filter(name -> name.endsWith(".class") && ARCHIVED.stream().anyMatch(name::startsWith))
                    .map(name -> name.substring(0, name.length() - ".class".length()));
            Files.write(input.resolve("classes.lst"), Stream.concat(runtime, ours).collect(Collectors.toList()));
        }
    }
}
