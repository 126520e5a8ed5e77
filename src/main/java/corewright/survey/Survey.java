package corewright.survey;

import corewright.survey.settings.Settings;
import corewright.survey.settings.Thresholds;
import java.util.List;

/** One survey: everything observed, and what people decided, before anything is concluded. */
public record Survey(
        Heading heading,
        List<Face> faces,
        List<Meter> meters,
        List<Laminate> laminates,
        Materials materials,
        Readings readings,
        Settings settings,
        List<WorkEntry> log,
        List<Photo> photos,
        Judgements judgements,
        List<DeckLoad> loads,
        FrozenPlan repairPlan) {
    public Survey {
        faces = List.copyOf(faces);
        meters = List.copyOf(meters);
        laminates = List.copyOf(laminates);
        log = List.copyOf(log);
        photos = List.copyOf(photos);
        loads = List.copyOf(loads);
        if (faces.isEmpty()) {
            throw new IllegalArgumentException("a survey needs a face");
        }
        if (faces.stream().map(Face::name).distinct().count() < faces.size()) {
            throw new IllegalArgumentException("two faces of a survey have the same name");
        }
    }

    /** The same survey with other readings. */
    public Survey with(Readings others) {
        return new Survey(
                heading,
                faces,
                meters,
                laminates,
                materials,
                others,
                settings,
                log,
                photos,
                judgements,
                loads,
                repairPlan);
    }

    /** The same survey by other rules and assumptions. */
    public Survey with(Settings others) {
        return new Survey(
                heading,
                faces,
                meters,
                laminates,
                materials,
                readings,
                others,
                log,
                photos,
                judgements,
                loads,
                repairPlan);
    }

    /** The same survey with another repair plan. */
    public Survey with(FrozenPlan plan) {
        return new Survey(
                heading, faces, meters, laminates, materials, readings, settings, log, photos, judgements, loads, plan);
    }

    /** Keys of the limits that are not the default and of which nobody says who set them and why. */
    public List<String> unexplainedLimits() {
        return Thresholds.keys().stream()
                .filter(key -> settings.thresholds().of(key) != Thresholds.DEFAULT.of(key))
                .filter(key ->
                        judgements.rules().stream().noneMatch(r -> r.rule().equals(key)))
                .toList();
    }

    /** The face of that name. */
    public Face face(String name) {
        return faces.stream().filter(f -> f.name().equals(name)).findFirst().orElseThrow();
    }

    /** The meter of that name. */
    public Meter meter(String name) {
        return meters.stream().filter(m -> m.name().equals(name)).findFirst().orElseThrow();
    }

    /** The laminate of that name. */
    public Laminate laminate(String name) {
        return laminates.stream().filter(l -> l.name().equals(name)).findFirst().orElseThrow();
    }

    /** The laminate at a place: the laminate area that holds it, else the face's own. */
    public Laminate laminateAt(Spot spot) {
        return laminate(face(spot.face()).laminateAt(spot));
    }
}
