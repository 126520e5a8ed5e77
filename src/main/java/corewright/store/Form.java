package corewright.store;

import corewright.survey.Origin;
import corewright.survey.Spot;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * How a record stands in a row: a column for each component, named in snake case. An origin takes two columns; a place
 * takes {@code face} and the geometry, two places make it a line; a list is left out (it has a table of its own).
 *
 * <p>A row is an array of one value a column: null, text, whole number, number or bytes.
 */
final class Form<R extends Record> {
    static final String GEOMETRY = "geom";
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** One component's way into a row and back. */
    private interface Cell {
        void write(@Nullable Object value, @Nullable Object[] row);

        @Nullable
        Object read(@Nullable Object[] row);
    }

    private final Constructor<R> constructor;
    private final Method[] accessors;
    private final List<Cell> cells = new ArrayList<>();
    private final List<String> columns = new ArrayList<>();
    private final int places;

    Form(Class<R> type) {
        RecordComponent[] components = type.getRecordComponents();
        places = (int)
                Stream.of(components).filter(c -> c.getType() == Spot.class).count();
        accessors = Stream.of(components).map(RecordComponent::getAccessor).toArray(Method[]::new);
        try {
            constructor = type.getDeclaredConstructor(
                    Stream.of(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("a record has its canonical constructor", e);
        }
        int place = 0;
        for (RecordComponent component : components) {
            cells.add(cell(component, place));
            place += component.getType() == Spot.class ? 1 : 0;
        }
    }

    /** Names, in the order of a row's values. */
    List<String> columns() {
        return List.copyOf(columns);
    }

    @Nullable
    Object[] row(R item) {
        @Nullable Object[] row = new @Nullable Object[columns.size()];
        try {
            for (int i = 0; i < accessors.length; i++) {
                cells.get(i).write(accessors[i].invoke(item), row);
            }
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("records of a survey are public", e);
        }
        return row;
    }

    /**
     * The record in a row.
     *
     * @throws IllegalArgumentException naming the column, where a value does not fit
     */
    R item(@Nullable Object[] row) {
        @Nullable Object[] arguments = new @Nullable Object[accessors.length];
        for (int i = 0; i < arguments.length; i++) {
            arguments[i] = cells.get(i).read(row);
        }
        try {
            return constructor.newInstance(arguments);
        } catch (InvocationTargetException e) {
            throw new IllegalArgumentException(
                    Objects.requireNonNull(e.getCause()).getMessage(), e);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("found a geometry of another kind than expected", e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("records of a survey are public", e);
        }
    }

    private Cell cell(RecordComponent component, int place) {
        Class<?> type = component.getType();
        boolean mayBeNull = component.getAnnotatedType().isAnnotationPresent(Nullable.class);
        if (type == Origin.class) {
            return origin(column("origin_file"), column("origin_line"));
        }
        if (type == Spot.class) {
            return spot(column(GEOMETRY), column("face"), new Place(place, places, mayBeNull));
        }
        if (Geometry.class.isAssignableFrom(type)) {
            return geometry(column(GEOMETRY));
        }
        if (List.class.isAssignableFrom(type)) {
            return leftOut();
        }
        int at = column(snake(component.getName()));
        return scalar(at, new Scalar(type, columns.get(at), mayBeNull));
    }

    /** Its index; places share theirs. */
    private int column(String name) {
        if (!columns.contains(name)) {
            columns.add(name);
        }
        return columns.indexOf(name);
    }

    private static Cell origin(int file, int line) {
        return new Cell() {
            private final Scalar text = new Scalar(String.class, "origin_file", false);
            private final Scalar number = new Scalar(long.class, "origin_line", false);

            @Override
            public void write(@Nullable Object value, @Nullable Object[] row) {
                Origin origin = (Origin) Objects.requireNonNull(value);
                row[file] = origin.file();
                row[line] = origin.line();
            }

            @Override
            public Object read(@Nullable Object[] row) {
                return new Origin(text(text, row[file]), (Long) Objects.requireNonNull(number.read(row[line])));
            }
        };
    }

    /** One of a record's places: its index and how many there are. */
    private record Place(int index, int of, boolean mayBeNull) {}

    private static Cell spot(int geometry, int face, Place place) {
        return new Cell() {
            private final Scalar text = new Scalar(String.class, "face", false);

            @Override
            public void write(@Nullable Object value, @Nullable Object[] row) {
                if (value == null) {
                    return;
                }
                Spot spot = (Spot) value;
                row[face] = spot.face();
                if (place.of() == 1) {
                    row[geometry] = GeometryBlob.write(FACTORY.createPoint(spot.coordinate()));
                } else if (place.index() == 0) {
                    row[geometry] = spot.coordinate(); // until the line's other end is known
                } else {
                    Coordinate from = (Coordinate) Objects.requireNonNull(row[geometry]);
                    row[geometry] =
                            GeometryBlob.write(FACTORY.createLineString(new Coordinate[] {from, spot.coordinate()}));
                }
            }

            @Override
            public @Nullable Object read(@Nullable Object[] row) {
                if (row[geometry] == null && place.mayBeNull()) {
                    return null;
                }
                Coordinate[] points = GeometryBlob.coordinates(bytes(row[geometry]));
                if (points.length != place.of()) {
                    throw new IllegalArgumentException(
                            GEOMETRY + ": found " + points.length + " points, expected " + place.of());
                }
                Coordinate at = points[place.index()];
                return new Spot(text(text, row[face]), at.getX(), at.getY());
            }
        };
    }

    private static String text(Scalar scalar, @Nullable Object value) {
        return (String) Objects.requireNonNull(scalar.read(value));
    }

    private static Cell geometry(int at) {
        return new Cell() {
            @Override
            public void write(@Nullable Object value, @Nullable Object[] row) {
                row[at] = GeometryBlob.write((Geometry) Objects.requireNonNull(value));
            }

            @Override
            public Object read(@Nullable Object[] row) {
                return GeometryBlob.read(bytes(row[at]));
            }
        };
    }

    private static Cell scalar(int at, Scalar scalar) {
        return new Cell() {
            @Override
            public void write(@Nullable Object value, @Nullable Object[] row) {
                row[at] = scalar.written(value);
            }

            @Override
            public @Nullable Object read(@Nullable Object[] row) {
                return scalar.read(row[at]);
            }
        };
    }

    private static Cell leftOut() {
        return new Cell() {
            @Override
            public void write(@Nullable Object value, @Nullable Object[] row) {}

            @Override
            public Object read(@Nullable Object[] row) {
                return List.of();
            }
        };
    }

    private static byte[] bytes(@Nullable Object value) {
        if (value instanceof byte[] bytes) {
            return bytes;
        }
        throw new IllegalArgumentException(GEOMETRY + ": found no geometry");
    }

    static String snake(String component) {
        return component.replaceAll("(?<=[a-z0-9])(?=[A-Z])", "_").toLowerCase(Locale.ROOT);
    }
}
