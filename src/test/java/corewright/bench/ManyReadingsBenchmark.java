package corewright.bench;

import com.sun.management.OperatingSystemMXBean;
import corewright.damage.Damage;
import corewright.damage.DamageMap;
import corewright.desktop.state.NewSurvey;
import corewright.reuse.Memory;
import corewright.survey.Meter;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Side;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.locationtech.jts.geom.Envelope;

/**
 * A whole damage map of very many moisture readings on a deck of 12 x 4 m at 25 mm, twelve leaks: time and the largest heap.
 * Run: {@code MAVEN_OPTS=-Xmx1g mvn -q test-compile exec:java -Dexec.classpathScope=test
 * -Dexec.mainClass=corewright.bench.ManyReadingsBenchmark -Dexec.args=COUNT}.
 */
public final class ManyReadingsBenchmark {
    private static final Origin NOWHERE = new Origin("benchmark", 0);

    private ManyReadingsBenchmark() {}

    /** @param arguments how many readings */
    public static void main(String[] arguments) {
        Survey survey = survey(Integer.parseInt(arguments[0]));
        var machine = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
        long busy = machine.getProcessCpuTime();
        long from = System.nanoTime();
        DamageMap map = Damage.fit(survey, new Memory()).map();
        double seconds = (System.nanoTime() - from) / 1e9;
        double heap = ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(p -> p.getType() == MemoryType.HEAP)
                .map(MemoryPoolMXBean::getPeakUsage)
                .mapToDouble(u -> u.getUsed() / 1e6)
                .sum();
        System.out.printf(
                Locale.ROOT,
                "%d readings: %.1f s, processor %.1f s, largest heap %.0f MB, %d regions%n",
                survey.readings().moisture().size(),
                seconds,
                (machine.getProcessCpuTime() - busy) / 1e9,
                heap,
                map.regions().size());
    }

    /** About so many readings. */
    static Survey survey(int count) {
        Random random = new Random(5);
        int columns = (int) Math.round(Math.sqrt(3.0 * count));
        int rows = count / columns;
        List<Moisture> moisture = new ArrayList<>();
        for (int i = 0; i < columns; i++) {
            for (int j = 0; j < rows; j++) {
                Spot spot = new Spot("deck", 12_000 * (i + 0.5) / columns, -2000 + 4000 * (j + 0.5) / rows);
                double value = Math.max(0, Math.rint(10 + 40 * wet(spot) + 2 * random.nextGaussian()));
                String id = "M" + moisture.size();
                moisture.add(new Moisture(NOWHERE, id, spot, value, false, "A", null, null, false, Side.OUTER, ""));
            }
        }
        Survey empty =
                NewSurvey.of("benchmark", "deck", LocalDate.of(2026, 4, 2), new Envelope(0, 12_000, -2000, 2000));
        Survey metered = Part.METERS.with(empty, List.of(new Meter("A", Meter.Kind.RELATIVE, 100, 10.0, 25.0)));
        return Part.MOISTURE.with(metered, moisture);
    }

    private static double wet(Spot spot) {
        double wet = 0;
        for (int k = 0; k < 12; k++) {
            double far = Math.hypot(spot.xMm() - 500 - 1000 * k, spot.yMm() - 1500 * Math.sin(2.1 * k));
            wet = Math.max(wet, Math.exp(-far * far / 8e4));
        }
        return wet;
    }
}
