package corewright.desktop.touch;

import corewright.desktop.sketch.FeatureShape;
import corewright.desktop.slip.Slip;
import corewright.desktop.state.Typed;
import corewright.desktop.state.TypedPlace;
import corewright.desktop.state.Units;
import corewright.drawing.kit.PlaceNames;
import corewright.survey.Edit;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Laminate;
import corewright.survey.Part;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;

/** Something drawn on a face that is touched. */
record FeatureForm(String face, Feature feature, Units units) implements Form {
    private static final String NAME = "name";
    private static final String PLACE = "place";

    @Override
    public boolean in(Survey survey) {
        return survey.faces().stream()
                .anyMatch(f -> f.name().equals(face) && f.features().contains(feature));
    }

    @Override
    public Spot spot() {
        Coordinate at = feature.geometry().getDimension() == 2
                ? feature.geometry().getInteriorPoint().getCoordinate()
                : feature.geometry().getCentroid().getCoordinate();
        return new Spot(face, at.x, at.y);
    }

    @Override
    public String called(Survey survey) {
        return feature.called();
    }

    @Override
    public Slip slip(Survey survey) {
        Face on = survey.face(face);
        Geometry g = feature.geometry();
        List<Slip.Fact> facts = new ArrayList<>();
        facts.add(new Slip.Fact("middle", PlaceNames.of(on).measured(spot().xMm(), spot().yMm(), units::place)));
        if (g.getDimension() == 2) {
            facts.add(new Slip.Fact("area", units.area(g.getArea())));
        } else if (g.getDimension() == 1) {
            facts.add(new Slip.Fact("length", units.place(g.getLength())));
        }
        String name = feature.name().isBlank() ? kind() + " without a name" : feature.name();
        return new Slip(
                Character.toUpperCase(name.charAt(0)) + name.substring(1),
                PlaceNames.of(on).at(spot().xMm(), spot().yMm()),
                Character.toUpperCase(kind().charAt(0)) + kind().substring(1) + ". " + meaning(),
                "Where it is",
                null,
                facts,
                new Slip.Work(List.of(), "", "", List.of()));
    }

    private String kind() {
        return feature.getClass()
                .getSimpleName()
                .replaceAll("(?<=[a-z])(?=[A-Z])", " ")
                .toLowerCase(java.util.Locale.ROOT);
    }

    /** What the program makes of it. */
    private String meaning() {
        if (feature instanceof Feature.Opening) {
            return "No core here; its edge holds the panel as said below.";
        }
        if (feature instanceof Feature.Divider) {
            return "Water does not cross it, and neither does an estimate.";
        }
        if (feature instanceof Feature.Support) {
            return "It bounds a panel.";
        }
        if (feature instanceof Feature.Fitting) {
            return "No hole is drilled nearer than its keep-out; metal upsets meters; under a load nothing is injected.";
        }
        if (feature instanceof Feature.Solid) {
            return "No core here.";
        }
        if (feature instanceof Feature.LaminateArea) {
            return "Built otherwise than the face around it.";
        }
        return feature instanceof Feature.Disturbance
                ? "It upsets meters."
                : "A rod or a long nozzle reaches the core here.";
    }

    @Override
    public List<FormField> fields(Survey survey) {
        List<FormField> all = new ArrayList<>();
        all.add(new FormField(NAME, NAME, feature.name(), List.of()));
        all.addAll(FeatureFacts.fields(
                feature, units, survey.laminates().stream().map(Laminate::name).toList()));
        if (feature.geometry() instanceof Point) {
            all.add(new FormField(PLACE, "place, " + units.depthUnit(), TypedPlace.text(spot(), units), List.of()));
        }
        return all;
    }

    @Override
    public @Nullable Changed changed(Survey survey, String field, String text) throws Typed {
        String typed = text.strip();
        Feature now =
                switch (field) {
                    case NAME -> FeatureFacts.named(feature, typed);
                    case PLACE -> moved(survey, typed);
                    default -> FeatureFacts.with(feature, field, typed, units);
                };
        return now.equals(feature)
                ? null
                : new Changed(
                        new FeatureForm(face, now, units), Edit.replace(survey, Part.features(face), feature, now));
    }

    private Feature moved(Survey survey, String typed) throws Typed {
        if (typed.equals(TypedPlace.text(spot(), units))) {
            return feature;
        }
        Spot to = TypedPlace.of(survey.face(face), typed, units);
        return FeatureShape.with(feature, feature.geometry().getFactory().createPoint(to.coordinate()));
    }

    @Override
    public Edit removed(Survey survey) {
        return Edit.remove(survey, Part.features(face), feature);
    }
}
