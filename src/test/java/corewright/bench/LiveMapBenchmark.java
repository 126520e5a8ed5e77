package corewright.bench;

import corewright.assessment.Partial;
import corewright.damage.Damage;
import corewright.damage.Fitted;
import corewright.desktop.state.NewSurvey;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Measure;
import corewright.drawing.placing.Lettering;
import corewright.drawing.screen.ScreenLayer;
import corewright.drawing.screen.ScreenLook;
import corewright.drawing.screen.ScreenMap;
import corewright.reuse.Memory;
import corewright.survey.Edit;
import corewright.survey.Meter;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Side;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.Tap;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.locationtech.jts.geom.Envelope;

/**
 * One reading of the demo changed: until everything but stiffness is concluded anew, and what was worked anew for it. One
 * reading changed among 600 (400 moisture, 200 taps) on a deck of 3.0 x 2.0 m at 25 mm: until the map follows with its
 * parameters frozen and volumes left for later, and until it is painted; the same among 3000 (2000, 1000). Processor time is that of all threads. Run: {@code mvn -q test-compile exec:java
 * -Dexec.classpathScope=test -Dexec.mainClass=corewright.bench.LiveMapBenchmark}, with {@code demo},
 * {@code 600} or {@code 3000} for a part of it.
 */
public final class LiveMapBenchmark {
    private static final int RUNS = 50;
    private static final int WARM_UP = 15;
    private static final Origin NOWHERE = new Origin("benchmark", 0);

    private LiveMapBenchmark() {}

    /** Prints medians and the slowest of nine in ten, milliseconds. */
    public static void main(String[] args) throws IOException {
        if (args.length == 0 || args[0].equals("demo")) {
            demo();
        }
        if (args.length == 0 || args[0].equals("600")) {
            map(25, 16);
        }
        if (args.length == 0 || args[0].equals("3000")) {
            map(50, 40);
        }
    }

    private static void demo() throws IOException {
        DemoEdit edit = new DemoEdit();
        double[] concluded = new double[RUNS];
        double[] work = new double[RUNS];
        Map<String, Integer> parts = new TreeMap<>();
        for (int i = -WARM_UP; i < RUNS; i++) {
            DemoEdit.Change change = edit.next();
            if (i >= 0) {
                concluded[i] = change.ms();
                work[i] = change.busyMs();
                String worked = change.face() + " touched, worked anew: " + change.worked();
                parts.merge(worked, 1, Integer::sum);
            }
        }
        print("demo: one reading changed, everything but stiffness concluded anew", concluded);
        print("the same, processor time", work);
        parts.forEach((worked, times) -> System.out.println("  " + times + " times " + worked));
    }

    /** A reading every so many columns and rows of the deck, a tap at every other. */
    private static void map(int columns, int rows) {
        Random random = new Random(7);
        Survey survey = survey(random, columns, rows);
        System.out.println(survey.readings().moisture().size() + " moisture readings, "
                + survey.readings().taps().size() + " taps");
        long from = System.nanoTime();
        Fitted fitted = Damage.fit(survey, new Memory());
        double whole = ms(from);
        double[] follow = new double[RUNS];
        double[] work = new double[RUNS];
        double[] paint = new double[RUNS];
        for (int i = 0; i < RUNS; i++) {
            Moisture old = survey.readings().moisture().get(random.nextInt(columns * rows));
            survey = Edit.replace(survey, Part.MOISTURE, old, at(old.id(), old.spot(), 10 + random.nextInt(80)))
                    .apply(survey);
            from = System.nanoTime();
            long busy = DemoEdit.busyNs();
            fitted = Damage.follow(survey, fitted.parameters());
            follow[i] = ms(from);
            work[i] = (DemoEdit.busyNs() - busy) / 1e6;
            from = System.nanoTime();
            paint(survey, fitted);
            paint[i] = ms(from);
        }
        print("first fit", new double[] {whole});
        print("map follows one reading", follow);
        print("the same, processor time", work);
        print("plan laid out and painted, 1044 x 740", paint);
    }

    private static Survey survey(Random random, int columns, int rows) {
        Survey empty = NewSurvey.of("benchmark", "deck", LocalDate.of(2026, 4, 2), new Envelope(0, 3000, -1000, 1000));
        List<Moisture> moisture = new ArrayList<>();
        List<Tap> taps = new ArrayList<>();
        for (int i = 0; i < columns; i++) {
            for (int j = 0; j < rows; j++) {
                Spot spot = new Spot("deck", 3000.0 / columns * (i + 0.5), -1000 + 2000.0 / rows * (j + 0.5));
                double wet = Math.exp(-(Math.pow(spot.xMm() - 1200, 2) + Math.pow(spot.yMm() - 200, 2)) / 2e5);
                moisture.add(at("M" + moisture.size(), spot, Math.rint(10 + 60 * wet + 2 * random.nextGaussian())));
                if ((i + j) % 2 == 0) {
                    taps.add(new Tap(
                            NOWHERE,
                            "T" + taps.size(),
                            spot,
                            wet > 0.5 ? Sound.HOLLOW : Sound.SOUND,
                            null,
                            Side.OUTER));
                }
            }
        }
        Survey metered = Part.METERS.with(empty, List.of(new Meter("A", Meter.Kind.RELATIVE, 100, 10.0, 25.0)));
        return Part.TAPS.with(Part.MOISTURE.with(metered, moisture), taps);
    }

    private static Moisture at(String id, Spot spot, double value) {
        return new Moisture(NOWHERE, id, spot, Math.max(0, value), false, "A", null, null, false, Side.OUTER, "");
    }

    private static void paint(Survey survey, Fitted fitted) {
        Box box = new Box(0, 0, 1044 / ScreenMap.PX_PER_MM, 740 / ScreenMap.PX_PER_MM);
        var layers = EnumSet.complementOf(
                EnumSet.of(ScreenLayer.MOISTURE, ScreenLayer.STANDARD_ERROR, ScreenLayer.VOID_DEPTH));
        ScreenMap map = ScreenMap.layOut(
                Partial.mapped(survey, List.of(), fitted.map()),
                new ScreenMap.Seen(
                        "deck",
                        box,
                        ScreenMap.fitting(survey.face("deck"), box),
                        layers,
                        Lettering.onScreen(Measure.METRIC, false),
                        false));
        BufferedImage image = new BufferedImage(1044, 740, BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D g = image.createGraphics();
        map.paint(g, ScreenLook.DAY, "");
        g.dispose();
    }

    private static double ms(long from) {
        return (System.nanoTime() - from) / 1e6;
    }

    private static void print(String what, double[] ms) {
        double[] sorted = ms.clone();
        Arrays.sort(sorted);
        System.out.printf(
                Locale.ROOT,
                "%s: median %.0f ms, least %.0f, nine of ten within %.0f%n",
                what,
                sorted[sorted.length / 2],
                sorted[0],
                sorted[(int) (0.9 * (sorted.length - 1))]);
    }
}
