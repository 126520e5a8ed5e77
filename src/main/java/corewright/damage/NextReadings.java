package corewright.damage;

import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Spot;
import corewright.survey.settings.Thresholds;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Point;

/**
 * Where one more reading tells most. For water and looseness the uncertainty P(1 − P) is summed over what a reading there
 * would inform, the best place taken, its surroundings counted as known, and so on; for probes the draws tell how much of
 * the volume's variance a depth there explains.
 */
final class NextReadings {
    static final int MOST = 20;
    private static final int MOST_OF_A_KIND = 8;

    /** A reading informs about half the distance to its neighbours, and never more than this, common practice. */
    private static final double WIDEST_MM = 300;

    /** A place that would settle less than this share of what is open is not worth the walk. */
    private static final double LEAST_SHARE = 0.01;

    private record Candidate(NextReading.Kind kind, Spot spot, double gain, NextReading.Unit unit, double share) {}

    private NextReadings() {}

    /** At most {@link #MOST} places of a face, ranked by the share of their question's uncertainty they settle. */
    static List<NextReading> of(Face face, Frame frame, List<BayFields> bays, List<VoidDraws> draws, Thresholds t) {
        List<Candidate> candidates = new ArrayList<>();
        Fit moisture = new Fit(face, frame, t.metalInfluenceMm());
        Fit taps = new Fit(face, frame, 0);
        candidates.addAll(byProbability(NextReading.Kind.MOISTURE, moisture, bays));
        candidates.addAll(byProbability(NextReading.Kind.TAP, taps, bays));
        candidates.addAll(probes(taps, bays, draws));
        candidates.sort(Comparator.comparingDouble(Candidate::share).reversed());
        List<NextReading> ranked = new ArrayList<>();
        for (Candidate c : candidates.subList(0, Math.min(MOST, candidates.size()))) {
            ranked.add(new NextReading(ranked.size() + 1, c.kind, c.spot, c.gain, c.unit));
        }
        return ranked;
    }

    /** Where a reading of a kind can be taken. */
    private record Fit(Face face, Frame frame, double clearOfMetalMm) {
        boolean possible(int cell) {
            Point point = face.outline()
                    .getFactory()
                    .createPoint(new Spot(face.name(), frame.x(cell), frame.y(cell)).coordinate());
            for (Feature f : face.features()) {
                boolean metal = f instanceof Feature.Disturbance || (f instanceof Feature.Fitting x && x.metal());
                boolean inTheWay = f instanceof Feature.Fitting && f.geometry().isWithinDistance(point, frame.cellMm());
                if (inTheWay || (metal && f.geometry().isWithinDistance(point, clearOfMetalMm))) {
                    return false;
                }
            }
            return true;
        }
    }

    private static List<Candidate> byProbability(NextReading.Kind kind, Fit fit, List<BayFields> bays) {
        double areaMm2 = bays.stream().mapToDouble(b -> b.bay.area().getArea()).sum();
        int readings = bays.stream().mapToInt(b -> seen(b, kind)).sum();
        double width = Math.min(WIDEST_MM, 0.5 * Math.sqrt(areaMm2 / Math.max(1, readings)));
        List<Spread> spreads = new ArrayList<>();
        double all = 0;
        for (BayFields bay : bays) {
            Spread spread = new Spread(fit.frame, bay, kind == NextReading.Kind.TAP ? bay.pLoose : bay.pWet, width);
            spreads.add(spread);
            all += spread.total();
        }
        List<Candidate> picked = new ArrayList<>();
        while (picked.size() < MOST_OF_A_KIND) {
            Spread best = spreads.stream()
                    .max(Comparator.comparingDouble(s -> s.best(fit)))
                    .orElse(null);
            if (best == null || best.best(fit) < LEAST_SHARE * all || all == 0) {
                break;
            }
            int cell = best.bestCell();
            double gainM2 = best.best(fit) * fit.frame.cellMm2() / 1e6;
            Spot spot = new Spot(fit.face.name(), fit.frame.x(cell), fit.frame.y(cell));
            picked.add(new Candidate(kind, spot, gainM2, NextReading.Unit.SQUARE_METRE, best.best(fit) / all));
            best.settle();
        }
        return picked;
    }

    private static int seen(BayFields bay, NextReading.Kind kind) {
        return kind == NextReading.Kind.TAP ? bay.looseSeen.size() : bay.wetSeen.size();
    }

    private static List<Candidate> probes(Fit fit, List<BayFields> bays, List<VoidDraws> draws) {
        List<Candidate> picked = new ArrayList<>();
        for (int b = 0; b < bays.size(); b++) {
            for (VoidDraws.ProbeGain gain : draws.get(b).probeGains(MOST_OF_A_KIND)) {
                int cell = bays.get(b).cells[gain.slot()];
                if (fit.possible(cell)) {
                    Spot spot = new Spot(fit.face.name(), fit.frame.x(cell), fit.frame.y(cell));
                    picked.add(new Candidate(
                            NextReading.Kind.PROBE,
                            spot,
                            gain.litres(),
                            NextReading.Unit.LITRE,
                            gain.shareOfVariance()));
                }
            }
        }
        picked.removeIf(c -> c.share < LEAST_SHARE);
        picked.sort(Comparator.comparingDouble(Candidate::gain).reversed());
        return picked.subList(0, Math.min(MOST_OF_A_KIND, picked.size()));
    }

    /** Uncertainty of one bay, and how much of it a reading at each cell would inform: a Gaussian of {@code width}. */
    private static final class Spread {
        private final Frame frame;
        private final BayFields bay;
        private final double width;
        private final double[] open;
        private double[] score = {};
        private int best = -1;
        private boolean known;

        Spread(Frame frame, BayFields bay, double[] p, double width) {
            this.frame = frame;
            this.bay = bay;
            this.width = width;
            open = new double[frame.size()];
            for (int i = 0; i < bay.cells.length; i++) {
                open[bay.cells[i]] = bay.inside[i] ? p[i] * (1 - p[i]) : 0;
            }
        }

        double total() {
            double sum = 0;
            for (double u : open) {
                sum += u;
            }
            return sum;
        }

        double best(Fit fit) {
            if (!known) {
                score = blurred();
                best = -1;
                for (int i = 0; i < bay.cells.length; i++) {
                    int cell = bay.cells[i];
                    if (bay.inside[i] && (best < 0 || score[cell] > score[best]) && fit.possible(cell)) {
                        best = cell;
                    }
                }
                known = true;
            }
            return best < 0 ? 0 : score[best];
        }

        int bestCell() {
            return best;
        }

        void settle() {
            for (int cell : bay.cells) {
                double d = Math.hypot(frame.x(cell) - frame.x(best), frame.y(cell) - frame.y(best));
                open[cell] *= 1 - Math.exp(-d * d / (2 * width * width));
            }
            known = false;
        }

        private double[] blurred() {
            int columns = frame.empty().columns();
            int rows = frame.empty().rows();
            double[] along = pass(open, rows, columns, columns, 1);
            return pass(along, columns, rows, 1, columns);
        }

        private double[] pass(double[] from, int lines, int length, int lineStride, int stride) {
            int half = (int) Math.ceil(3 * width / frame.cellMm());
            double[] kernel = new double[half + 1];
            for (int k = 0; k <= half; k++) {
                double d = k * frame.cellMm() / width;
                kernel[k] = Math.exp(-0.5 * d * d);
            }
            double[] to = new double[from.length];
            for (int line = 0; line < lines; line++) {
                for (int i = 0; i < length; i++) {
                    double u = from[line * lineStride + i * stride];
                    if (u == 0) {
                        continue;
                    }
                    for (int j = Math.max(0, i - half); j <= Math.min(length - 1, i + half); j++) {
                        to[line * lineStride + j * stride] += u * kernel[Math.abs(i - j)];
                    }
                }
            }
            return to;
        }
    }
}
