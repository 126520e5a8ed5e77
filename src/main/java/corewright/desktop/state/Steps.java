package corewright.desktop.state;

import corewright.assessment.Ages;
import corewright.assessment.Assessment;
import corewright.drawing.kit.Figures;
import corewright.overlay.Overlay;
import corewright.reuse.Latest;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Readings;
import corewright.survey.Survey;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;

/** The state of every step in a few words. */
public final class Steps {
    private Steps() {}

    /** As it stands after a state; the slip says the whole of it, {@link Ages#WORDS}. */
    private static final String OLD = ", old";

    /** By the faces' own list: it is asked for whenever anything is shown anew. */
    private static final Latest<List<Face>, AtomicReference<Double>> CORE_MM2 =
            new Latest<>(2, () -> new AtomicReference<>(0.0));

    private static final String NOT_YET = "not calculated yet";

    /**
     * @param found null while nothing is calculated
     * @param coming whether what is missing will be calculated without being asked for
     * @param ages which states are those of before the last change
     */
    public static Map<Step, String> of(
            Survey survey, @Nullable Assessment found, boolean coming, Ages ages, Units units) {
        Map<Step, String> words = new EnumMap<>(Step.class);
        words.put(Step.PLAN, plan(survey, units));
        words.put(Step.READINGS, readings(survey, found, ages));
        if (found == null) {
            String wait = nothingRead(survey.readings()) ? "needs readings" : coming ? "working" : NOT_YET;
            words.put(Step.DAMAGE, wait);
            words.put(Step.REPAIR, wait);
            words.put(Step.STIFFNESS, wait);
        } else {
            String regions = counted(found.damage().regions().size(), "region");
            words.put(Step.DAMAGE, regions + (ages.oldMap() ? OLD : ""));
            words.put(Step.REPAIR, later(repair(found, ages), ages, coming));
            words.put(Step.STIFFNESS, later(counted(found.stiffness().panels().size(), "panel"), ages, coming));
        }
        words.put(Step.PAPERS, "not printed");
        return words;
    }

    private static String later(String state, Ages ages, boolean coming) {
        return switch (ages.rest()) {
            case FRESH -> state;
            case OLD -> state + OLD;
            case AWAITED -> coming ? "to follow" : NOT_YET;
        };
    }

    private static String plan(Survey survey, Units units) {
        double mm2 = CORE_MM2.of(survey.faces()).updateAndGet(known -> known > 0 ? known : coreMm2(survey.faces()));
        return (survey.faces().size() > 1 ? survey.faces().size() + " faces, " : "") + units.wholeArea(mm2);
    }

    private static double coreMm2(List<Face> faces) {
        double mm2 = 0;
        for (Face face : faces) {
            Geometry deck = face.outline();
            for (Feature.Opening opening : face.all(Feature.Opening.class)) {
                deck = Overlay.difference(deck, opening.geometry());
            }
            mm2 += deck.getArea();
        }
        return mm2;
    }

    private static String readings(Survey survey, @Nullable Assessment found, Ages ages) {
        int count = count(survey.readings());
        if (count == 0) {
            return "none yet";
        }
        long doubted = found == null || ages.oldRest() ? 0 : doubted(found);
        return Figures.fixed(count, 0) + (doubted > 0 ? ", " + doubted + " doubted" : "");
    }

    /** Readings that a finding doubts or sets aside. */
    static long doubted(Assessment found) {
        return found.findings().stream()
                .flatMap(f -> f.doubted().stream())
                .distinct()
                .count();
    }

    /** Whether there is nothing from which a map could be made: no moisture, no tap, no probe. */
    public static boolean nothingRead(Readings r) {
        return r.moisture().isEmpty() && r.taps().isEmpty() && r.probes().isEmpty();
    }

    static int count(Readings r) {
        return Stream.of(r.moisture(), r.taps(), r.probes(), r.feelers(), r.plugs())
                .mapToInt(Collection::size)
                .sum();
    }

    private static String repair(Assessment found, Ages ages) {
        if (found.verdict().withheld()) {
            return "no verdict";
        }
        long open = found.decision().regions().stream()
                .filter(d -> d.architect() || d.firstStep() != null)
                .count();
        if (open > 0) {
            return ages.oldRest() ? open + " open" : counted(open, "decision") + " open";
        }
        return found.decision().regions().isEmpty() ? "nothing to do" : "decided";
    }

    public static String counted(long n, String noun) {
        return n + " " + noun + (n == 1 ? "" : "s");
    }
}
