package corewright.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** Numbers with their units in the words of the owner's report, the record and the cards, held against summary.json and the tables of the same run. */
public final class PrintedNumbers {
    /** What a unit in the words measures, and where its figures stand. */
    private enum Kind {
        AREA(" m²"),
        VOLUME(" (litres|L)"),
        PLACE(" m"),
        DEPTH(" mm"),
        HOURS(" hours of work"),
        DAYS(" days in the yard"),
        STIFFNESS(" of 100");

        private final Pattern number;

        Kind(String unit) {
            String figure = "(\\d{1,3}(?: \\d{3})*(?:\\.\\d+)?)";
            number = Pattern.compile(
                    "(?<![\\d.,])" + figure + "(?: (?:to|and|of) " + figure + ")?" + unit + "(?![\\w²])");
        }
    }

    /** No figures of the survey: dates, pages, scales, the load of one foot, cases of ten, lengths of the boat as its owner calls her. */
    private static final List<Pattern> EXCEPTED = List.of(
            Pattern.compile("\\d{1,2} \\p{Lu}\\p{Ll}+ \\d{4}"),
            Pattern.compile("page \\d+ of \\d+"),
            Pattern.compile("1 : \\d+"),
            Pattern.compile("\\(1 kN, about 100 kg, on 100 × 100 mm\\)"),
            Pattern.compile("in 8 cases of 10"),
            Pattern.compile("as built = 100"),
            Pattern.compile("this rule is 100 mm long"),
            Pattern.compile("motor boat, 12\\.8 m"),
            Pattern.compile("0 [\\d .]+ (mm|m|litres|m²)"), // the figures of an axis or a comb, from nought
            Pattern.compile("(?m)^[\\d .]+mm$"),
            // a face with its openings; a sum of rows as they are rounded; cuts, which CutOutTest holds
            Pattern.compile("[\\d.]+ m², tilt"),
            Pattern.compile("core of the \\D+[\\d.]+ m²"),
            Pattern.compile("(Cut \\d+ x \\d+ mm|cut out), [\\d.]+ m²"));

    /** Fewer with a unit in a document mean that its words are read wrongly. */
    private static final int LEAST = 10;

    private final Map<Kind, List<Double>> known = new EnumMap<>(Kind.class);
    private final StringBuilder sentences = new StringBuilder();

    private PrintedNumbers(Path out) throws IOException {
        for (Kind kind : Kind.values()) {
            known.put(kind, new ArrayList<>());
        }
        JsonNode summary =
                new ObjectMapper().readTree(out.resolve("summary.json").toFile());
        collect("", summary);
        double deck = 0;
        double damaged = 0;
        for (JsonNode face : summary.get("faces")) {
            double area = face.get("deck_area_m2").asDouble();
            deck += area;
            damaged += area - face.get("area_m2").get("sound").asDouble();
        }
        add(Kind.AREA, deck);
        add(Kind.AREA, damaged);
        for (String table : List.of("holes", "options", "next-readings", "findings", "foot-load")) {
            try (CSVParser csv = CSVParser.parse(
                    Files.newBufferedReader(out.resolve(table + ".csv")),
                    CSVFormat.RFC4180
                            .builder()
                            .setHeader()
                            .setSkipHeaderRecord(true)
                            .get())) {
                for (CSVRecord row : csv) {
                    row.toMap().forEach(this::collect);
                }
            }
        }
    }

    private void add(Kind kind, double value) {
        Objects.requireNonNull(known.get(kind)).add(Math.abs(value));
    }

    private void collect(String path, JsonNode node) {
        if (node.isNumber()) {
            collect(path, node.asText());
        } else if (node.isTextual()) {
            sentences.append(node.asText()).append('\n');
        } else if (node.isObject()) {
            node.properties().forEach(e -> collect(path + "." + e.getKey(), e.getValue()));
        } else {
            node.forEach(e -> collect(path, e));
        }
    }

    private void collect(String key, String text) {
        double value;
        try {
            value = Double.parseDouble(text);
        } catch (NumberFormatException e) {
            sentences.append(text).append('\n');
            return;
        }
        if (key.contains("_m2")) {
            add(Kind.AREA, value);
        } else if (key.contains("volume_l")) {
            add(Kind.VOLUME, value);
        } else if (key.contains("hours")) {
            add(Kind.HOURS, value);
        } else if (key.contains("days")) {
            add(Kind.DAYS, value);
        } else if (key.contains("of_as_built") || key.contains("stiffness_p") || key.endsWith(".ratio")) {
            add(Kind.STIFFNESS, 100 * value);
        } else if (key.endsWith("_mm") || key.contains("_mm.")) {
            add(Kind.DEPTH, value);
        } else if (key.matches("(.*\\.)?[xy]")) {
            add(Kind.PLACE, value / 1000);
            add(Kind.DEPTH, value);
        }
    }

    /** Every number with a unit that no figure of the run rounds to, and every row of the tables that is not there as it should be. */
    public static List<String> unknown(Path out) throws IOException {
        PrintedNumbers numbers = new PrintedNumbers(out);
        String text = words(out.resolve("owner-report.pdf"));
        List<String> unknown = new ArrayList<>(numbers.check(text, EnumSet.allOf(Kind.class)));
        unknown.addAll(numbers.check(
                words(out.resolve("survey-record.pdf")), EnumSet.of(Kind.AREA, Kind.VOLUME, Kind.STIFFNESS)));
        unknown.addAll(numbers.check(words(out.resolve("work-cards.pdf")), EnumSet.of(Kind.AREA, Kind.VOLUME)));
        unknown.addAll(choices(out, text));
        unknown.addAll(regions(out, text));
        return unknown;
    }

    private static String words(Path file) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            return new PDFTextStripper().getText(pdf).replace('\u2009', ' ').replace('\u00a0', ' ');
        }
    }

    private List<String> check(String text, Set<Kind> kinds) {
        String plain = text;
        for (Pattern excepted : EXCEPTED) {
            plain = excepted.matcher(plain).replaceAll("");
        }
        plain = plain.replaceAll("\\s+", " ");
        List<String> unknown = new ArrayList<>();
        int checked = 0;
        for (Kind kind : kinds) {
            Matcher m = kind.number.matcher(plain);
            while (m.find()) {
                for (String number : new String[] {m.group(1), m.group(2)}) {
                    if (number != null) {
                        checked++;
                        boolean told = knows(kind, number) || sentences.indexOf(m.group()) >= 0;
                        if (!told) {
                            unknown.add(number + " in \"" + around(plain, m.start(), m.end()) + "\"");
                        }
                    }
                }
            }
        }
        if (checked < LEAST) {
            unknown.add("only " + checked + " numbers with units were found: the words are read wrongly");
        }
        return unknown;
    }

    private static String around(String text, int from, int to) {
        return text.substring(Math.max(0, from - 30), Math.min(text.length(), to + 10));
    }

    private boolean knows(Kind kind, String printed) {
        String digits = printed.replace(" ", "");
        double number = Double.parseDouble(digits);
        int point = digits.indexOf('.');
        double half = 0.5 * Math.pow(10, point < 0 ? 0 : point + 1 - digits.length()) + 1e-9;
        boolean begun = kind == Kind.DAYS; // one begun counts as one
        return Objects.requireNonNull(known.get(kind)).stream()
                .anyMatch(v -> begun ? Math.ceil(v - 1e-9) == number : Math.abs(v - number) <= half);
    }

    /** The table of choices: money, hours, days, weight and stiffness, from options.csv. */
    private static List<String> choices(Path out, String text) throws IOException {
        String words = text.replaceAll("\\s+", " ");
        List<String> wrong = new ArrayList<>();
        try (CSVParser csv = CSVParser.parse(
                Files.newBufferedReader(out.resolve("options.csv")),
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get())) {
            for (CSVRecord row : csv) {
                if (!row.get("region").equals("deck") || row.get("method").equals("least-cost")) {
                    continue;
                }
                String title = row.get("why").substring(0, row.get("why").indexOf(':'));
                double high = Double.parseDouble(row.get("cost_high"));
                double step = high < 500 ? 10 : 100;
                String money = grouped(row, "cost_low", step) + " to " + grouped(row, "cost_high", step);
                String hours = whole(row, "hours_low") + " to " + whole(row, "hours_high");
                Pattern expected = Pattern.compile(Pattern.quote(money) + " " + hours + " ");
                int from = words.indexOf("What can be done Choice");
                int at = words.indexOf(title, Math.max(0, from));
                int end = Math.min(words.length(), at + 420);
                if (from < 0
                        || at < 0
                        || !expected.matcher(words.substring(at, end)).find()) {
                    wrong.add("no row \"" + title + "\" with \"" + expected + "\"");
                }
                double kg = Double.parseDouble(row.get("weight_kg"));
                String weight = Math.abs(kg) < 0.05 ? " 0" : String.format(Locale.ROOT, "%+.1f", kg);
                if (at >= 0 && !words.substring(at, end).contains(weight.replace('-', '–'))) {
                    wrong.add("no weight " + weight + " of " + title);
                }
            }
        }
        return wrong;
    }

    private static String grouped(CSVRecord row, String column, double step) {
        long value = Math.round(Math.round(Double.parseDouble(row.get(column)) / step) * step);
        return String.format(Locale.ROOT, "%,d", value).replace(',', ' ');
    }

    /** Either neighbour of a half: the table has one decimal of a figure that the page rounds whole. */
    private static String whole(CSVRecord row, String column) {
        double value = Double.parseDouble(row.get(column));
        long down = Math.round(value - 0.05);
        long up = Math.round(value + 0.05);
        return down == up ? String.valueOf(up) : "(" + down + "|" + up + ")";
    }

    /** The tables of regions: likely and possible area, from summary.json. */
    private static List<String> regions(Path out, String text) throws IOException {
        String words = text.replaceAll("\\s+", " ");
        List<String> wrong = new ArrayList<>();
        JsonNode summary =
                new ObjectMapper().readTree(out.resolve("summary.json").toFile());
        for (JsonNode region : summary.get("regions")) {
            String areas = String.format(
                    Locale.ROOT,
                    "%.2f to %.2f",
                    region.get("area_m2").asDouble(),
                    region.get("possible_area_m2").asDouble());
            Pattern row = Pattern.compile(
                    " " + region.get("id").asText() + " [^0-9]*(R\\d+ )?[^0-9]*" + areas.replace(".", "\\."));
            if (!row.matcher(words).find()) {
                wrong.add("no row " + region.get("id").asText() + " with " + areas);
            }
        }
        return wrong;
    }
}
