package corewright.drawing.placing;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.PlanView;
import corewright.drawing.marks.ReadingMark;
import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.Moisture;
import corewright.survey.Reading;
import corewright.survey.Readings;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.Subject;
import corewright.survey.Tap;
import corewright.survey.Tolerances;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Meter readings with their taps, as marks, and which of them there is room for. */
final class ReadingMarks {
    /** Paper left between two numbers of one line: a figure's width, so that two never read as one. */
    private static final double CLEAR = 1.1;

    private static final double CLEAR_OF_MARKS = 0.15;

    /** Paper left between two lines of numbers. */
    private static final double CLEAR_BELOW = 0.36;

    private ReadingMarks() {}

    static List<ReadingMark> of(MapSpec spec, PlanView view) {
        Readings readings = spec.assessment().survey().readings().on(spec.face());
        Map<Reading.Key, ReadingMark.Trust> trust = trust(spec);
        Map<Long, Tap> taps = new HashMap<>();
        readings.taps().stream()
                .filter(t -> trust.get(t.key()) != ReadingMark.Trust.SET_ASIDE)
                .forEach(t -> taps.putIfAbsent(cell(t.spot()), t));
        List<ReadingMark> marks = new ArrayList<>();
        Set<Long> used = new HashSet<>();
        for (Moisture m : standingFirst(readings.moisture(), trust)) {
            if (used.add(cell(m.spot()))) { // of repeats one stands for the place
                Tap tap = taps.get(cell(m.spot()));
                Point2D at = view.at(m.spot());
                String text = (m.offScale() ? ">" : "") + Figures.atMost(m.value(), 0);
                marks.add(
                        new ReadingMark(at.getX(), at.getY(), text, m.offScale(), lines(tap), together(trust, m, tap)));
            }
        }
        for (Tap tap : standingFirst(readings.taps(), trust)) {
            if (used.add(cell(tap.spot()))) {
                Point2D at = view.at(tap.spot());
                marks.add(new ReadingMark(
                        at.getX(),
                        at.getY(),
                        "",
                        false,
                        lines(tap),
                        trust.getOrDefault(tap.key(), ReadingMark.Trust.TAKEN)));
            }
        }
        return marks;
    }

    /** In their order, but what is set aside after everything that stands. */
    private static <R extends Reading> List<R> standingFirst(
            List<R> readings, Map<Reading.Key, ReadingMark.Trust> trust) {
        List<R> ordered = new ArrayList<>(readings);
        ordered.sort(Comparator.comparing(r -> trust.get(r.key()) == ReadingMark.Trust.SET_ASIDE));
        return ordered;
    }

    /** A number stands in brackets where it or its tap is doubted. */
    private static ReadingMark.Trust together(
            Map<Reading.Key, ReadingMark.Trust> trust, Moisture moisture, @Nullable Tap tap) {
        ReadingMark.Trust own = trust.getOrDefault(moisture.key(), ReadingMark.Trust.TAKEN);
        boolean tapDoubted = tap != null && trust.get(tap.key()) == ReadingMark.Trust.DOUBTED;
        return own == ReadingMark.Trust.TAKEN && tapDoubted ? ReadingMark.Trust.DOUBTED : own;
    }

    private static long cell(Spot spot) {
        return Math.round(spot.xMm() / Tolerances.SAME_PLACE_MM) * 1_000_003L
                + Math.round(spot.yMm() / Tolerances.SAME_PLACE_MM);
    }

    /** A contact time alone is no call by ear: it shows as a place that was tapped. */
    private static int lines(@Nullable Tap tap) {
        if (tap == null || tap.sound() == null || tap.sound() == Sound.SOUND) {
            return 0;
        }
        return tap.sound() == Sound.DULL ? 1 : 2;
    }

    private static Map<Reading.Key, ReadingMark.Trust> trust(MapSpec spec) {
        Map<Reading.Key, ReadingMark.Trust> trust = new HashMap<>();
        for (Finding f : spec.damage().findings()) {
            if (f.about() instanceof About.OfReading of) {
                trust.merge(of.reading(), trust(f.subject().standing()), (a, b) -> a.compareTo(b) >= 0 ? a : b);
            }
        }
        return trust;
    }

    private static ReadingMark.Trust trust(Subject.Standing standing) {
        return switch (standing) {
            case TAKEN -> ReadingMark.Trust.TAKEN;
            case DOUBTED -> ReadingMark.Trust.DOUBTED;
            case SET_ASIDE -> ReadingMark.Trust.SET_ASIDE;
        };
    }

    /** Dots with their lines never read as one: a line's own width apart is enough. */
    private static final double CLEAR_OF_TAPS = 0.3;

    /** Those that stay clear of what is already on the paper and of each other, in the order they were read. */
    static List<ReadingMark> thinned(List<ReadingMark> marks, Obstacles taken) {
        return thinned(marks, taken, CLEAR);
    }

    /** Taps alone, closer together. */
    static List<ReadingMark> thinnedTaps(List<ReadingMark> marks, Obstacles taken) {
        return thinned(marks, taken, CLEAR_OF_TAPS);
    }

    private static List<ReadingMark> thinned(List<ReadingMark> marks, Obstacles taken, double clear) {
        Obstacles numbers = new Obstacles();
        List<ReadingMark> kept = new ArrayList<>();
        for (ReadingMark mark : marks) {
            Box apart = mark.box().grown(clear / 2, CLEAR_BELOW / 2);
            if (taken.free(mark.box().grown(CLEAR_OF_MARKS)) && numbers.free(apart)) {
                kept.add(mark);
                numbers.add(apart);
            }
        }
        return kept;
    }
}
