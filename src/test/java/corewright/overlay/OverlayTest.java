package corewright.overlay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

class OverlayTest {
    /** Areas that overlap in one place and touch in another leave an area and a line; that is then laid over others. */
    @Test
    void whatAnOverlayLeavesCanBeLaidOverOthers() throws ParseException {
        Geometry hook = wkt("POLYGON((0 0,10 0,10 10,6 10,6 4,4 4,4 10,0 10,0 0))");
        Geometry beside = wkt("POLYGON((2 10,3 10,3 6,5 6,5 10,8 10,8 20,2 20,2 10))");
        Geometry mixed = Overlay.intersection(hook, beside);
        assertThat(mixed.getGeometryType()).isEqualTo("GeometryCollection");

        Geometry all = wkt("POLYGON((0 0,20 0,20 20,0 20,0 0))");
        assertThat(Overlay.intersection(mixed, all).getArea()).isCloseTo(mixed.getArea(), within(1e-9));
        assertThat(Overlay.difference(all, mixed).getArea()).isCloseTo(400 - mixed.getArea(), within(1e-9));
        assertThat(Overlay.union(mixed, all).getArea()).isCloseTo(400, within(1e-9));
    }

    private static Geometry wkt(String text) throws ParseException {
        return new WKTReader().read(text);
    }
}
