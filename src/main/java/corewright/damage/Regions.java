package corewright.damage;

import corewright.contour.Coverage;
import corewright.contour.Cut;
import corewright.contour.Labelled;
import corewright.contour.LevelPartition;
import corewright.contour.Piece;
import corewright.contour.Raster;
import corewright.overlay.Overlay;
import corewright.survey.settings.Thresholds;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** One bay parted exactly into conditions along the lines where a probability passes "likely". */
final class Regions {
    private final BayFields fields;
    private final Frame frame;
    private final Thresholds thresholds;
    private final Raster wet;
    private final Raster loose;
    private final Raster empty;
    private final Map<Condition, List<Polygon>> possible = new EnumMap<>(Condition.class);

    final List<Polygon> sound = new ArrayList<>();
    final List<RegionDraft> drafts = new ArrayList<>();

    Regions(BayFields fields, Frame frame, Thresholds thresholds, VoidDraws draws) {
        this.fields = fields;
        this.frame = frame;
        this.thresholds = thresholds;
        wet = frame.raster(fields.cells, fields.pWet);
        loose = frame.raster(fields.cells, fields.pLoose);
        empty = frame.raster(fields.cells, fields.pVoid);
        List<Labelled<Condition>> damaged = new ArrayList<>();
        for (Labelled<Condition> part : partition()) {
            if (part.label() == Condition.SOUND) {
                sound.add(part.polygon());
            } else {
                damaged.add(part);
            }
        }
        int[] partOf = cellsOf(damaged);
        double[][] volumes = draws.volumesMm3(partOf, damaged.size());
        for (int i = 0; i < damaged.size(); i++) {
            drafts.add(draft(damaged.get(i), i, partOf, volumes[i]));
        }
    }

    private List<Labelled<Condition>> partition() {
        double likely = thresholds.likely();
        List<Cut> cuts = List.of(new Cut(wet, likely), new Cut(loose, likely), new Cut(empty, likely));
        List<Labelled<Condition>> pieces = new ArrayList<>();
        for (Piece piece : LevelPartition.of(fields.bay.area(), cuts)) {
            pieces.add(new Labelled<>(piece.polygon(), condition(piece.above(0), piece.above(1), piece.above(2))));
        }
        return Coverage.dissolve(pieces, thresholds.smallestRegionMm2(), c -> c != Condition.SOUND).stream()
                .map(l -> new Labelled<>(canonical(l.polygon()), l.label()))
                .toList();
    }

    /** The same polygon with every ring from its least vertex on: overlays start rings where their hashing falls. */
    static <G extends Geometry> G canonical(G geometry) {
        geometry.normalize();
        return geometry;
    }

    private static Condition condition(boolean wet, boolean loose, boolean empty) {
        if (empty) {
            return Condition.VOID;
        }
        if (loose) {
            return wet ? Condition.WET_DELAMINATED : Condition.DELAMINATED;
        }
        return wet ? Condition.WET : Condition.SOUND;
    }

    /** For each of the bay's cells the part its centre lies in, -1 where none or outside the bay. */
    private int[] cellsOf(List<Labelled<Condition>> parts) {
        int[] partOf = new int[fields.cells.length];
        Arrays.fill(partOf, -1);
        for (int p = 0; p < parts.size(); p++) {
            IntPredicate in = frame.in(parts.get(p).polygon());
            for (int i = 0; i < partOf.length; i++) {
                if (fields.inside[i] && partOf[i] < 0 && in.test(fields.cells[i])) {
                    partOf[i] = p;
                }
            }
        }
        return partOf;
    }

    private RegionDraft draft(Labelled<Condition> part, int index, int[] partOf, double[] volumes) {
        double wetSum = 0;
        double depthSum = 0;
        double depthMax = 0;
        int count = 0;
        for (int i = 0; i < partOf.length; i++) {
            if (partOf[i] == index) {
                wetSum += fields.pWet[i];
                depthSum += fields.depthMm[i];
                depthMax = Math.max(depthMax, fields.depthMm[i]);
                count++;
            }
        }
        if (count == 0) {
            Coordinate c = part.polygon().getInteriorPoint().getCoordinate();
            int slot = fields.slot(frame.cellOf(c.x, c.y));
            wetSum = fields.pWet[slot];
            depthSum = fields.depthMm[slot];
            depthMax = depthSum;
            count = 1;
        }
        return new RegionDraft(
                fields.bay,
                part.label(),
                part.polygon(),
                possibleAround(part.label(), part.polygon()),
                wetSum / count,
                Quantiles.of(volumes),
                new RegionDraft.Depth(depthSum / count, depthMax));
    }

    /** Where the condition cannot be ruled out and which hangs together with its likely part. */
    private Geometry possibleAround(Condition condition, Polygon likely) {
        List<Geometry> joined = new ArrayList<>();
        joined.add(likely);
        for (Polygon polygon : possible.computeIfAbsent(condition, this::possible)) {
            if (polygon.relate(likely, "T********")) {
                joined.add(polygon);
            }
        }
        Geometry union = Overlay.union(joined);
        return canonical(Overlay.intersection(union, fields.bay.area()));
    }

    private List<Polygon> possible(Condition condition) {
        Stream<Raster> defining =
                switch (condition) {
                    case WET -> Stream.of(wet);
                    case DELAMINATED -> Stream.of(loose);
                    case WET_DELAMINATED -> Stream.of(wet, loose);
                    case VOID -> Stream.of(empty);
                    case SOUND -> Stream.of();
                };
        List<Cut> cuts = defining.map(r -> new Cut(r, thresholds.possible())).toList();
        List<Labelled<Boolean>> pieces = LevelPartition.of(fields.bay.area(), cuts).stream()
                .map(p -> new Labelled<>(p.polygon(), !p.above().contains(false)))
                .toList();
        return Coverage.dissolve(pieces, 0).stream()
                .filter(Labelled::label)
                .map(Labelled::polygon)
                .toList();
    }
}
