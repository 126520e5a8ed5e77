package corewright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jspecify.annotations.NullUnmarked;

/**
 * What the papers of a run say of its injections against one another: holes, cups, the day, the summary and the cards. Says every
 * contradiction, none wanted. Run: {@code mvn -o -q test-compile exec:java -Dexec.classpathScope=test
 * -Dexec.mainClass=corewright.bench.FillPapers -Dexec.args="target/quillwort"}.
 */
@NullUnmarked // a table without a column that is asked for is a fault
public final class FillPapers {
    /** Figures of cups are printed to tenths of a gram, minutes to hundredths. */
    private static final double GRAM = 0.1001;

    private static final double MINUTE = 0.0101;
    private static final double APART_MM = 60;
    private static final Set<String> SIGNED = Set.of("x", "y");
    private static final Pattern NO_NUMBER = Pattern.compile("NaN|Infinity|∞|null");

    private final Path folder;
    private final List<String> faults = new ArrayList<>();
    private final List<Map<String, String>> holes;
    private final List<Map<String, String>> cups;
    private final List<Map<String, String>> bars;
    private final String summary;

    private FillPapers(Path folder) throws IOException {
        this.folder = folder;
        holes = table("holes.csv");
        cups = table("batches.csv");
        bars = table("schedule.csv");
        summary = Files.readString(folder.resolve("summary.json"));
    }

    /** @param args folders that runs wrote */
    public static void main(String[] args) throws IOException {
        for (String arg : args) {
            List<String> faults = of(Path.of(arg));
            System.out.println(arg + ": " + faults.size() + " faults");
            faults.forEach(f -> System.out.println("  " + f));
        }
    }

    /**
     * Every fault in a sentence.
     *
     * @param folder that a run wrote
     */
    static List<String> of(Path folder) throws IOException {
        FillPapers papers = new FillPapers(folder);
        papers.numbers();
        papers.grams();
        papers.cups();
        papers.hands();
        papers.pouring();
        papers.apart();
        return papers.faults;
    }

    private List<Map<String, String>> table(String name) throws IOException {
        List<String> lines = Files.readAllLines(folder.resolve(name));
        String[] head = lines.get(0).split(",");
        List<Map<String, String>> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < head.length; i++) {
                row.put(head[i], cells[i]);
            }
            rows.add(row);
        }
        return rows;
    }

    private static double number(Map<String, String> row, String column) {
        String cell = row.get(column);
        return cell.isEmpty() ? 0 : Double.parseDouble(cell);
    }

    private void say(String fault, Object... args) {
        faults.add(String.format(Locale.ROOT, fault, args));
    }

    /** Nothing negative, nothing that is no number. */
    private void numbers() throws IOException {
        for (List<Map<String, String>> rows : List.of(holes, cups, bars, table("cups.csv"), table("buying-list.csv"))) {
            for (Map<String, String> row : rows) {
                row.forEach((column, cell) -> {
                    if (NO_NUMBER.matcher(cell).find() || cell.matches("-[0-9.]+") && !SIGNED.contains(column)) {
                        say("%s %s in %s", column, cell, row);
                    }
                });
            }
        }
        if (summary.contains("NaN") || summary.contains("Infinity")) {
            say("no number in summary.json");
        }
        Matcher said = Pattern.compile(".*(NaN|Infinity|∞|null).*").matcher(cards());
        while (said.find()) {
            say("a card says %s", said.group().strip());
        }
    }

    private String cards() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(folder.resolve("work-cards.pdf").toFile())) {
            return new PDFTextStripper().getText(pdf);
        }
    }

    /** What holes take is what their cups hold less waste; every hole has a cup, low and high embrace it. */
    private void grams() {
        Map<String, Double> inCups = new HashMap<>();
        Map<String, Double> inHoles = new HashMap<>();
        Map<String, String> spaceOf = new HashMap<>();
        for (Map<String, String> cup : cups) {
            if (cup.get("kind").equals("planned")) {
                inCups.merge(cup.get("region"), number(cup, "part_a_g") + number(cup, "part_b_g"), Double::sum);
                Arrays.stream(cup.get("holes").split(" ")).forEach(h -> spaceOf.put(h, cup.get("region")));
            }
        }
        for (Map<String, String> hole : holes) {
            String id = hole.get("id");
            double planned = number(hole, "planned_g");
            if (hole.get("kind").equals("vent")) {
                continue;
            }
            if (!spaceOf.containsKey(id)) {
                say("%s has no cup", id);
                continue;
            }
            inHoles.merge(spaceOf.get(id), planned, Double::sum);
            if (planned <= 0 || number(hole, "low_g") > planned || planned > number(hole, "high_g")) {
                say("%s takes %s", id, hole);
            }
            if (Math.abs(number(hole, "taken_g") - planned) > 0.1 * planned + GRAM) {
                say("%s is asked to take %.1f g and takes %s", id, planned, hole.get("taken_g"));
            }
        }
        Set<Double> shares = new LinkedHashSet<>();
        inCups.forEach((space, mixed) -> shares.add(inHoles.getOrDefault(space, 0.0) / mixed));
        double share = shares.stream().mapToDouble(s -> s).max().orElse(1);
        inCups.forEach((space, mixed) -> {
            long count =
                    cups.stream().filter(c -> c.get("region").equals(space)).count();
            if (Math.abs(inHoles.getOrDefault(space, 0.0) - share * mixed) > 2 * GRAM * count + 0.002 * mixed) {
                say("%s: %.1f g into holes of %.1f mixed", space, inHoles.get(space), mixed);
            }
        });
    }

    /** The scale's figures are the cups'; parts in one ratio; times in order; the sums of the summary. */
    private void cups() throws IOException {
        Map<String, Map<String, String>> scale = new HashMap<>();
        table("cups.csv").forEach(c -> scale.put(c.get("batch"), c));
        Map<String, Double> resin = new HashMap<>();
        for (Map<String, String> cup : cups) {
            double a = number(cup, "part_a_g");
            double b = number(cup, "part_b_g");
            Map<String, String> shown = scale.get(cup.get("batch"));
            if (shown == null
                    || Math.abs(number(shown, "resin_to_g") - a) > 1e-6
                    || Math.abs(number(shown, "hardener_to_g") - a - b) > 1e-6) {
                say("cup %s is %s on the scale, %s", cup.get("batch"), shown, cup);
            }
            resin.merge(cup.get("region"), a, Double::sum);
            if (!(number(cup, "mix_at_min") < number(cup, "work_until_min")
                    && number(cup, "work_until_min") < number(cup, "hard_at_min"))) {
                say("times of cup %s: %s", cup.get("batch"), cup);
            }
        }
        Matcher region = Pattern.compile("\"id\":\\s*\"(\\w+)\".*?\"resin_g\":\\s*([0-9.]+)", Pattern.DOTALL)
                .matcher(summary);
        while (region.find()) {
            double sum = resin.getOrDefault(region.group(1), 0.0);
            if (Math.abs(sum - Double.parseDouble(region.group(2))) > 1e-6) {
                say("%s: %.1f g of resin in cups, %s in the summary", region.group(1), sum, region.group(2));
            }
        }
    }

    private void hands() {
        for (Map<String, String> a : bars) {
            for (Map<String, String> b : bars) {
                boolean both = !a.get("worker").isEmpty() && a.get("worker").equals(b.get("worker"));
                boolean after = bars.indexOf(b) > bars.indexOf(a);
                double together = Math.min(number(a, "end_min"), number(b, "end_min"))
                        - Math.max(number(a, "start_min"), number(b, "start_min"));
                if (both && after && together > MINUTE) {
                    say("two at once: %s and %s", a, b);
                }
            }
            if (number(a, "end_min") < number(a, "start_min")) {
                say("ends before it begins: %s", a);
            }
        }
    }

    /** All in within the work time; a vent that is due is plugged within a work time where the mix does not rise. */
    private void pouring() {
        for (Map<String, String> cup : cups) {
            List<Map<String, String>> own = bars.stream()
                    .filter(b -> b.get("batch").equals(cup.get("batch")))
                    .toList();
            for (String hole : cup.get("holes").split(" ")) {
                List<Map<String, String>> into = own.stream()
                        .filter(b ->
                                b.get("what").equals("inject") && b.get("hole").equals(hole))
                        .toList();
                if (into.isEmpty()) {
                    say("cup %s is never poured into %s", cup.get("batch"), hole);
                }
                if (into.stream().anyMatch(b -> number(b, "end_min") > number(cup, "work_until_min") + MINUTE)) {
                    say("%s is poured after the work time of cup %s", hole, cup.get("batch"));
                }
            }
            boolean rises = own.stream().anyMatch(b -> b.get("what").equals("rise"));
            for (Map<String, String> bar : own) {
                if (!rises
                        && bar.get("what").equals("plug")
                        && number(bar, "start_min") > number(cup, "work_until_min") + MINUTE) {
                    say("mix shows at %s after the work time", bar.get("hole"));
                }
            }
            boolean planned = cup.get("kind").equals("planned") && lastLift(cup); // over an earlier one there is air
            if (rises && planned && own.stream().noneMatch(b -> b.get("what").equals("feel"))) {
                say("cup %s is felt by nobody", cup.get("batch"));
            }
        }
    }

    private boolean lastLift(Map<String, String> cup) {
        return cups.stream()
                .filter(c -> c.get("region").equals(cup.get("region")))
                .allMatch(c -> number(c, "lift") <= number(cup, "lift"));
    }

    /** Of openings nearer than is wished the later one has a reason on its card. */
    private void apart() throws IOException {
        String cards = cards().replaceAll("\\s+", " ");
        for (Map<String, String> vent : holes) {
            if (!vent.get("kind").equals("vent")) {
                continue;
            }
            for (Map<String, String> other : holes) {
                double mm = Math.hypot(number(vent, "x") - number(other, "x"), number(vent, "y") - number(other, "y"));
                boolean before = holes.indexOf(other) < holes.indexOf(vent)
                        && other.get("face").equals(vent.get("face"));
                String name = vent.get("id").replaceAll(".*-", "");
                boolean said = Pattern.compile("\\b" + name + " (stands )?near (another hole|R[0-9])")
                        .matcher(cards)
                        .find();
                if (before && mm < APART_MM - 1.5 && !said) {
                    say("%s stands %.0f mm from %s and no card says why", vent.get("id"), mm, other.get("id"));
                }
            }
        }
    }
}
