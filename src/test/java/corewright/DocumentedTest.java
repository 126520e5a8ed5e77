package corewright;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.intake.yaml.Overrides;
import corewright.survey.settings.Settings;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The pages under docs name every setting with its default and every table of the survey file. */
class DocumentedTest {
    private static final Path SETTINGS = Path.of("docs/settings.md");

    @Test
    void everySettingHasItsRow() throws Exception {
        String page = Files.readString(SETTINGS);
        int rows = 0;
        for (RecordComponent section : Settings.class.getRecordComponents()) {
            if (section.getType() == List.class) {
                continue; // resins are materials, with a file of their own
            }
            String name = section.getName().equals("terms") ? "units" : Overrides.snake(section.getName());
            String part = part(page, name);
            Record values = (Record) section.getAccessor().invoke(Settings.defaults());
            for (RecordComponent each : values.getClass().getRecordComponents()) {
                String value = shown(each.getAccessor().invoke(values));
                assertThat(part).contains("| `" + Overrides.snake(each.getName()) + "` | " + value + " | ");
                rows++;
            }
        }
        assertThat(rows).isGreaterThan(45);
    }

    /** No row speaks of a key that is not there. */
    @Test
    void noRowIsOfAnUnknownKey() throws IOException {
        List<String> known = Stream.concat(
                        Stream.of("length", "depth", "temperature"),
                        Stream.of(Settings.class.getRecordComponents())
                                .filter(c -> c.getType() != List.class)
                                .flatMap(c -> Stream.of(c.getType().getRecordComponents()))
                                .map(c -> Overrides.snake(c.getName())))
                .toList();
        Matcher row = Pattern.compile("(?m)^\\| `([a-z0-9_]+)` \\|").matcher(Files.readString(SETTINGS));
        while (row.find()) {
            assertThat(known).contains(row.group(1));
        }
    }

    private static String part(String page, String section) {
        int from = page.indexOf("\n## " + section + "\n");
        assertThat(from).as(section).isPositive();
        int to = page.indexOf("\n## ", from + 4);
        return page.substring(from, to < 0 ? page.length() : to);
    }

    private static String shown(Object value) {
        if (value instanceof Enum<?> word) {
            return word.name().toLowerCase(Locale.ROOT);
        }
        if (value instanceof Double number) {
            return number == Math.rint(number) ? String.valueOf(number.longValue()) : String.valueOf(number);
        }
        return String.valueOf(value);
    }

    @Test
    void everyTableOfTheSurveyFileIsNamed() throws IOException {
        String page = Files.readString(Path.of("docs/survey-file.md"));
        int tables = 0;
        try (Stream<Path> scripts = Files.list(Path.of("src/main/resources/corewright/store"))) {
            for (Path script :
                    scripts.filter(p -> p.toString().endsWith(".sql")).toList()) {
                Matcher table = Pattern.compile("CREATE TABLE (?!gpkg_)(\\w+)").matcher(Files.readString(script));
                while (table.find()) {
                    assertThat(page).contains("`" + table.group(1) + "`");
                    tables++;
                }
            }
        }
        assertThat(tables).isGreaterThan(20);
    }
}
