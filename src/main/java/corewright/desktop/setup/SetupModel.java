package corewright.desktop.setup;

import corewright.desktop.state.Units;
import corewright.survey.Edit;
import corewright.survey.Heading;
import corewright.survey.Laminate;
import corewright.survey.Meter;
import corewright.survey.Part;
import corewright.survey.Survey;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Meters, laminates and notes of the survey that is open, as words; knows no window. */
public final class SetupModel {
    /** Where changes go. */
    public interface Edits {
        /** @param deed as undo will name it */
        void edit(String deed, Function<Survey, @Nullable Edit> change);
    }

    private final Supplier<Survey> survey;
    private final Units units;
    private final Edits edits;
    private String problem = "";

    /** @param survey as it is at the time */
    public SetupModel(Supplier<Survey> survey, Units units, Edits edits) {
        this.survey = survey;
        this.units = units;
        this.edits = edits;
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

    /** Head of a column, with the unit of thicknesses. */
    public String head(SetupField field) {
        return field.word() + (field.thickness() ? ", " + units.depthUnit() : "");
    }

    /** Why the last change was not made; empty where it was. */
    public String problem() {
        return problem;
    }

    /** Sets one value of the meter of that name; says whether it will do. */
    public boolean meter(String name, SetupField field, String text) {
        return attempt(field.word() + " of meter " + name, s -> {
            Meter before = meter(s, name);
            if (before == null) {
                return null;
            }
            Meter now = MeterEdits.changed(s, before, field, text);
            return now.equals(before) ? null : MeterEdits.edit(s, before, now);
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
        return attempt(field.word() + " of laminate " + name, s -> {
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
        return attempt("another meter", s -> Edit.add(s, Part.METERS, MeterEdits.fresh(s)));
    }

    public boolean addLaminate() {
        return attempt("another laminate", s -> Edit.add(s, Part.LAMINATES, LaminateEdits.fresh(s)));
    }

    public boolean removeMeter(String name) {
        return attempt("taking meter " + name + " away", s -> {
            Meter meter = meter(s, name);
            return meter == null ? null : MeterEdits.remove(s, meter);
        });
    }

    public boolean removeLaminate(String name) {
        return attempt("taking laminate " + name + " away", s -> {
            Laminate laminate = laminate(s, name);
            return laminate == null ? null : LaminateEdits.remove(s, laminate);
        });
    }

    /** What a reader should know of meters, weather and deck. */
    public String notes() {
        return survey.get().heading().notes();
    }

    public boolean notes(String text) {
        return attempt("notes", s -> {
            Heading h = s.heading();
            return h.notes().equals(text.strip()) ? null : Edit.put(Part.HEADING, h.withNotes(text.strip()));
        });
    }

    private interface Change {
        @Nullable
        Edit of(Survey survey) throws Typed;
    }

    /** Checked against the survey as it is, then made from the survey as it is when its turn comes. */
    private boolean attempt(String deed, Change change) {
        try {
            if (change.of(survey.get()) != null) {
                edits.edit(deed, s -> made(change, s));
            }
            problem = "";
            return true;
        } catch (Typed e) {
            problem = String.valueOf(e.getMessage());
            return false;
        }
    }

    private static @Nullable Edit made(Change change, Survey survey) {
        try {
            return change.of(survey);
        } catch (Typed e) {
            throw new IllegalStateException(e.getMessage(), e);
        }
    }
}
