package corewright.drawing;

import corewright.survey.Finding;
import corewright.survey.Moisture;
import corewright.survey.Readings;
import corewright.survey.Sound;
import corewright.survey.Tap;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Meter readings with their taps, as marks, and which of them there is room for. */
final class ReadingMarks {
    /** A tap belongs to the reading at the same place; places are noted to a few millimetres. */
    private static final double SAME_PLACE_MM = 10;

    /** Paper left between two numbers. */
    private static final double CLEAR = 0.35;

    private ReadingMarks() {}

    static List<ReadingMark> of(MapSpec spec, PlanView view) {
        Readings readings = spec.assessment().survey().readings().on(spec.face());
        Map<String, ReadingMark.Trust> trust = trust(spec);
        List<ReadingMark> marks = new ArrayList<>();
        Map<Long, Tap> taps = new HashMap<>();
        for (Tap tap : readings.taps()) {
            taps.putIfAbsent(cell(tap.spot().xMm(), tap.spot().yMm()), tap);
        }
        Map<Long, Boolean> used = new HashMap<>();
        for (Moisture m : readings.moisture()) {
            long cell = cell(m.spot().xMm(), m.spot().yMm());
            Tap tap = taps.get(cell);
            if (used.putIfAbsent(cell, true) != null) {
                continue; // a repeat: the first stands for the place
            }
            Point2D at = view.at(m.spot());
            String text = (m.offScale() ? ">" : "") + Figures.atMost(m.value(), 0);
            ReadingMark.Trust t = trust.getOrDefault(m.id(), ReadingMark.Trust.TAKEN);
            marks.add(new ReadingMark(at.getX(), at.getY(), text, m.offScale(), lines(tap), t));
        }
        for (Tap tap : readings.taps()) {
            if (used.putIfAbsent(cell(tap.spot().xMm(), tap.spot().yMm()), true) == null) {
                Point2D at = view.at(tap.spot());
                marks.add(new ReadingMark(at.getX(), at.getY(), "", false, lines(tap), ReadingMark.Trust.TAKEN));
            }
        }
        return marks;
    }

    private static long cell(double xMm, double yMm) {
        return Math.round(xMm / SAME_PLACE_MM) * 1_000_003L + Math.round(yMm / SAME_PLACE_MM);
    }

    /** A contact time alone is no call by ear: it shows as a place that was tapped. */
    private static int lines(@org.jspecify.annotations.Nullable Tap tap) {
        if (tap == null || tap.sound() == null || tap.sound() == Sound.SOUND) {
            return 0;
        }
        return tap.sound() == Sound.DULL ? 1 : 2;
    }

    private static Map<String, ReadingMark.Trust> trust(MapSpec spec) {
        Map<String, ReadingMark.Trust> trust = new HashMap<>();
        for (Finding f : spec.damage().findings()) {
            if (f.severity() == Finding.Severity.DOUBT && !f.id().isEmpty()) {
                boolean aside = (f.subject() + " " + f.message() + " " + f.effect()).contains("set aside");
                trust.merge(
                        f.id(),
                        aside ? ReadingMark.Trust.SET_ASIDE : ReadingMark.Trust.DOUBTED,
                        (a, b) -> a.compareTo(b) >= 0 ? a : b);
            }
        }
        return trust;
    }

    /** Those that stay clear of what is already on the paper and of each other, in the order they were read. */
    static List<ReadingMark> thinned(List<ReadingMark> marks, Obstacles taken) {
        Obstacles all = taken.copy();
        List<ReadingMark> kept = new ArrayList<>();
        for (ReadingMark mark : marks) {
            Box box = mark.box().grown(CLEAR / 2);
            if (all.free(box)) {
                kept.add(mark);
                all.add(box);
            }
        }
        return kept;
    }
}
