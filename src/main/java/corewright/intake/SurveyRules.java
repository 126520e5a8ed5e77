package corewright.intake;

import corewright.intake.text.Lengths;
import corewright.intake.text.Notes;
import corewright.intake.text.Numerals;
import corewright.intake.text.Sheet;
import corewright.intake.text.Wkt;
import corewright.intake.text.Words;
import corewright.intake.yaml.Overrides;
import corewright.survey.DeckLoad;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Feeler;
import corewright.survey.Laminate;
import corewright.survey.Materials;
import corewright.survey.Meter;
import corewright.survey.MethodOverride;
import corewright.survey.Moisture;
import corewright.survey.MovedHole;
import corewright.survey.Origin;
import corewright.survey.Photo;
import corewright.survey.Plug;
import corewright.survey.Probe;
import corewright.survey.Reading;
import corewright.survey.ReadingOverride;
import corewright.survey.Readings;
import corewright.survey.Spot;
import corewright.survey.SurfaceTemperature;
import corewright.survey.Survey;
import corewright.survey.Tap;
import corewright.survey.WorkEntry;
import corewright.survey.settings.Resin;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;

/** What holds of every survey, wherever it was read from: names are those of something, once; numbers are within reason. */
final class SurveyRules {
    static final double THINNEST_MM = 0.01;

    static final double THICKEST_MM = 1000;
    private static final double LARGEST = 1e9;

    private final Survey survey;
    private final Notes notes;
    private final Set<String> faces;

    private SurveyRules(Survey survey, Notes notes) {
        this.survey = survey;
        this.notes = notes;
        this.faces = names(survey.faces(), Face::name);
    }

    /** Complains of everything that a survey cannot have. */
    static void check(Survey survey, Notes notes) {
        check(survey, notes, false);
    }

    /** @param unread whether the survey is still to be taken, and need not have a reading */
    static void check(Survey survey, Notes notes, boolean unread) {
        SurveyRules rules = new SurveyRules(survey, notes);
        rules.amounts(unread);
        rules.faces();
        rules.layUps();
        rules.meters();
        rules.settings();
        rules.readings();
        rules.judgements();
        rules.loads();
        rules.log();
        new RepairPlanRules(survey.repairPlan(), rules.faces, notes).check();
    }

    private void amounts(boolean unread) {
        Readings r = survey.readings();
        if (!unread
                && r.moisture().isEmpty()
                && r.taps().isEmpty()
                && r.probes().isEmpty()) {
            String problem = "found no reading at all, expected at least one of moisture, taps or probes";
            notes.complain(new Origin("survey", 0), "readings", problem);
        }
        long readings = all(r).count() + survey.log().size() + survey.photos().size();
        if (readings > Sheet.MOST_ROWS) {
            notes.complain(new Origin("survey", 0), "readings", "expected at most " + Sheet.MOST_ROWS + " readings");
        }
        long features = 0;
        long points = 0;
        for (Face face : survey.faces()) {
            features += face.features().size();
            points += face.outline().getNumPoints();
            for (Feature feature : face.features()) {
                points += feature.geometry().getNumPoints();
            }
        }
        if (features > PlanReader.MOST_FEATURES || points > PlanReader.MOST_POINTS) {
            String problem = "expected at most " + PlanReader.MOST_FEATURES + " features and " + PlanReader.MOST_POINTS
                    + " points in the plan";
            notes.complain(new Origin("survey", 0), "plan", problem);
        }
    }

    private static Stream<Reading> all(Readings r) {
        return Stream.of(r.moisture(), r.taps(), r.probes(), r.feelers(), r.plugs(), r.temperatures(), r.curedTaps())
                .flatMap(Collection::stream);
    }

    private void faces() {
        Set<String> laminates = names(survey.laminates(), Laminate::name);
        once("face", survey.faces(), Face::name);
        for (Face face : survey.faces()) {
            Origin origin = new Origin("face " + face.name(), 0);
            if (!SurveyYaml.canNameAFile(face.name())) {
                String expected = "a name of at most 60 letters, digits, spaces, - and _, as it also names files";
                notes.expected(new Origin("faces", 0), "name", face.name(), expected);
            }
            within(origin, "uphill_deg", face.uphillDeg(), -360, 360);
            known(origin, "laminate", face.laminate(), laminates);
            near(origin, "geom", face.outline());
            for (Feature feature : face.features()) {
                near(feature.origin(), "geom", feature.geometry());
                if (feature instanceof Feature.LaminateArea area) {
                    known(area.origin(), "laminate", area.laminate(), laminates);
                } else if (feature instanceof Feature.Opening opening) {
                    coaming(opening);
                } else if (feature instanceof Feature.Fitting fitting) {
                    within(fitting.origin(), "keepout", fitting.keepoutMm(), 0, Lengths.LARGEST_MM);
                }
            }
        }
    }

    private void coaming(Feature.Opening opening) {
        within(opening.origin(), CoamingCells.HEIGHT, opening.coamingHeightMm(), THINNEST_MM, THICKEST_MM);
        within(opening.origin(), CoamingCells.THICKNESS, opening.coamingThicknessMm(), THINNEST_MM, THICKEST_MM);
        if (opening.coamingSkin() != null) {
            known(
                    opening.origin(),
                    CoamingCells.SKIN,
                    opening.coamingSkin(),
                    survey.materials().skins().keySet());
        }
    }

    private void layUps() {
        once("laminate", survey.laminates(), Laminate::name);
        for (Laminate laminate : survey.laminates()) {
            Origin origin = new Origin("laminate " + laminate.name(), 0);
            known(origin, "skin", laminate.skin(), survey.materials().skins().keySet());
            known(origin, "core", laminate.core(), survey.materials().cores().keySet());
            within(origin, "outer_skin_mm", laminate.outerSkinMm(), THINNEST_MM, THICKEST_MM);
            within(origin, "core_mm", laminate.coreMm(), THINNEST_MM, THICKEST_MM);
            within(origin, "inner_skin_mm", laminate.innerSkinMm(), THINNEST_MM, THICKEST_MM);
            within(origin, "solid_edge_mm", laminate.solidEdgeMm(), 0, Laminate.WIDEST_EDGE_MM);
        }
        for (Materials.Skin skin : survey.materials().skins().values()) {
            Origin origin = new Origin("skin " + skin.name(), 0);
            MaterialsYaml.checkFigures(skin, (key, problem) -> notes.complain(origin, key, problem));
        }
        for (Materials.Core core : survey.materials().cores().values()) {
            Origin origin = new Origin("core " + core.name(), 0);
            MaterialsYaml.checkFigures(core, (key, problem) -> notes.complain(origin, key, problem));
        }
    }

    private void meters() {
        once("meter", survey.meters(), Meter::name);
        for (Meter meter : survey.meters()) {
            Origin origin = new Origin("meter " + meter.name(), 0);
            within(origin, "full_scale", meter.fullScale(), 1e-6, Meters.LARGEST);
            within(origin, "dry", meter.dry(), 0, Meters.LARGEST);
            within(origin, "wet", meter.wet(), 0, Meters.LARGEST);
            if (meter.dry() != null && meter.wet() != null && meter.dry() >= meter.wet()) {
                String expected = "more than dry, which is " + Numerals.plain(meter.dry());
                notes.expected(origin, "wet", Numerals.plain(meter.wet()), expected);
            }
        }
    }

    private void settings() {
        var s = survey.settings();
        once("resin", s.resins(), Resin::name);
        s.resins().forEach(resin -> reasonable(resin, "resin " + resin.name(), -LARGEST));
        List.<Record>of(s.thresholds(), s.drilling(), s.crew(), s.climate(), s.numerics(), s.drying(), s.goal())
                .forEach(section -> reasonable(section, "settings", -LARGEST));
        reasonable(s.costs(), "settings", 0);
        if (s.costs().hoursPerDay() == 0) {
            notes.expected(new Origin("settings", 0), "hours_per_day", "0", "a number above zero");
        }
    }

    private void reasonable(Record record, String where, double least) {
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            if (component.getType() == double.class) {
                double value = Overrides.number(record, component);
                within(new Origin(where, 0), Overrides.snake(component.getName()), value, least, LARGEST);
            }
        }
    }

    private void readings() {
        Set<String> meters = names(survey.meters(), Meter::name);
        Readings r = survey.readings();
        all(r).forEach(reading -> place(reading.origin(), "face", reading.spot()));
        for (Moisture m : r.moisture()) {
            known(m.origin(), "meter", m.meter(), meters);
            within(m.origin(), "value", m.value(), 0, LARGEST);
            within(m.origin(), "temperature", m.temperatureC(), MoistureReader.COLDEST_C, MoistureReader.HOTTEST_C);
        }
        Stream.concat(r.taps().stream(), r.curedTaps().stream()).forEach(this::tap);
        for (Probe p : r.probes()) {
            within(p.origin(), "void_depth", p.voidDepthMm(), 0, Lengths.LARGEST_MM);
        }
        for (Feeler f : r.feelers()) {
            place(f.origin(), "face", f.tip());
            within(f.origin(), "void_depth", f.voidDepthMm(), 0, Lengths.LARGEST_MM);
        }
        for (Plug p : r.plugs()) {
            within(p.origin(), "mc_percent", p.moisturePercent(), 0, OtherReaders.WETTEST_PERCENT);
        }
        for (SurfaceTemperature t : r.temperatures()) {
            within(t.origin(), "minutes", t.afterS(), 0, OtherReaders.LONGEST_MINUTES * 60);
            within(t.origin(), "value", t.valueC(), OtherReaders.COLDEST_C, OtherReaders.HOTTEST_C);
            if (t.valueC() == null && t.warm() == null) {
                notes.expected(t.origin(), "value", "", "degrees, warm or not-warm");
            }
        }
        for (Photo photo : survey.photos()) {
            place(photo.origin(), "face", photo.spot());
        }
    }

    private void tap(Tap tap) {
        within(tap.origin(), "contact_us", tap.contactUs(), 0.1, OtherReaders.LONGEST_CONTACT_US);
    }

    private void judgements() {
        for (MethodOverride each : survey.judgements().methods()) {
            place(new Origin("method_overrides", 0), "face", each.spot());
        }
        for (ReadingOverride each : survey.judgements().readings()) {
            place(new Origin("reading_overrides", 0), "face", each.spot());
        }
        for (MovedHole each : survey.judgements().holes()) {
            place(new Origin("moved_holes", 0), "face", each.planned());
            place(new Origin("moved_holes", 0), "face", each.spot());
        }
    }

    private void loads() {
        for (DeckLoad load : survey.loads()) {
            Origin origin = new Origin("load " + load.loadCase(), 0);
            known(origin, "face", load.face(), faces);
            near(origin, "geom", load.area());
            within(origin, "force_N", load.forceN(), -LoadsYaml.LARGEST, LoadsYaml.LARGEST);
            within(origin, "pressure_kPa", load.pressureKPa(), -LoadsYaml.LARGEST, LoadsYaml.LARGEST);
            within(origin, "moment_x_Nmm", load.momentXNmm(), -LoadsYaml.LARGEST_MOMENT, LoadsYaml.LARGEST_MOMENT);
            within(origin, "moment_y_Nmm", load.momentYNmm(), -LoadsYaml.LARGEST_MOMENT, LoadsYaml.LARGEST_MOMENT);
        }
    }

    private void log() {
        for (WorkEntry entry : survey.log()) {
            within(entry.origin(), "minutes", entry.afterS(), 0, OtherReaders.LONGEST_MINUTES * 60);
            within(entry.origin(), "grams", entry.grams(), 0, OtherReaders.MOST_GRAMS);
        }
    }

    private void place(Origin origin, String column, Spot spot) {
        known(origin, column, spot.face(), faces);
        within(origin, "x", spot.xMm(), -Lengths.LARGEST_MM, Lengths.LARGEST_MM);
        within(origin, "y", spot.yMm(), -Lengths.LARGEST_MM, Lengths.LARGEST_MM);
    }

    private void near(Origin origin, String column, Geometry geometry) {
        if (geometry.getNumPoints() > Wkt.MOST_VERTICES) {
            notes.complain(origin, column, "found more than " + Wkt.MOST_VERTICES + " points, expected fewer");
        }
        boolean near = Stream.of(geometry.getCoordinates())
                .allMatch(c -> Math.abs(c.x) <= Lengths.LARGEST_MM && Math.abs(c.y) <= Lengths.LARGEST_MM);
        if (!near) {
            notes.complain(origin, column, "found a point beyond 1 km from the datum");
        }
    }

    /** Not so of what is no number either. */
    private void within(Origin origin, String column, @Nullable Double value, double low, double high) {
        if (value != null && !(value >= low && value <= high)) {
            String expected = "a number from " + Numerals.plain(low) + " to " + Numerals.plain(high);
            notes.expected(origin, column, String.valueOf(value), expected);
        }
    }

    private <T> void once(String what, List<T> things, Function<T, String> name) {
        Set<String> seen = new HashSet<>();
        for (T thing : things) {
            if (!seen.add(name.apply(thing))) {
                String problem = "two " + what + "s are called \"" + name.apply(thing) + "\"";
                notes.complain(new Origin(what + "s", 0), "name", problem);
            }
        }
    }

    private static <T> Set<String> names(List<T> things, Function<T, String> name) {
        return things.stream().map(name).collect(Collectors.toSet());
    }

    private void known(Origin origin, String column, String name, Set<String> names) {
        if (!names.contains(name)) {
            String expected = names.isEmpty()
                    ? "none, as the survey has no " + column
                    : Words.or(names.stream().sorted().limit(20).toList());
            notes.expected(origin, column, Objects.toString(name), expected);
        }
    }
}
