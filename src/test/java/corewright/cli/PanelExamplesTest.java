package corewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every example of docs/stiffness.md is a file that the command takes. */
class PanelExamplesTest {
    private static final Pattern EXAMPLE = Pattern.compile("```yaml\\n(.*?)```", Pattern.DOTALL);

    static List<String> examples() throws IOException {
        String page = Files.readString(Path.of("docs/stiffness.md"));
        return EXAMPLE.matcher(page).results().map(m -> m.group(1)).toList();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void runsAndCarriesWhatIsPutOnIt(String yaml, @TempDir Path dir) throws IOException {
        Path file = Files.writeString(dir.resolve("panel.yaml"), yaml);
        Path out = dir.resolve("f.json");
        StringWriter err = new StringWriter();

        int status = Corewright.run(
                new PrintWriter(new StringWriter()),
                new PrintWriter(err),
                "panel",
                file.toString(),
                "--out",
                out.toString());

        assertThat(err.toString()).isEmpty();
        assertThat(status).isZero();
        JsonNode root = new ObjectMapper().readTree(Files.readString(out));
        assertThat(root.get("deflections"))
                .isNotEmpty()
                .allSatisfy(d -> assertThat(d.get("outer_mm").asDouble()).isPositive());
        assertThat(root.has("large_deflection")).isEqualTo(yaml.contains("void_depth_mm: 6.25"));
        assertThat(root.get("margins")).hasSize(yaml.contains("bond:") ? 8 : yaml.contains("void_depth") ? 3 : 2);
    }
}
