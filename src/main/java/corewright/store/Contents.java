package corewright.store;

import corewright.store.Table.Drawn;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Finding;
import corewright.survey.FrozenPlan;
import corewright.survey.Heading;
import corewright.survey.Judgements;
import corewright.survey.Materials;
import corewright.survey.Part;
import corewright.survey.Readings;
import corewright.survey.Survey;
import corewright.survey.settings.Settings;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Reads the tables of an open file. */
final class Contents {
    /** As many rows as a file of a survey folder may have. */
    private static final int MOST_ROWS = 1_000_000;

    private final Path file;
    private final Connection connection;

    Contents(Path file, Connection connection) {
        this.file = file;
        this.connection = connection;
    }

    Survey survey() throws SQLException, StoreException {
        List<Heading> heading = list(Part.HEADING);
        if (heading.size() != 1) {
            throw new StoreException(file, "table heading has " + heading.size() + " rows, expected one");
        }
        List<Face> faces = faces();
        Readings readings = new Readings(
                list(Part.MOISTURE),
                list(Part.TAPS),
                list(Part.PROBES),
                list(Part.FEELERS),
                list(Part.PLUGS),
                list(Part.TEMPERATURES),
                list(Part.CURED_TAPS));
        Judgements judgements =
                new Judgements(list(Part.METHODS), list(Part.DOUBTS), list(Part.HOLES), list(Part.RULES));
        try {
            return new Survey(
                    heading.get(0),
                    faces,
                    list(Part.METERS),
                    list(Part.LAMINATES),
                    materials(),
                    readings,
                    settings(),
                    list(Part.LOG),
                    list(Part.PHOTOS),
                    judgements,
                    list(Part.LOADS),
                    repairPlan());
        } catch (IllegalArgumentException e) {
            throw new StoreException(file, e.getMessage() + "", e);
        }
    }

    private FrozenPlan repairPlan() throws SQLException, StoreException {
        return new FrozenPlan(
                list(Part.ISSUE),
                list(Part.PLANNED_REGIONS),
                list(Part.PLANNED_HOLES),
                list(Part.PLANNED_CUTS),
                list(Part.PLANNED_CUPS),
                list(Part.PURCHASES));
    }

    /** What was odd about the files that the survey was read from, which the survey itself no longer shows. */
    List<Finding> importNotes() throws SQLException, StoreException {
        return list(Table.IMPORT_NOTES);
    }

    private List<Face> faces() throws SQLException, StoreException {
        Map<String, List<Feature>> drawn = new LinkedHashMap<>();
        for (Drawn each : list(Table.PLAN_FEATURES)) {
            drawn.computeIfAbsent(each.face(), f -> new ArrayList<>()).add(each.feature());
        }
        List<Face> faces = list(Part.FACES);
        Map<String, List<Feature>> homeless = new LinkedHashMap<>(drawn);
        faces.forEach(face -> homeless.remove(face.name()));
        if (faces.isEmpty()) {
            throw new StoreException(file, "a survey needs a face");
        }
        for (Map.Entry<String, List<Feature>> each : homeless.entrySet()) {
            String name = Scalar.shown(each.getKey());
            int features = each.getValue().size();
            throw new StoreException(
                    file,
                    "table plan_features: face: found \"" + name + "\" in " + features + " rows, which no row of table"
                            + " faces is called");
        }
        return faces.stream()
                .map(face -> face.with(drawn.getOrDefault(face.name(), List.of())))
                .toList();
    }

    private Materials materials() throws SQLException, StoreException {
        return new Materials(named(Table.SKINS, Materials.Skin::name), named(Table.CORES, Materials.Core::name));
    }

    private <M> Map<String, M> named(Table<M> table, Function<M, String> name) throws SQLException, StoreException {
        Map<String, M> named = new LinkedHashMap<>();
        for (M material : list(table)) {
            if (named.put(name.apply(material), material) != null) {
                throw new StoreException(
                        file,
                        "table " + table.name() + ": two rows are called \"" + Scalar.shown(name.apply(material))
                                + "\"");
            }
        }
        return named;
    }

    private Settings settings() throws SQLException, StoreException {
        List<SettingsTable.Value> values = new ArrayList<>();
        try (Statement select = connection.createStatement();
                ResultSet rows = select.executeQuery("SELECT section, name, value FROM settings LIMIT 10000")) {
            while (rows.next()) {
                values.add(new SettingsTable.Value(
                        "" + rows.getString(1), "" + rows.getString(2), "" + rows.getString(3)));
            }
        }
        try {
            return SettingsTable.settings(values, list(Table.RESINS));
        } catch (IllegalArgumentException e) {
            throw new StoreException(file, "table settings: " + e.getMessage(), e);
        }
    }

    private <T> List<T> list(Part<T> part) throws SQLException, StoreException {
        return list(Table.of(part));
    }

    private <T> List<T> list(Table<T> table) throws SQLException, StoreException {
        List<T> list = new ArrayList<>();
        int columns = table.columns().size();
        String sql = "SELECT fid, " + table.quotedColumns() + " FROM " + table.name()
                + " NOT INDEXED ORDER BY position, fid"; // an index of others may leave rows out
        try (Statement select = connection.createStatement();
                ResultSet rows = select.executeQuery(sql)) {
            while (rows.next()) {
                @Nullable Object[] row = new @Nullable Object[columns];
                for (int i = 0; i < columns; i++) {
                    row[i] = rows.getObject(i + 2);
                }
                list.add(item(table, row, rows.getLong(1)));
                if (list.size() > MOST_ROWS) {
                    throw new StoreException(
                            file,
                            "table " + table.name() + " has more than " + MOST_ROWS + " rows, which is the limit");
                }
            }
        }
        return list;
    }

    private <T> T item(Table<T> table, @Nullable Object[] row, long fid) throws StoreException {
        try {
            return table.item().apply(row);
        } catch (IllegalArgumentException e) {
            throw new StoreException(file, "table " + table.name() + ", row " + fid + ": " + e.getMessage(), e);
        }
    }
}
