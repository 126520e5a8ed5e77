package corewright.desktop.state;

import corewright.drawing.kit.Figures;
import corewright.drawing.kit.PlaceNames;
import corewright.survey.Face;
import corewright.survey.Spot;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A place as a person types it: by its figures, "1200, -655", or by its name, "E s2". */
public final class TypedPlace {
    private static final Pattern FIGURES =
            Pattern.compile("\\s*(-?[0-9]{1,7}(?:\\.[0-9]{0,6})?)\\s*[,; ]\\s*(-?[0-9]{1,7}(?:\\.[0-9]{0,6})?)\\s*");

    private TypedPlace() {}

    /** @param units of the figures */
    public static Spot of(Face face, String text, Units units) throws Typed {
        Matcher m = FIGURES.matcher(text);
        if (m.matches()) {
            return new Spot(
                    face.name(), units.mm(Double.parseDouble(m.group(1))), units.mm(Double.parseDouble(m.group(2))));
        }
        Optional<Spot> called = PlaceNames.of(face).find(text);
        if (called.isEmpty()) {
            throw new Typed("The place reads \"" + text.strip() + "\"; expected are aft and starboard in "
                    + units.depthUnit() + ", such as " + (units == Units.METRIC ? "1200, -655" : "47.2, -25.8")
                    + ", or a name such as E s2.");
        }
        return called.get();
    }

    /** The figures of a place as they may be typed again. */
    public static String text(Spot spot, Units units) {
        return plain(units.typed(spot.xMm())) + ", " + plain(units.typed(spot.yMm()));
    }

    private static String plain(double value) {
        return Figures.atMost(value, 2).replace('\u2212', '-').replaceAll("[^0-9.-]", "");
    }
}
