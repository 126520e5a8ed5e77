package corewright.intake;

import corewright.intake.drawn.Drawing.Label;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.index.strtree.STRtree;

/** The words on a drawing, each at its place, and which of them named something. */
final class DrawnWords {
    /** A word this near a point speaks of it: the keep-out round a fitting. */
    private static final double BESIDE_MM = 60;

    private final List<Label> labels;
    private final STRtree tree = new STRtree();
    private final Set<Integer> used = new HashSet<>();
    private final GeometryFactory factory = new GeometryFactory();

    /** @param labels at places of the survey */
    DrawnWords(List<Label> labels) {
        this.labels = labels.stream().filter(l -> !l.text().isBlank()).toList();
        for (int i = 0; i < this.labels.size(); i++) {
            tree.insert(new Envelope(this.labels.get(i).at()), i);
        }
        tree.build();
    }

    /** The first words in an area, or beside a line or point. */
    Optional<String> of(Geometry geometry) {
        double near = geometry.getDimension() == 2 ? 0 : BESIDE_MM;
        Envelope round = geometry.getEnvelopeInternal().copy();
        round.expandBy(near);
        List<Integer> found = new ArrayList<>();
        tree.query(round, item -> found.add((Integer) item));
        Optional<Integer> first = found.stream()
                .sorted(Comparator.naturalOrder())
                .filter(i -> geometry.distance(factory.createPoint(labels.get(i).at())) <= near)
                .findFirst();
        first.ifPresent(used::add);
        return first.map(i -> labels.get(i).text());
    }

    /** Words that named nothing, in the order of the file. */
    Stream<Label> unused() {
        return Stream.iterate(0, i -> i < labels.size(), i -> i + 1)
                .filter(i -> !used.contains(i))
                .map(labels::get);
    }
}
