package corewright.intake;

import corewright.intake.text.LengthUnit;
import corewright.intake.text.Lengths;
import corewright.intake.text.Notes;
import corewright.intake.text.Numerals;
import corewright.intake.text.Text;
import corewright.intake.text.Wkt;
import corewright.intake.text.Words;
import corewright.intake.yaml.YamlBlock;
import corewright.intake.yaml.YamlTree;
import corewright.intake.yaml.YamlValue;
import corewright.intake.yaml.YamlValue.Shape;
import corewright.survey.FrozenPlan;
import corewright.survey.FrozenPlan.Kind;
import corewright.survey.FrozenPlan.Standing;
import corewright.survey.Spot;
import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygonal;

/** The file named under {@code files: repair_plan}: the plan as an earlier run issued it. */
final class RepairPlanYaml {
    static final String KEY = "repair_plan";

    /** More of one kind are nobody's plan. */
    private static final int MOST_ITEMS = 4000;

    static final double MOST_GRAMS = 1e6;
    static final double DEEPEST_MM = 1000;
    private static final double MOST = 1e9;

    /** A name stands in lists parted by spaces, in a log and on a card. */
    private static final Pattern NAME = Pattern.compile("[A-Za-z][A-Za-z0-9-]{0,39}");

    private final YamlBlock top;
    private final List<String> faces;
    private final Notes notes;
    private final Set<String> regions = new HashSet<>();
    private final Set<String> holes = new HashSet<>();

    private RepairPlanYaml(YamlBlock top, List<String> faces, Notes notes) {
        this.top = top;
        this.faces = faces;
        this.notes = notes;
    }

    /** Nothing where {@code files} names none. */
    static FrozenPlan read(YamlValue files, Folder folder, List<String> faces, Notes notes) throws IOException {
        YamlValue named = files.at(KEY);
        if (named.isMissing()) {
            return FrozenPlan.NONE;
        }
        if (named.shape() != Shape.TEXT) {
            notes.expected(named.origin(), named.path(), named.found(), "a file name such as repair-plan.yaml");
            return FrozenPlan.NONE;
        }
        Path path = folder.find(named, named.text(), notes);
        String text = path == null ? null : Text.read(path, named.text(), YamlTree.LARGEST_BYTES, notes);
        YamlValue top = text == null ? null : YamlTree.parse(named.text(), text, notes);
        return top == null ? FrozenPlan.NONE : new RepairPlanYaml(YamlBlock.of(top, notes), faces, notes).plan();
    }

    private FrozenPlan plan() {
        if (!top.text("format").equals("1")) {
            top.expected("format", "1");
        }
        top.only(List.of("format", "revision", "surveyed", "readings", "regions", "holes", "cuts", "cups", "buying"));
        List<FrozenPlan.PlannedRegion> named = new ArrayList<>();
        each("regions", List.of("name", "face", "x", "y", "method", "standing"), b -> region(b, named));
        List<FrozenPlan.PlannedHole> drilled = new ArrayList<>();
        List<String> keys = List.of(
                "name",
                "region",
                "face",
                "x",
                "y",
                "kind",
                "diameter_mm",
                "stop_mm",
                "grams",
                "standing",
                "access",
                "push_mm");
        each("holes", keys, b -> hole(b, drilled));
        List<FrozenPlan.PlannedCut> cuts = new ArrayList<>();
        each("cuts", List.of("region", "face", "area"), b -> cut(b, cuts));
        List<FrozenPlan.PlannedCup> cups = new ArrayList<>();
        each("cups", List.of("cup", "region", "holes", "part_a_g", "part_b_g"), b -> cup(b, cups));
        List<FrozenPlan.Purchase> buying = new ArrayList<>();
        each("buying", List.of("item", "plan", "buy", "unit"), b -> purchase(b, buying));
        return new FrozenPlan(List.of(issue()), named, drilled, cuts, cups, buying);
    }

    private FrozenPlan.Issue issue() {
        YamlBlock counts = top.block("readings");
        counts.only(List.of("mark", "moisture", "taps", "probes", "feelers", "plugs"));
        return new FrozenPlan.Issue(
                (int) whole(top, "revision", 1, 1_000_000),
                surveyed(),
                counts.required("mark", "the mark of the readings"),
                (int) whole(counts, "moisture", 0, MOST),
                (int) whole(counts, "taps", 0, MOST),
                (int) whole(counts, "probes", 0, MOST),
                (int) whole(counts, "feelers", 0, MOST),
                (int) whole(counts, "plugs", 0, MOST));
    }

    private LocalDate surveyed() {
        try {
            return LocalDate.parse(top.text("surveyed"));
        } catch (DateTimeException e) {
            top.expected("surveyed", "a date such as 2026-04-02");
            return LocalDate.EPOCH;
        }
    }

    private void each(String key, List<String> known, Consumer<YamlBlock> item) {
        YamlValue list = top.value().at(key);
        if (list.shape() == Shape.TEXT || list.shape() == Shape.MAP) {
            notes.expected(list.origin(), list.path(), list.found(), "a list");
            return;
        }
        if (list.items().size() > MOST_ITEMS) {
            notes.complain(
                    list.origin(),
                    list.path(),
                    "found " + list.items().size() + " items, expected at most " + MOST_ITEMS);
            return;
        }
        for (YamlValue value : list.items()) {
            YamlBlock block = YamlBlock.of(value, notes);
            block.only(known);
            item.accept(block);
        }
    }

    private void region(YamlBlock block, List<FrozenPlan.PlannedRegion> into) {
        String name = once(block, "region", regions);
        Spot spot = spot(block);
        into.add(new FrozenPlan.PlannedRegion(
                name,
                spot,
                block.required("method", "a method"),
                word(block, "standing", Standing.class, Standing.PLANNED)));
    }

    private void hole(YamlBlock block, List<FrozenPlan.PlannedHole> into) {
        String name = once(block, "hole", holes);
        into.add(new FrozenPlan.PlannedHole(
                name,
                name(block, "region"),
                spot(block),
                word(block, "kind", Kind.class, Kind.INJECTION),
                number(block, "diameter_mm", 0, DEEPEST_MM),
                number(block, "stop_mm", 0, DEEPEST_MM),
                number(block, "grams", 0, MOST_GRAMS),
                word(block, "standing", Standing.class, Standing.PLANNED),
                block.text("access"),
                block.has("push_mm") ? number(block, "push_mm", 0, Lengths.LARGEST_MM) : 0));
    }

    private void cut(YamlBlock block, List<FrozenPlan.PlannedCut> into) {
        String region = name(block, "region");
        String face = face(block);
        YamlValue area = block.value().at("area");
        Wkt wkt = Wkt.parse(area.text(), LengthUnit.MM);
        Geometry cut = wkt.geometry();
        if (cut instanceof Polygonal) {
            into.add(new FrozenPlan.PlannedCut(region, face, cut));
        } else {
            block.complain("area", cut == null ? wkt.problem() : "found no area, expected a POLYGON");
        }
    }

    private void cup(YamlBlock block, List<FrozenPlan.PlannedCup> into) {
        List<String> filled = new ArrayList<>();
        for (String hole : block.text("holes").trim().split("\\s+", -1)) {
            if (hole.isEmpty()) {
                continue;
            }
            if (holes.contains(hole.toUpperCase(Locale.ROOT))) {
                filled.add(hole);
            } else {
                notes.expected(block.origin(), block.value().path() + ".holes", hole, "holes of this plan");
            }
        }
        into.add(new FrozenPlan.PlannedCup(
                (int) whole(block, "cup", 1, 1_000_000),
                name(block, "region"),
                String.join(" ", filled),
                number(block, "part_a_g", 0, MOST_GRAMS),
                number(block, "part_b_g", 0, MOST_GRAMS)));
    }

    private void purchase(YamlBlock block, List<FrozenPlan.Purchase> into) {
        into.add(new FrozenPlan.Purchase(
                block.required("item", "what to buy"),
                number(block, "plan", 0, MOST),
                number(block, "buy", 0, MOST),
                block.required("unit", "a unit")));
    }

    /** Names are told apart without the case of their letters, as they are written by hand in a log. */
    private String once(YamlBlock block, String what, Set<String> seen) {
        String name = name(block, "name");
        if (!name.isEmpty() && !seen.add(name.toUpperCase(Locale.ROOT))) {
            block.complain("name", "two " + what + "s are called \"" + name + "\"");
        }
        return name;
    }

    private String name(YamlBlock block, String key) {
        String name = block.required(key, "a name such as R1-3");
        if (!name.isEmpty() && !NAME.matcher(name).matches()) {
            block.expected(key, "a name such as R1-3, of letters, digits and -");
            return "";
        }
        return name;
    }

    /** Whether a name may stand in a plan. */
    static boolean isName(String name) {
        return NAME.matcher(name).matches();
    }

    private String face(YamlBlock block) {
        String face = block.text("face");
        if (!faces.contains(face)) {
            block.expected("face", Words.or(faces));
        }
        return face;
    }

    private Spot spot(YamlBlock block) {
        double largest = Lengths.LARGEST_MM;
        return new Spot(face(block), number(block, "x", -largest, largest), number(block, "y", -largest, largest));
    }

    private static <E extends Enum<E>> E word(YamlBlock block, String key, Class<E> choices, E otherwise) {
        if (!block.has(key)) {
            block.expected(key, Words.choices(choices));
        }
        @Nullable E word = block.word(key, choices);
        return word == null ? otherwise : word;
    }

    private static double number(YamlBlock block, String key, double low, double high) {
        if (!block.has(key)) {
            block.expected(key, "a number");
        }
        return block.number(key, low, high, Math.max(0, low));
    }

    private static double whole(YamlBlock block, String key, double low, double high) {
        double value = number(block, key, low, high);
        if (value != Math.rint(value)) {
            block.expected(key, "a whole number from " + Numerals.plain(low) + " to " + Numerals.plain(high));
        }
        return value;
    }
}
