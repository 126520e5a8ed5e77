package corewright.contour;

import java.util.List;
import org.locationtech.jts.geom.Polygon;

/**
 * A part of a partitioned area that no level line crosses.
 *
 * @param above for each cut, in their order, whether the piece lies where the value is at least the level
 */
public record Piece(Polygon polygon, List<Boolean> above) {
    public Piece {
        above = List.copyOf(above);
    }

    /** Whether the piece lies on the upper side of the cut with this index. */
    public boolean above(int cut) {
        return above.get(cut);
    }
}
