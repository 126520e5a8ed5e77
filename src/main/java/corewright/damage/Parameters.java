package corewright.damage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;

/**
 * What was fitted to one state of a survey, bay by bay: range, sill and drift of every hidden field, and the bays' results,
 * so that a bay whose readings did not change need not be worked again.
 */
public final class Parameters {
    /** Nothing fitted yet. */
    public static final Parameters NONE = new Parameters(List.of(), Map.of());

    private final Map<String, BayWork> bays = new HashMap<>();
    private final Map<String, List<NextReading>> next;

    /** @param next suggested readings by face */
    Parameters(List<BayWork> works, Map<String, List<NextReading>> next) {
        this.next = Map.copyOf(next);
        works.forEach(w -> bays.put(w.input().bay().name(), w));
    }

    /** What was suggested for a face; null where it was not there. */
    @Nullable
    List<NextReading> next(String face) {
        return next.get(face);
    }

    @Nullable
    BayWork of(Bay bay) {
        return bays.get(bay.name());
    }

    /** Equally likely states of a face's core, from the same fields as its map, to be added up over any part of it. */
    public Drawn drawn(FaceDamage face) {
        List<BayWork> works = new ArrayList<>();
        for (Bay bay : face.bays()) {
            BayWork work = of(bay);
            if (work != null) {
                works.add(work);
            }
        }
        return new Drawn(works);
    }

    /** Equally likely states of a face's core. One draw speaks of the whole face. */
    public static final class Drawn {
        private final List<Bayful> bays = new ArrayList<>();

        @SuppressWarnings("ArrayRecordComponent") // handed on, never compared
        private record Bayful(BayWork work, Frame frame, byte[][] conditions) {}

        Drawn(List<BayWork> works) {
            for (BayWork work : works) {
                BayInput input = work.input();
                Frame frame =
                        Frame.over(input.face().outline(), input.numerics().cellMm());
                bays.add(new Bayful(
                        work, frame, AreaDraws.conditions(work.fields(), frame, work.draws(), work.seed() + 2)));
            }
        }

        /** Area of a condition within a part of the face, square millimetres, draw by draw: cells by their centres. */
        public List<Double> areaMm2(Geometry part, Set<Condition> which) {
            double[] area = new double[count()];
            boolean[] counts = new boolean[Condition.values().length];
            which.forEach(c -> counts[c.ordinal()] = true);
            for (Bayful bay : bays) {
                int[] cells = own(bay, part);
                for (int d = 0; d < area.length; d++) {
                    byte[] condition = bay.conditions[d];
                    for (int slot : cells) {
                        area[d] += counts[condition[slot]] ? bay.frame.cellMm2() : 0;
                    }
                }
            }
            return Arrays.stream(area).boxed().toList();
        }

        /** Empty space within a part of the face, cubic millimetres, draw by draw. */
        public List<Double> voidMm3(Geometry part) {
            double[] volume = new double[count()];
            for (Bayful bay : bays) {
                int[] partOf = new int[bay.work.fields().cells.length];
                Arrays.fill(partOf, -1);
                for (int slot : own(bay, part)) {
                    partOf[slot] = 0;
                }
                double[] drawn = bay.work.draws().volumesMm3(partOf, 1)[0];
                for (int d = 0; d < volume.length; d++) {
                    volume[d] += drawn[d];
                }
            }
            return Arrays.stream(volume).boxed().toList();
        }

        private int count() {
            return bays.isEmpty() ? 0 : bays.get(0).conditions.length;
        }

        private static int[] own(Bayful bay, Geometry part) {
            IntPredicate in = bay.frame.in(part);
            BayFields fields = bay.work.fields();
            return IntStream.range(0, fields.cells.length)
                    .filter(i -> fields.inside[i] && in.test(fields.cells[i]))
                    .toArray();
        }
    }
}
