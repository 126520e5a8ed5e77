package corewright.store;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryCollection;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.io.ByteOrderValues;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKBReader;
import org.locationtech.jts.io.WKBWriter;

/** Geometries as GeoPackage stores them: a small header, then well-known binary (OGC 12-128r18, 2.1.3). */
final class GeometryBlob {
    /** Undefined Cartesian reference system. */
    static final int SRS = -1;

    private static final int HEADER = 8;
    private static final int ENVELOPE = 32;
    private static final int LITTLE_ENDIAN = 1;
    private static final int WITH_XY_ENVELOPE = 1 << 1;
    /** Bytes of the envelope for each of its indicator's values. */
    private static final int[] ENVELOPES = {0, 32, 48, 48, 64};

    /** Collections in collections; a plan has none in another. */
    private static final int DEEPEST = 8;

    private static final String TOO_DEEP = "geom: found a geometry nested deeper than " + DEEPEST + " collections";

    private static final int WKB_POINT = 1;
    /** Header, byte order, type, x, y. */
    private static final int POINT_LENGTH = HEADER + 1 + 4 + 8 + 8;

    private GeometryBlob() {}

    /** A point carries no envelope, everything else does. */
    static byte[] write(Geometry geometry) {
        byte[] wkb = new WKBWriter(2, ByteOrderValues.LITTLE_ENDIAN).write(geometry);
        boolean bare = geometry instanceof Point;
        ByteBuffer blob = ByteBuffer.allocate(HEADER + (bare ? 0 : ENVELOPE) + wkb.length)
                .order(ByteOrder.LITTLE_ENDIAN)
                .put((byte) 'G')
                .put((byte) 'P')
                .put((byte) 0)
                .put((byte) (bare ? LITTLE_ENDIAN : LITTLE_ENDIAN | WITH_XY_ENVELOPE))
                .putInt(SRS);
        if (!bare) {
            Envelope e = geometry.getEnvelopeInternal();
            blob.putDouble(e.getMinX()).putDouble(e.getMaxX());
            blob.putDouble(e.getMinY()).putDouble(e.getMaxY());
        }
        return blob.put(wkb).array();
    }

    /** The places of a blob; a point of ours, as nearly every row has, is read without making a geometry of it. */
    static Coordinate[] coordinates(byte[] blob) {
        boolean point = blob.length == POINT_LENGTH
                && blob[0] == 'G'
                && blob[1] == 'P'
                && blob[3] == LITTLE_ENDIAN
                && blob[HEADER] == LITTLE_ENDIAN;
        if (!point) {
            return read(blob).getCoordinates();
        }
        ByteBuffer bytes = ByteBuffer.wrap(blob).order(ByteOrder.LITTLE_ENDIAN);
        if (bytes.getInt(HEADER + 1) != WKB_POINT) {
            return read(blob).getCoordinates();
        }
        return new Coordinate[] {new Coordinate(bytes.getDouble(HEADER + 5), bytes.getDouble(HEADER + 13))};
    }

    /**
     * The geometry.
     *
     * @throws IllegalArgumentException where the bytes are none
     */
    static Geometry read(byte[] blob) {
        if (blob.length < HEADER || blob[0] != 'G' || blob[1] != 'P') {
            throw new IllegalArgumentException("geom: found no GeoPackage geometry");
        }
        int envelope = (blob[3] >> 1) & 7;
        if (envelope >= ENVELOPES.length || blob.length < HEADER + ENVELOPES[envelope]) {
            throw new IllegalArgumentException("geom: found a geometry with a damaged header");
        }
        int start = HEADER + ENVELOPES[envelope];
        byte[] wkb = Arrays.copyOfRange(blob, start, blob.length);
        try {
            Geometry geometry = new WKBReader().read(wkb);
            if (isDeeper(geometry, DEEPEST)) {
                throw new IllegalArgumentException(TOO_DEEP);
            }
            if (geometry.isEmpty()) {
                throw new IllegalArgumentException("geom: found an empty geometry");
            }
            return geometry;
        } catch (ParseException | RuntimeException e) {
            throw new IllegalArgumentException("geom: found a damaged geometry (" + e.getMessage() + ")", e);
        } catch (StackOverflowError e) { // the reader calls itself for every collection in a collection
            throw new IllegalArgumentException(TOO_DEEP, e);
        }
    }

    private static boolean isDeeper(Geometry geometry, int most) {
        if (!(geometry instanceof GeometryCollection)) {
            return false;
        }
        boolean deeper = most == 0;
        for (int i = 0; i < geometry.getNumGeometries() && !deeper; i++) {
            deeper = isDeeper(geometry.getGeometryN(i), most - 1);
        }
        return deeper;
    }
}
