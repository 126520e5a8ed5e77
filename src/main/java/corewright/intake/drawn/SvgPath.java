package corewright.intake.drawn;

import corewright.intake.text.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;

/**
 * The path of an SVG element, commands M L H V C S Q T A Z in either case, as open and closed lines.
 *
 * <p>Source: W3C, Scalable Vector Graphics 1.1 (second edition), chapter 8.3; arcs: appendix F.6.
 */
final class SvgPath {
    /** A line of a path. */
    record Sub(List<Coordinate> points, boolean closed) {}

    private final String text;
    private final double tolerance;
    private final List<Sub> subs = new ArrayList<>();
    private List<Coordinate> line = new ArrayList<>();
    private Coordinate now = new Coordinate(0, 0);
    private Coordinate start = now;
    private Coordinate control = now;
    private char before = ' ';
    private int at;
    private int points;

    private SvgPath(String text, double tolerance) {
        this.text = text;
        this.tolerance = tolerance;
    }

    /**
     * The lines of a path.
     *
     * @throws IllegalArgumentException a sentence, where the text is no path
     */
    static List<Sub> parse(String text, double tolerance) {
        return new SvgPath(text, tolerance).parse();
    }

    private List<Sub> parse() {
        char command = ' ';
        for (skip(); at < text.length(); skip()) {
            char c = text.charAt(at);
            if (Character.isLetter(c)) {
                command = c;
                at++;
            } else if (command == ' ' || command == 'Z' || command == 'z') {
                throw new IllegalArgumentException("expected a path command at character " + (at + 1));
            }
            if (subs.isEmpty() && line.isEmpty() && Character.toUpperCase(command) != 'M') {
                throw new IllegalArgumentException("expected the path to begin with M");
            }
            step(command);
            before = Character.toUpperCase(command);
            command = command == 'M' ? 'L' : command == 'm' ? 'l' : command;
            if (points + line.size() > Drawing.MOST_POINTS) {
                throw new IllegalArgumentException("expected at most " + Drawing.MOST_POINTS + " points");
            }
        }
        finish(false);
        return subs;
    }

    private void step(char command) {
        boolean relative = Character.isLowerCase(command);
        switch (Character.toUpperCase(command)) {
            case 'M' -> {
                finish(false);
                start = place(relative);
                to(start);
            }
            case 'L' -> to(place(relative));
            case 'H' -> to(new Coordinate(number() + (relative ? now.x : 0), now.y));
            case 'V' -> to(new Coordinate(now.x, number() + (relative ? now.y : 0)));
            case 'C' -> cubic(place(relative), place(relative), place(relative));
            case 'S' -> cubic(reflected("CS"), place(relative), place(relative));
            case 'Q' -> quadratic(place(relative), place(relative));
            case 'T' -> quadratic(reflected("QT"), place(relative));
            case 'A' -> arc(relative);
            case 'Z' -> {
                finish(true);
                now = start;
            }
            default ->
                throw new IllegalArgumentException(
                        String.format(Locale.ROOT, "found the path command U+%04X", (int) command));
        }
    }

    private void to(Coordinate place) {
        begin();
        line.add(place);
        now = place;
    }

    /** After Z a path goes on from where it began. */
    private void begin() {
        if (line.isEmpty() && before == 'Z') {
            line.add(now);
        }
    }

    private void cubic(Coordinate b, Coordinate c, Coordinate d) {
        begin();
        Arcs.cubic(now, b, c, d, line);
        control = c;
        now = d;
    }

    private void quadratic(Coordinate q, Coordinate end) {
        begin();
        Coordinate b = new Coordinate(now.x + 2 * (q.x - now.x) / 3, now.y + 2 * (q.y - now.y) / 3);
        Coordinate c = new Coordinate(end.x + 2 * (q.x - end.x) / 3, end.y + 2 * (q.y - end.y) / 3);
        Arcs.cubic(now, b, c, end, line);
        control = q;
        now = end;
    }

    private Coordinate reflected(String curves) {
        return curves.indexOf(before) < 0 ? now : new Coordinate(2 * now.x - control.x, 2 * now.y - control.y);
    }

    /** Appendix F.6.5: from the two ends to the centre; symbols as printed. */
    private void arc(boolean relative) {
        double rx = Math.abs(number());
        double ry = Math.abs(number());
        double phi = Math.toRadians(number() % 360);
        boolean large = flag();
        boolean sweep = flag();
        Coordinate end = place(relative);
        if (rx == 0 || ry == 0 || end.equals2D(now)) {
            to(end);
            return;
        }
        begin();
        double cos = Math.cos(phi);
        double sin = Math.sin(phi);
        double x1 = cos * (now.x - end.x) / 2 + sin * (now.y - end.y) / 2;
        double y1 = -sin * (now.x - end.x) / 2 + cos * (now.y - end.y) / 2;
        double lambda = x1 * x1 / (rx * rx) + y1 * y1 / (ry * ry);
        double grow = Math.max(1, Math.sqrt(lambda));
        rx *= grow;
        ry *= grow;
        double square =
                (rx * rx * ry * ry - rx * rx * y1 * y1 - ry * ry * x1 * x1) / (rx * rx * y1 * y1 + ry * ry * x1 * x1);
        double k = (large == sweep ? -1 : 1) * Math.sqrt(Math.max(0, square));
        double cx1 = k * rx * y1 / ry;
        double cy1 = -k * ry * x1 / rx;
        double cx = cos * cx1 - sin * cy1 + (now.x + end.x) / 2;
        double cy = sin * cx1 + cos * cy1 + (now.y + end.y) / 2;
        double from = Math.atan2((y1 - cy1) / ry, (x1 - cx1) / rx);
        double turn = Math.atan2((-y1 - cy1) / ry, (-x1 - cx1) / rx) - from;
        turn += sweep && turn < 0 ? 2 * Math.PI : !sweep && turn > 0 ? -2 * Math.PI : 0;
        int n = new Arcs(tolerance).chords(Math.max(rx, ry), turn);
        for (int i = 1; i < n; i++) {
            double angle = from + turn * i / n;
            double x = rx * Math.cos(angle);
            double y = ry * Math.sin(angle);
            line.add(new Coordinate(cx + cos * x - sin * y, cy + sin * x + cos * y));
        }
        to(end);
    }

    private void finish(boolean closed) {
        if (line.size() > 1) {
            points += line.size();
            subs.add(new Sub(line, closed));
        }
        line = new ArrayList<>();
    }

    private Coordinate place(boolean relative) {
        double x = number();
        double y = number();
        return relative ? new Coordinate(now.x + x, now.y + y) : new Coordinate(x, y);
    }

    private boolean flag() {
        skip();
        if (at < text.length() && (text.charAt(at) == '0' || text.charAt(at) == '1')) {
            return text.charAt(at++) == '1';
        }
        throw new IllegalArgumentException("expected 0 or 1 at character " + (at + 1));
    }

    /** A number ends where it can go on no longer: {@code 1.5.5-2} are three. */
    private double number() {
        skip();
        int from = at;
        boolean dot = false;
        boolean exponent = false;
        for (; at < text.length(); at++) {
            char c = text.charAt(at);
            boolean sign = (c == '-' || c == '+') && (at == from || "eE".indexOf(text.charAt(at - 1)) >= 0);
            boolean newDot = c == '.' && !dot && !exponent;
            boolean newExponent = (c == 'e' || c == 'E') && !exponent && at > from;
            if (!sign && !newDot && !newExponent && (c < '0' || c > '9')) {
                break;
            }
            dot |= newDot;
            exponent |= newExponent;
        }
        Double number = Decimals.parse(text.substring(from, at), 1e9);
        if (number == null) {
            throw new IllegalArgumentException("expected a number within 1e9 at character " + (from + 1));
        }
        return number;
    }

    private void skip() {
        while (at < text.length() && (Character.isWhitespace(text.charAt(at)) || text.charAt(at) == ',')) {
            at++;
        }
    }
}
