package corewright.desktop.touch;

import corewright.desktop.state.Typed;
import corewright.desktop.state.Units;
import corewright.drawing.kit.Figures;
import corewright.survey.EdgeSupport;
import corewright.survey.Feature;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is said of a feature besides its name and shape: as shown, and as a feature with one thing as typed. */
final class FeatureFacts {
    private static final String EDGE = "edge";
    private static final String COAMING = "coaming";
    private static final String METAL = "metal";
    private static final String LOAD = "load";
    private static final String KEEP_OUT = "keepout";
    private static final String LAMINATE = "laminate";
    private static final List<String> YES_NO = List.of(ReadingTexts.NO, ReadingTexts.YES);
    private static final double FARTHEST_MM = 2000;
    private static final double HIGHEST_MM = 1000;
    private static final int LONGEST_NAME = 60;

    /** "40 x 12": height and thickness. */
    private static final Pattern BEAM =
            Pattern.compile("([0-9]{1,4}(?:[.,][0-9]{1,3})?)\\s*[x\u00d7*]\\s*([0-9]{1,4}(?:[.,][0-9]{1,3})?)");

    private FeatureFacts() {}

    static List<FormField> fields(Feature feature, Units units, List<String> laminates) {
        if (feature instanceof Feature.Opening o) {
            return List.of(
                    new FormField(EDGE, "its edge is", word(o.edge()), edges()),
                    new FormField(
                            COAMING,
                            "coaming, height x thickness, " + units.depthUnit(),
                            o.coaming().map(c -> beam(c, units)).orElse(""),
                            List.of()));
        }
        if (feature instanceof Feature.Support s) {
            return List.of(new FormField(EDGE, "it holds the panel", word(s.edge()), edges()));
        }
        if (feature instanceof Feature.Fitting f) {
            return List.of(
                    new FormField(METAL, "metal", yes(f.metal()), YES_NO),
                    new FormField(LOAD, "carries load", yes(f.loadBearing()), YES_NO),
                    new FormField(
                            KEEP_OUT, "keep-out, " + units.depthUnit(), plain(units.typed(f.keepoutMm())), List.of()));
        }
        if (feature instanceof Feature.LaminateArea a) {
            return List.of(new FormField(LAMINATE, "laminate", a.laminate(), laminates));
        }
        return List.of();
    }

    static Feature named(Feature f, String name) throws Typed {
        if (name.length() > LONGEST_NAME) {
            throw new Typed("A name has at most " + LONGEST_NAME + " letters.");
        }
        if (f instanceof Feature.Opening o) {
            return new Feature.Opening(o.origin(), name, o.geometry(), o.edge(), o.coaming());
        }
        if (f instanceof Feature.Divider d) {
            return new Feature.Divider(d.origin(), name, d.geometry());
        }
        if (f instanceof Feature.Support s) {
            return new Feature.Support(s.origin(), name, s.geometry(), s.edge());
        }
        if (f instanceof Feature.Fitting t) {
            return new Feature.Fitting(t.origin(), name, t.geometry(), t.metal(), t.loadBearing(), t.keepoutMm());
        }
        if (f instanceof Feature.Solid s) {
            return new Feature.Solid(s.origin(), name, s.geometry());
        }
        if (f instanceof Feature.LaminateArea a) {
            return new Feature.LaminateArea(a.origin(), name, a.geometry(), a.laminate());
        }
        return f instanceof Feature.Disturbance d
                ? new Feature.Disturbance(d.origin(), name, d.geometry())
                : new Feature.Access(f.origin(), name, f.geometry());
    }

    /** The feature with one fact as typed. */
    static Feature with(Feature feature, String fact, String text, Units units) throws Typed {
        if (feature instanceof Feature.Opening o) {
            return fact.equals(EDGE) ? edged(o, edge(text)) : coamed(o, text, units);
        }
        if (feature instanceof Feature.Support s) {
            return new Feature.Support(s.origin(), s.name(), s.geometry(), edge(text));
        }
        if (feature instanceof Feature.LaminateArea a) {
            return new Feature.LaminateArea(a.origin(), a.name(), a.geometry(), text);
        }
        Feature.Fitting f = (Feature.Fitting) feature;
        boolean yes = text.equals(ReadingTexts.YES);
        return new Feature.Fitting(
                f.origin(),
                f.name(),
                f.geometry(),
                fact.equals(METAL) ? yes : f.metal(),
                fact.equals(LOAD) ? yes : f.loadBearing(),
                fact.equals(KEEP_OUT) ? keepOut(f, text, units) : f.keepoutMm());
    }

    private static double keepOut(Feature.Fitting f, String text, Units units) throws Typed {
        double most = units.typed(FARTHEST_MM);
        return text.equals(plain(units.typed(f.keepoutMm())))
                ? f.keepoutMm()
                : units.mm(Typed.number(
                        "The keep-out", text, 0, most, "0 to " + Math.round(most) + " " + units.depthUnit()));
    }

    /** A coaming needs an edge that is free but for it. */
    private static Feature edged(Feature.Opening o, EdgeSupport edge) throws Typed {
        if (o.coaming().isPresent() && edge != EdgeSupport.FREE) {
            throw new Typed("With a coaming the edge is free but for it; clear the coaming first.");
        }
        return new Feature.Opening(o.origin(), o.name(), o.geometry(), edge, o.coaming());
    }

    private static Feature coamed(Feature.Opening o, String text, Units units) throws Typed {
        if (text.equals(o.coaming().map(c -> beam(c, units)).orElse(""))) {
            return o;
        }
        if (text.isEmpty()) {
            return new Feature.Opening(o.origin(), o.name(), o.geometry(), o.edge(), Optional.empty());
        }
        Matcher m = BEAM.matcher(text);
        double high = m.matches() ? units.mm(number(m.group(1))) : 0;
        double thick = m.matches() ? units.mm(number(m.group(2))) : 0;
        if (!(high > 0 && thick > 0 && high <= HIGHEST_MM && thick <= HIGHEST_MM)) {
            throw new Typed(
                    "The coaming reads \"" + text + "\"; expected are its height above the skin and its thickness,"
                            + " such as " + (units == Units.METRIC ? "40 x 12" : "1.6 x 0.5") + ", or nothing.");
        }
        return new Feature.Opening(
                o.origin(),
                o.name(),
                o.geometry(),
                EdgeSupport.FREE,
                Optional.of(new Feature.Coaming(high, thick, o.coaming().flatMap(Feature.Coaming::skin))));
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace(',', '.'));
    }

    private static String beam(Feature.Coaming c, Units units) {
        return plain(units.typed(c.heightMm())) + " x " + plain(units.typed(c.thicknessMm()));
    }

    static List<String> edges() {
        return Arrays.stream(EdgeSupport.values()).map(FeatureFacts::word).toList();
    }

    static String word(EdgeSupport edge) {
        return edge.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static EdgeSupport edge(String word) {
        return EdgeSupport.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    private static String yes(boolean is) {
        return is ? ReadingTexts.YES : ReadingTexts.NO;
    }

    private static String plain(double value) {
        return Figures.atMost(value, 2).replaceAll("[^0-9.]", "");
    }
}
