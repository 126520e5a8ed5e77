package corewright;

import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import corewright.survey.settings.Settings.Terms;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/** Settings in which about every second value differs from its default, as far as the records allow. */
final class GeneratedSettings {
    private GeneratedSettings() {}

    static Settings settings(Random random) {
        Settings d = Settings.defaults();
        List<Resin> resins = new ArrayList<>();
        Resin own = nudged(d.resins().get(0), random);
        resins.add(new Resin(
                "own mix",
                own.hardenerPerResin(),
                own.densityKgM3(),
                own.expansion(),
                own.pack(),
                own.viscosityPaS(),
                own.workS(),
                own.firstRiseS(),
                own.riseEndS(),
                own.gelS(),
                own.hardS(),
                own.referenceC(),
                random.nextBoolean(),
                random.nextInt(2) * random.nextDouble(),
                random.nextInt(2) * random.nextDouble(),
                random.nextInt(2) * random.nextDouble(),
                random.nextInt(2) * random.nextDouble(),
                "data sheet: 3 \"b\""));
        resins.addAll(d.resins());
        return new Settings(
                nudged(d.thresholds(), random),
                nudged(d.drilling(), random),
                resins,
                nudged(d.costs(), random),
                new Settings.Crew(1 + random.nextInt(2)),
                nudged(d.climate(), random),
                new Settings.Numerics(20 + random.nextDouble(), 100, random.nextInt(1_000_000_000), 12),
                new Terms(
                        Terms.Display.values()[random.nextInt(2)],
                        Terms.Sign.values()[random.nextInt(2)],
                        Terms.Sign.values()[random.nextInt(2)],
                        Terms.Sheet.values()[random.nextInt(3)]),
                nudged(d.drying(), random),
                new Settings.Goal(random.nextDouble(), 100.0 * random.nextInt(90)),
                new Settings.Letterhead("Firm " + random.nextInt(9), "Quay 1, \"Haven\"", "", "logo.png"));
    }

    /** A copy with each number, one at a time, made up to a tenth larger where the record takes it. */
    private static <R extends Record> R nudged(R record, Random random) {
        R now = record;
        RecordComponent[] components = record.getClass().getRecordComponents();
        for (int i = 0; i < components.length; i++) {
            if (components[i].getType() == double.class && random.nextBoolean()) {
                now = with(now, i, 1 + 0.1 * random.nextDouble());
            }
        }
        return now;
    }

    @SuppressWarnings("unchecked")
    private static <R extends Record> R with(R record, int changed, double factor) {
        try {
            RecordComponent[] components = record.getClass().getRecordComponents();
            Object[] values = new Object[components.length];
            for (int i = 0; i < values.length; i++) {
                Object value = components[i].getAccessor().invoke(record);
                values[i] = i == changed ? (Object) ((double) value * factor) : value;
            }
            Constructor<?> canonical = record.getClass()
                    .getDeclaredConstructor(
                            Stream.of(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
            return (R) canonical.newInstance(values);
        } catch (InvocationTargetException e) {
            return record; // beyond what the record allows
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }
}
