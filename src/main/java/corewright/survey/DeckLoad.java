package corewright.survey;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Lineal;
import org.locationtech.jts.geom.Polygonal;

/**
 * One load on a deck, pressing inward where positive. Loads of the same load case act together.
 *
 * @param loadCase its name
 * @param face that it presses on
 * @param area what it presses on; a line for a force along it
 * @param forceN spread evenly over the area, or along the line
 * @param pressureKPa on the area besides
 * @param momentXNmm about the area's centre, pressing harder at larger x
 * @param momentYNmm the same for y
 */
public record DeckLoad(
        String loadCase,
        String face,
        Geometry area,
        double forceN,
        double pressureKPa,
        double momentXNmm,
        double momentYNmm) {
    public DeckLoad {
        if (!(area instanceof Polygonal || area instanceof Lineal)) {
            throw new IllegalArgumentException("a load presses on an area or along a line");
        }
        if (area instanceof Lineal && (pressureKPa != 0 || momentXNmm != 0 || momentYNmm != 0)) {
            throw new IllegalArgumentException("a load along a line is a force");
        }
    }
}
