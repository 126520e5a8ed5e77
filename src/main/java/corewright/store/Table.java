package corewright.store;

import corewright.survey.Feature;
import corewright.survey.Finding;
import corewright.survey.Materials;
import corewright.survey.Part;
import corewright.survey.settings.Resin;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One table that holds a list, and how its things stand in rows.
 *
 * @param columns without {@code fid} and {@code position}
 * @param row one value a column
 * @param item the thing in a row; an {@link IllegalArgumentException} names the column that does not fit
 */
record Table<T>(
        String name, List<String> columns, Function<T, @Nullable Object[]> row, Function<@Nullable Object[], T> item) {
    /** Something drawn on a face, with the face's name. */
    record Drawn(String face, Feature feature) {}

    static final Table<Drawn> PLAN_FEATURES = planFeatures();
    static final Table<Materials.Skin> SKINS = of("skins", Materials.Skin.class);
    static final Table<Materials.Core> CORES = of("cores", Materials.Core.class);
    static final Table<Resin> RESINS = of("resins", Resin.class);
    static final Table<Finding> IMPORT_NOTES = ImportNote.table(of("import_notes", ImportNote.class));

    /** Of every part that is a list of records. */
    private static final Map<String, Table<?>> OF_PARTS = ofParts();

    /** The table of a part that is a list of records: all but features, materials and settings. */
    @SuppressWarnings("unchecked") // ofParts pairs each part with the table of its type
    public static <T> Table<T> of(Part<T> part) {
        return (Table<T>) Objects.requireNonNull(OF_PARTS.get(part.name()), part.name());
    }

    /** Every table with a position. */
    static List<Table<?>> all() {
        List<Table<?>> all = new ArrayList<>(OF_PARTS.values());
        all.addAll(List.of(PLAN_FEATURES, SKINS, CORES, RESINS, IMPORT_NOTES));
        return all;
    }

    private static <R extends Record> Table<R> of(String name, Class<R> type) {
        Form<R> form = new Form<>(type);
        return new Table<>(name, form.columns(), form::row, form::item);
    }

    private static Map<String, Table<?>> ofParts() {
        Map<String, Table<?>> tables = new LinkedHashMap<>();
        for (Part<?> part : Part.all()) {
            if (!part.equals(Part.MATERIALS) && !part.equals(Part.SETTINGS)) {
                tables.put(part.name(), record(part));
            }
        }
        return tables;
    }

    private static Table<?> record(Part<?> part) {
        return part.type().isRecord() ? of(part.name(), part.type().asSubclass(Record.class)) : PLAN_FEATURES;
    }

    /** All kinds of features share one table: the columns of them all, and the word that tells which kind it is. */
    private static Table<Drawn> planFeatures() {
        Map<String, Form<? extends Record>> forms = new LinkedHashMap<>();
        Set<String> names = new LinkedHashSet<>(List.of(Form.GEOMETRY, "face", "kind"));
        for (Class<?> kind : Feature.class.getPermittedSubclasses()) {
            Form<? extends Record> form = new Form<>(kind.asSubclass(Record.class));
            forms.put(kind(kind), form);
            names.addAll(form.columns());
        }
        List<String> columns = List.copyOf(names);
        return new Table<>(
                "plan_features", columns, drawn -> row(drawn, forms, columns), row -> drawn(row, forms, columns));
    }

    private static String kind(Class<?> feature) {
        return feature.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
    }

    @SuppressWarnings("unchecked") // the form is looked up by the feature's own class
    private static @Nullable Object[] row(
            Drawn drawn, Map<String, Form<? extends Record>> forms, List<String> columns) {
        String kind = kind(drawn.feature().getClass());
        Form<Record> form = (Form<Record>) Objects.requireNonNull(forms.get(kind));
        @Nullable Object[] own = form.row((Record) drawn.feature());
        @Nullable Object[] row = new @Nullable Object[columns.size()];
        for (int i = 0; i < own.length; i++) {
            row[columns.indexOf(form.columns().get(i))] = own[i];
        }
        row[columns.indexOf("face")] = drawn.face();
        row[columns.indexOf("kind")] = kind;
        return row;
    }

    private static Drawn drawn(
            @Nullable Object[] row, Map<String, Form<? extends Record>> forms, List<String> columns) {
        Object kind = row[columns.indexOf("kind")];
        Form<? extends Record> form = kind instanceof String word ? forms.get(word) : null;
        if (form == null || !(row[columns.indexOf("face")] instanceof String face)) {
            throw new IllegalArgumentException("kind: found \"" + Scalar.shown(String.valueOf(kind))
                    + "\", expected one of " + new TreeSet<>(forms.keySet()));
        }
        @Nullable
        Object[] own =
                form.columns().stream().map(columns::indexOf).map(i -> row[i]).toArray();
        return new Drawn(face, (Feature) form.item(own));
    }

    /** For a statement; some are words of SQL. In double quotes a column that is missing would be read as a text. */
    String quotedColumns() {
        return columns.stream().map(c -> '`' + c + '`').collect(Collectors.joining(", "));
    }
}
