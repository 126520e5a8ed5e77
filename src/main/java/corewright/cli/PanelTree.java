package corewright.cli;

import corewright.intake.text.Complaint;
import corewright.intake.text.LengthUnit;
import corewright.intake.text.Notes;
import corewright.intake.text.Numerals;
import corewright.intake.text.Numerals.Decimal;
import corewright.intake.text.Wkt;
import corewright.intake.yaml.YamlValue;
import corewright.intake.yaml.YamlValue.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;

/** Reads the values of a panel file; what is wrong is complained of at its own place. */
final class PanelTree {
    private final Notes notes;

    PanelTree(Notes notes) {
        this.notes = notes;
    }

    /** A value of the file. */
    record Item(YamlValue value) {
        Item child(String key) {
            return new Item(value.at(key));
        }

        boolean given() {
            return !value.isMissing();
        }

        boolean isList() {
            return value.shape() == Shape.LIST;
        }
    }

    boolean anyComplaint() {
        return notes.anyComplaint();
    }

    void complain(Item at, String problem) {
        notes.complain(at.value.origin(), at.value.path(), problem);
    }

    private void expected(Item at, String what) {
        if (at.given()) {
            notes.complain(Complaint.of(at.value.origin(), at.value.path(), at.value.found(), what));
        } else {
            complain(at, "is missing, expected " + what);
        }
    }

    /** Complains of keys that mean nothing here, and of what is not a block of keys. */
    boolean isMap(Item at, List<String> keys) {
        if (at.value.shape() != Shape.MAP) {
            expected(at, "the keys " + String.join(", ", keys));
            return false;
        }
        for (String key : at.value.fields().keySet()) {
            if (!keys.contains(key)) {
                complain(at.child(key), "is not known, expected one of " + String.join(", ", keys));
            }
        }
        return true;
    }

    List<Item> list(Item at) {
        if (at.given() && !at.isList()) {
            expected(at, "a list");
        }
        return at.value.items().stream().map(Item::new).toList();
    }

    /** NaN, with a complaint, if there is no number. */
    double number(Item at) {
        Double number = at.value.shape() == Shape.TEXT ? Numerals.parse(at.value.text(), Decimal.DOT) : null;
        if (number == null) {
            expected(at, "a number");
            return Double.NaN;
        }
        return number;
    }

    double positive(Item at) {
        double value = number(at);
        if (value <= 0) {
            expected(at, "a number above 0");
        }
        return value;
    }

    OptionalDouble optionalPositive(Item at) {
        return at.given() ? OptionalDouble.of(positive(at)) : OptionalDouble.empty();
    }

    /** A valid geometry in millimetres, not empty, of one of the kinds named; null, with a complaint, if there is none. */
    @Nullable
    Geometry geometry(Item at, String... kinds) {
        String what = "well-known text of a " + String.join(" or ", kinds);
        if (at.value.shape() != Shape.TEXT) {
            expected(at, what);
            return null;
        }
        Wkt wkt = Wkt.parse(at.value.text(), LengthUnit.MM);
        Geometry geometry = wkt.geometry();
        if (geometry == null) {
            complain(at, wkt.problem());
        } else if (!List.of(kinds).contains(geometry.getGeometryType())) {
            expected(at, what);
            return null;
        }
        return geometry;
    }

    /** A choice written with hyphens; null, with a complaint, if it is none. */
    <E extends Enum<E>> @Nullable E choice(Item at, Class<E> kind) {
        List<String> names = new ArrayList<>();
        for (E e : kind.getEnumConstants()) {
            String name = e.name().toLowerCase(Locale.ROOT).replace('_', '-');
            if (name.equals(at.value.text())) {
                return e;
            }
            names.add(name);
        }
        expected(at, "one of " + String.join(", ", names));
        return null;
    }
}
