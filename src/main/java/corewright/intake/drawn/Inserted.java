package corewright.intake.drawn;

import corewright.intake.drawn.Drawing.Label;
import corewright.intake.drawn.Drawing.Place;
import corewright.intake.drawn.Drawing.Stroke;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * A block of a DXF file where it is inserted: scaled, turned, moved.
 *
 * @param place of the insert; what lies on layer 0 of the block takes its layer
 * @param name of an attribute, empty where there is none
 * @param turn radians, counter-clockwise
 */
record Inserted(Place place, String name, Coordinate at, double scaleX, double scaleY, double turn) {
    /** What a block holds. */
    record Block(Coordinate base, List<Stroke> strokes, List<Label> labels) {
        int points() {
            return strokes.stream().mapToInt(s -> s.points().size()).sum();
        }
    }

    List<Stroke> strokes(Block block) {
        return block.strokes().stream()
                .map(s -> new Stroke(
                        on(s.place()),
                        name.isEmpty() ? s.name() : name,
                        s.points().stream().map(p -> moved(p, block.base())).toList(),
                        s.closed()))
                .toList();
    }

    List<Label> labels(Block block) {
        return block.labels().stream()
                .map(l -> new Label(on(l.place()), l.text(), moved(l.at(), block.base())))
                .toList();
    }

    private Place on(Place inBlock) {
        boolean own = !inBlock.layer().equals("0") && !inBlock.layer().isEmpty();
        return new Place(own ? inBlock.layer() : place.layer(), place.number(), place.line());
    }

    private Coordinate moved(Coordinate p, Coordinate base) {
        double x = (p.x - base.x) * scaleX;
        double y = (p.y - base.y) * scaleY;
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        return new Coordinate(at.x + cos * x - sin * y, at.y + sin * x + cos * y);
    }
}
