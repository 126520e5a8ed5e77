package corewright.intake.drawn;

import corewright.intake.text.Clean;
import corewright.intake.text.Decimals;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.locationtech.jts.geom.util.AffineTransformation;

/** The attribute {@code transform}. Source: W3C, SVG 1.1 (second edition), chapter 7.6. */
final class SvgTransform {
    private static final Pattern ONE =
            Pattern.compile("[\\s,]*(matrix|translate|scale|rotate|skewX|skewY)\\s*\\(([^()]{0,400})\\)[\\s,]*");

    private SvgTransform() {}

    /**
     * From an element's coordinates to its parent's.
     *
     * @throws IllegalArgumentException a sentence, where the text is none
     */
    static AffineTransformation parse(String text) {
        AffineTransformation all = new AffineTransformation();
        Matcher one = ONE.matcher(text);
        int at = 0;
        while (at < text.length() && one.find(at) && one.start() == at) {
            all.composeBefore(single(one.group(1), numbers(one.group(2))));
            at = one.end();
        }
        if (at < text.length()) {
            throw new IllegalArgumentException("found the transform \"" + Clean.line(text, 60) + "\"");
        }
        return all;
    }

    private static AffineTransformation single(String kind, List<Double> n) {
        String form = kind.toLowerCase(Locale.ROOT) + n.size();
        return switch (form) {
            case "matrix6" -> new AffineTransformation(n.get(0), n.get(2), n.get(4), n.get(1), n.get(3), n.get(5));
            case "translate1" -> AffineTransformation.translationInstance(n.get(0), 0);
            case "translate2" -> AffineTransformation.translationInstance(n.get(0), n.get(1));
            case "scale1" -> AffineTransformation.scaleInstance(n.get(0), n.get(0));
            case "scale2" -> AffineTransformation.scaleInstance(n.get(0), n.get(1));
            case "rotate1" -> AffineTransformation.rotationInstance(Math.toRadians(n.get(0)));
            case "rotate3" -> AffineTransformation.rotationInstance(Math.toRadians(n.get(0)), n.get(1), n.get(2));
            case "skewx1" -> AffineTransformation.shearInstance(Math.tan(Math.toRadians(n.get(0))), 0);
            case "skewy1" -> AffineTransformation.shearInstance(0, Math.tan(Math.toRadians(n.get(0))));
            default -> throw new IllegalArgumentException("found a transform " + kind + " of " + n.size() + " numbers");
        };
    }

    /** The numbers of a list with spaces or commas between them. */
    static List<Double> numbers(String text) {
        return Stream.of(text.strip().split("[\\s,]+"))
                .filter(w -> !w.isEmpty())
                .map(SvgTransform::number)
                .toList();
    }

    private static Double number(String word) {
        Double number = Decimals.parse(word, 1e9);
        if (number == null) {
            throw new IllegalArgumentException("found \"" + Clean.line(word, 60) + "\", expected a number within 1e9");
        }
        return number;
    }
}
