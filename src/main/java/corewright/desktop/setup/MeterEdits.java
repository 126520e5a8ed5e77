package corewright.desktop.setup;

import corewright.desktop.state.Typed;
import corewright.drawing.kit.Figures;
import corewright.survey.Edit;
import corewright.survey.Meter;
import corewright.survey.Moisture;
import corewright.survey.Part;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The values of a meter: as shown, and as an edit of what is typed. */
final class MeterEdits {
    /** As in a survey folder. */
    private static final double LARGEST = 1e6;

    private static final double LEAST_SCALE = 1e-6;

    private static final List<String> KINDS = List.of("relative", "pin");

    private MeterEdits() {}

    static SetupRow row(Meter m) {
        return new SetupRow(
                m.name(),
                List.of(
                        SetupValue.typed(SetupField.NAME, m.name()),
                        new SetupValue(SetupField.KIND, m.kind().name().toLowerCase(Locale.ROOT), KINDS),
                        SetupValue.typed(SetupField.FULL_SCALE, plain(m.fullScale())),
                        SetupValue.typed(SetupField.DRY, plain(m.dry())),
                        SetupValue.typed(SetupField.WET, plain(m.wet()))));
    }

    private static String plain(@Nullable Double value) {
        return value == null ? "" : SetupText.plain(value);
    }

    /** The meter with one value as typed. */
    static Meter changed(Survey survey, Meter m, SetupField field, String text) throws Typed {
        return switch (field) {
            case NAME -> renamed(m, Typed.name("meter", text, others(survey, m)));
            case KIND ->
                new Meter(m.name(), Meter.Kind.valueOf(text.toUpperCase(Locale.ROOT)), m.fullScale(), m.dry(), m.wet());
            case FULL_SCALE -> scaled(survey, m, text);
            case DRY -> dried(m, text);
            case WET -> wetted(m, text);
            default -> throw new IllegalArgumentException("a meter has no " + field);
        };
    }

    private static List<String> others(Survey survey, Meter m) {
        return survey.meters().stream()
                .map(Meter::name)
                .filter(n -> !n.equals(m.name()))
                .toList();
    }

    private static Meter renamed(Meter m, String name) {
        return new Meter(name, m.kind(), m.fullScale(), m.dry(), m.wet());
    }

    private static Meter scaled(Survey survey, Meter m, String text) throws Typed {
        double end = Typed.number("The end of the scale", text, LEAST_SCALE, LARGEST, "a number above 0, such as 100");
        double highest = readings(survey, m).stream()
                .filter(r -> !r.offScale())
                .mapToDouble(Moisture::value)
                .max()
                .orElse(0);
        if (highest > end) {
            throw new Typed("The scale of meter " + m.name() + " cannot end at " + SetupText.plain(end) + ": "
                    + SetupText.plain(highest) + " was read with it.");
        }
        for (Double limit : new Double[] {m.dry(), m.wet()}) {
            if (limit != null && limit > end) {
                throw new Typed("The scale of meter " + m.name() + " must reach " + SetupText.plain(limit)
                        + ", which is stated as dry or wet.");
            }
        }
        return new Meter(m.name(), m.kind(), end, m.dry(), m.wet());
    }

    private static Meter dried(Meter m, String text) throws Typed {
        Double dry = Typed.numberOrNothing("Dry", text, 0, m.fullScale(), onScale(m));
        Double wet = m.wet();
        if (dry != null && wet != null && dry >= wet) {
            throw new Typed("Dry is below wet: " + SetupText.plain(dry) + " is not below " + SetupText.plain(wet)
                    + ", from which this meter reads wet.");
        }
        return new Meter(m.name(), m.kind(), m.fullScale(), dry, wet);
    }

    private static Meter wetted(Meter m, String text) throws Typed {
        Double wet = Typed.numberOrNothing("Wet", text, 0, m.fullScale(), onScale(m));
        Double dry = m.dry();
        if (dry != null && wet != null && wet <= dry) {
            throw new Typed("Wet is above dry: " + SetupText.plain(wet) + " is not above " + SetupText.plain(dry)
                    + ", which this deck reads dry.");
        }
        return new Meter(m.name(), m.kind(), m.fullScale(), dry, wet);
    }

    private static String onScale(Meter m) {
        return "a number from 0 to " + Figures.atMost(m.fullScale(), 2) + ", or nothing where it is not known";
    }

    private static List<Moisture> readings(Survey survey, Meter m) {
        return survey.readings().moisture().stream()
                .filter(r -> r.meter().equals(m.name()))
                .toList();
    }

    /** Exchanges the meter; readings go by its name. */
    static Edit edit(Survey survey, Meter before, Meter now) {
        List<Edit> edits = new ArrayList<>();
        edits.add(Edit.replace(survey, Part.METERS, before, now));
        if (!before.name().equals(now.name())) {
            List<Moisture> all = survey.readings().moisture();
            for (int i = 0; i < all.size(); i++) {
                if (all.get(i).meter().equals(before.name())) {
                    edits.add(new Edit.Replace<>(Part.MOISTURE, i, with(all.get(i), now.name())));
                }
            }
        }
        return edits.size() == 1 ? edits.get(0) : new Edit.Together(edits);
    }

    private static Moisture with(Moisture m, String meter) {
        return new Moisture(
                m.origin(),
                m.id(),
                m.spot(),
                m.value(),
                m.offScale(),
                meter,
                m.temperatureC(),
                m.taken(),
                m.reference(),
                m.side(),
                m.note());
    }

    static Meter fresh(Survey survey) {
        List<String> taken = survey.meters().stream().map(Meter::name).toList();
        return new Meter(SetupText.freeName("meter", taken), Meter.Kind.RELATIVE, 100, null, null);
    }

    /** Takes a meter away that nothing was read with. */
    static Edit remove(Survey survey, Meter m) throws Typed {
        int used = readings(survey, m).size();
        if (used > 0) {
            throw new Typed("Meter " + m.name() + " stays: " + used + (used == 1 ? " reading was" : " readings were")
                    + " taken with it.");
        }
        return Edit.remove(survey, Part.METERS, m);
    }
}
