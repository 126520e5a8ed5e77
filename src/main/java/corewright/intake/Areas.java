package corewright.intake;

import corewright.survey.Feature;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.index.strtree.STRtree;

/** Features with an area, asked for by very many places. */
final class Areas<F extends Feature> {
    private final STRtree tree = new STRtree();

    private record Area<F>(int number, F feature, IndexedPointInAreaLocator inside) {}

    Areas(List<F> features) {
        for (int i = 0; i < features.size(); i++) {
            F feature = features.get(i);
            var inside = new IndexedPointInAreaLocator(feature.geometry());
            tree.insert(feature.geometry().getEnvelopeInternal(), new Area<>(i, feature, inside));
        }
        tree.build();
    }

    /** The last feature of the plan that holds a place, or null. */
    @Nullable
    F lastAt(Coordinate place, boolean edgeCounts) {
        List<Area<F>> found = new ArrayList<>();
        tree.query(new Envelope(place), item -> {
            @SuppressWarnings("unchecked") // the constructor puts in nothing else
            Area<F> area = (Area<F>) item;
            int location = area.inside.locate(place);
            if (location == Location.INTERIOR || (edgeCounts && location == Location.BOUNDARY)) {
                found.add(area);
            }
        });
        return found.stream()
                .max(Comparator.comparingInt(Area::number))
                .map(Area::feature)
                .orElse(null);
    }
}
