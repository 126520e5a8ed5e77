package corewright.desktop.setup;

import corewright.desktop.state.Attempts;
import corewright.desktop.state.Units;
import corewright.survey.Edit;
import corewright.survey.Face;
import corewright.survey.Heading;
import corewright.survey.Laminate;
import corewright.survey.Meter;
import corewright.survey.Part;
import corewright.survey.Survey;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Head, faces, meters, laminates and notes of the survey that is open, as words; knows no window. */
public final class SetupModel {
    private final Supplier<Survey> survey;
    private final Units units;
    private final Attempts attempts;

    /** @param survey as it is at the time */
    public SetupModel(Supplier<Survey> survey, Units units, Attempts.Edits edits) {
        this.survey = survey;
        this.units = units;
        this.attempts = new Attempts(survey, edits);
    }

    public List<SetupRow> meters() {
        return survey.get().meters().stream().map(MeterEdits::row).toList();
    }

    public List<SetupRow> laminates() {
        Survey now = survey.get();
        return now.laminates().stream()
                .map(l -> LaminateEdits.row(now, l, units))
                .toList();
    }

    /** What stands at the head of every page: one row. */
    public List<SetupRow> heading() {
        return List.of(HeadingEdits.row(survey.get().heading()));
    }

    public List<SetupRow> faces() {
        Survey now = survey.get();
        return now.faces().stream().map(f -> FaceEdits.row(now, f)).toList();
    }

    /** Head of a column, with the unit of thicknesses. */
    public String head(SetupField field) {
        return field.word() + (field.thickness() ? ", " + units.depthUnit() : "");
    }

    /** Why the last change was not made; empty where it was. */
    public String problem() {
        return attempts.problem();
    }

    /** Sets one value of the meter of that name; says whether it will do. */
    public boolean meter(String name, SetupField field, String text) {
        return attempts.make(field.word() + " of meter " + name, s -> {
            Meter before = meter(s, name);
            if (before == null) {
                return null;
            }
            Meter now = MeterEdits.changed(s, before, field, text);
            return now.equals(before) ? null : MeterEdits.edit(s, before, now);
        });
    }

    /** Sets one value of the head of every page; says whether it will do. */
    public boolean heading(SetupField field, String text) {
        return attempts.make(field.word() + " of the survey", s -> {
            Heading now = HeadingEdits.changed(s.heading(), field, text);
            return now.equals(s.heading()) ? null : Edit.put(Part.HEADING, now);
        });
    }

    /** Sets one value of the face of that name; says whether it will do. */
    public boolean face(String name, SetupField field, String text) {
        return attempts.make(field.word() + " of face " + name, s -> {
            Face before = face(s, name);
            if (before == null) {
                return null;
            }
            Face now = FaceEdits.changed(s, before, field, text);
            return now.equals(before) ? null : Edit.replace(s, Part.FACES, before, now);
        });
    }

    private static @Nullable Face face(Survey survey, String name) {
        return survey.faces().stream()
                .filter(f -> f.name().equals(name))
                .findFirst()
                .orElse(null);
    }

    /** One more face, a plain sheet whose outline is then drawn. */
    public boolean addFace() {
        return attempts.make("another face", s -> Edit.add(s, Part.FACES, FaceEdits.fresh(s)));
    }

    public boolean removeFace(String name) {
        return attempts.make("taking face " + name + " away", s -> {
            Face face = face(s, name);
            return face == null ? null : FaceEdits.remove(s, face);
        });
    }

    /** Null where it was renamed or taken away a moment ago. */
    private static @Nullable Meter meter(Survey survey, String name) {
        return survey.meters().stream()
                .filter(m -> m.name().equals(name))
                .findFirst()
                .orElse(null);
    }

    private static @Nullable Laminate laminate(Survey survey, String name) {
        return survey.laminates().stream()
                .filter(l -> l.name().equals(name))
                .findFirst()
                .orElse(null);
    }

    /** Sets one value of the laminate of that name; says whether it will do. */
    public boolean laminate(String name, SetupField field, String text) {
        return attempts.make(field.word() + " of laminate " + name, s -> {
            Laminate before = laminate(s, name);
            if (before == null) {
                return null;
            }
            boolean same = field.thickness()
                    && LaminateEdits.row(s, before, units).values().contains(SetupValue.typed(field, text.strip()));
            Laminate now = same ? before : LaminateEdits.changed(s, before, field, text, units);
            return now.equals(before) ? null : LaminateEdits.edit(s, before, now);
        });
    }

    public boolean addMeter() {
        return attempts.make("another meter", s -> Edit.add(s, Part.METERS, MeterEdits.fresh(s)));
    }

    public boolean addLaminate() {
        return attempts.make("another laminate", s -> Edit.add(s, Part.LAMINATES, LaminateEdits.fresh(s)));
    }

    public boolean removeMeter(String name) {
        return attempts.make("taking meter " + name + " away", s -> {
            Meter meter = meter(s, name);
            return meter == null ? null : MeterEdits.remove(s, meter);
        });
    }

    public boolean removeLaminate(String name) {
        return attempts.make("taking laminate " + name + " away", s -> {
            Laminate laminate = laminate(s, name);
            return laminate == null ? null : LaminateEdits.remove(s, laminate);
        });
    }

    /** What a reader should know of meters, weather and deck. */
    public String notes() {
        return survey.get().heading().notes();
    }

    public boolean notes(String text) {
        return attempts.make("notes", s -> {
            Heading h = s.heading();
            return h.notes().equals(text.strip()) ? null : Edit.put(Part.HEADING, h.withNotes(text.strip()));
        });
    }
}
