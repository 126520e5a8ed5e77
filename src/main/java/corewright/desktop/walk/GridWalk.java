package corewright.desktop.walk;

import corewright.desktop.state.Units;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.GridPoints;
import corewright.drawing.kit.PlaceNames;
import corewright.survey.Edit;
import corewright.survey.Face;
import corewright.survey.Meter;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A walk under way: which point, what is typed, what is kept. Knows no window. */
public final class GridWalk {
    private static final int LONGEST_ENTRY = 5;

    /** Where kept readings go. */
    public interface Edits {
        /** @param deed as undo will name it */
        void edit(String deed, Function<Survey, @Nullable Edit> change);
    }

    private final Face face;
    private final Meter meter;
    private final double spacingMm;
    private final Units units;
    private final Edits edits;
    private final Supplier<LocalDateTime> clock;
    private final PlaceNames names;
    private final List<Spot> points;
    private final List<String> called;
    private final List<Noted> noted = new ArrayList<>();
    private int at;
    private Noted entry = Noted.NOTHING;
    private boolean touched;
    private boolean again;
    private String replaced = "";
    private String message = "";

    /**
     * @param meter name of the meter in hand
     * @param units in which places and distances are said
     */
    public GridWalk(Survey survey, String face, String meter, double spacingMm, Units units, Edits edits) {
        this(survey, face, meter, spacingMm, units, edits, () -> LocalDateTime.now(ZoneId.systemDefault()));
    }

    /** @param clock tells when a reading is kept */
    GridWalk(
            Survey survey,
            String face,
            String meter,
            double spacingMm,
            Units units,
            Edits edits,
            Supplier<LocalDateTime> clock) {
        this.clock = clock;
        this.face = survey.face(face);
        this.meter = survey.meter(meter);
        this.spacingMm = spacingMm;
        this.units = units;
        this.edits = edits;
        names = PlaceNames.of(this.face);
        if (!GridPoints.sensible(spacingMm)) {
            throw new IllegalArgumentException("a spacing of " + units.length(GridPoints.LEAST_MM) + " to "
                    + units.length(GridPoints.MOST_MM) + ", not " + units.length(spacingMm));
        }
        points = GridPoints.over(this.face, spacingMm);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("no point of a grid of " + units.length(spacingMm) + " lies on " + face
                    + "; choose a smaller spacing");
        }
        called = WalkNames.of(names, points, units);
        points.forEach(p -> noted.add(WalkEdits.noted(survey, p, meter)));
        at = firstOpen();
        entry = noted.get(at);
    }

    private int firstOpen() {
        for (int i = 0; i < noted.size(); i++) {
            if (noted.get(i).open()) {
                return i;
            }
        }
        return 0;
    }

    // --- keys --------------------------------------------------------------------------------------------------------

    /** A figure of the value; the first one replaces what stood there. */
    public void digit(int figure) {
        String before = touched && !entry.offScale() ? entry.value() : "";
        if (before.length() < LONGEST_ENTRY) {
            enter(before.equals("0") ? "" + figure : before + figure, false);
        }
    }

    /** The decimal point. */
    public void point() {
        String before = touched && !entry.offScale() ? entry.value() : "";
        if (!before.contains(".") && before.length() < LONGEST_ENTRY - 1) {
            enter(before.isEmpty() ? "0." : before + ".", false);
        }
    }

    /** The needle is at the end of the scale or beyond. */
    public void over() {
        enter(Figures.atMost(meter.fullScale(), 1), true);
    }

    private void enter(String value, boolean off) {
        entry = new Noted(value, off, entry.tap(), "");
        touched = true;
        message = "";
    }

    /** Takes value and tap of this point away from the screen. */
    public void clear() {
        entry = Noted.NOTHING;
        touched = true;
        message = "";
    }

    public void tap(Sound sound) {
        entry = new Noted(entry.value(), entry.offScale(), sound, "");
        if (!touched) {
            touched = true;
            // a value kept before stays with its new tap
        }
        message = "";
    }

    /** Keeps this point and goes to the next. Nothing ever stops it. */
    public void next() {
        keep();
        boolean open = noted.get(at).open();
        String left = (open ? name(at) + " is left open. " : "") + replaced;
        if (at < points.size() - 1) {
            go(at + 1);
            message = left;
        } else {
            go(at);
            long missing = noted.stream().filter(Noted::open).count();
            boolean out = noted.stream().anyMatch(n -> !n.skipped().isEmpty());
            message = missing == 0
                    ? left + (out ? "Every point is read or left out." : "Every point is read.")
                    : left + "This is the last point; " + missing + " are open.";
        }
    }

    /** Takes the last figure away; where none is typed, goes back one. */
    public void backspace() {
        if (!touched || entry.value().isEmpty()) {
            back();
        } else {
            String value = entry.value();
            enter(entry.offScale() ? "" : value.substring(0, value.length() - 1), false);
        }
    }

    /** Goes back one; what is typed here is kept. */
    public void back() {
        keep();
        go(Math.max(0, at - 1));
        message = replaced;
    }

    /** Keeps this reading and takes one more at the same place. */
    public void repeat() {
        if (entry.value().isEmpty()) {
            message = "Type a value first; the next one is then a repeat of it.";
            return;
        }
        keep();
        entry = new Noted("", false, entry.tap(), "");
        touched = false;
        again = true;
        message = "Once more at " + name(at) + ": the mean counts, and the scatter says how good the meter is.";
    }

    /** Leaves this point out. */
    public void skip(String reason) {
        Noted left = new Noted("", false, null, reason.strip().isEmpty() ? "no reason given" : reason.strip());
        noted.set(at, left);
        String place = name(at);
        edits.edit("skipping " + place, s -> WalkEdits.skip(s, face.name(), place, left.skipped()));
        go(Math.min(points.size() - 1, at + 1));
        message = place + " is left out: " + left.skipped() + ".";
    }

    /** Goes to the point nearest to a place touched on the plan. */
    public void goNear(double xMm, double yMm) {
        int best = at;
        double least = Double.MAX_VALUE;
        for (int i = 0; i < points.size(); i++) {
            double d = Math.hypot(points.get(i).xMm() - xMm, points.get(i).yMm() - yMm);
            if (d < least) {
                least = d;
                best = i;
            }
        }
        keep();
        go(best);
        message = replaced;
    }

    /** Keeps what is typed, before the walk is left. */
    public void leave() {
        keep();
    }

    /**
     * The survey was changed by another hand, such as undo: what is shown of every point follows. What is typed here and not kept stays.
     *
     * @param said what was done
     */
    public void follow(Survey survey, String said) {
        for (int i = 0; i < points.size(); i++) {
            String why = noted.get(i).skipped();
            boolean out = !why.isEmpty() && WalkEdits.leftOut(survey, face.name(), name(i), why);
            Noted now = WalkEdits.noted(survey, points.get(i), meter.name());
            noted.set(i, now.open() && out ? noted.get(i) : now);
        }
        if (!touched) {
            entry = noted.get(at);
        }
        message = said;
    }

    private void go(int to) {
        at = to;
        entry = noted.get(at);
        touched = false;
        again = false;
        message = "";
    }

    private void keep() {
        replaced = "";
        Noted now =
                entry.value().endsWith(".") ? new Noted(entry.value() + "0", entry.offScale(), entry.tap(), "") : entry;
        if (!touched || now.equals(noted.get(at)) || (again && now.value().isEmpty())) {
            return;
        }
        Spot spot = points.get(at);
        boolean more = again;
        Noted before = noted.get(at);
        if (!more && !before.value().isEmpty() && !before.shown().equals(now.shown())) {
            replaced = name(at) + ": " + (now.value().isEmpty() ? "nothing" : now.shown()) + " replaces "
                    + before.shown() + ". Ctrl Z takes it back. ";
        }
        noted.set(at, now);
        String deed = (now.open() ? "clearing " : "reading at ") + name(at);
        LocalDateTime taken = clock.get().truncatedTo(ChronoUnit.SECONDS);
        edits.edit(deed, s -> WalkEdits.keep(s, spot, new WalkEdits.Kept(meter.name(), now, more, taken)));
        touched = false;
    }

    // --- words -------------------------------------------------------------------------------------------------------

    private String name(int i) {
        return called.get(i);
    }

    /** "E, starboard 2". */
    public String place() {
        return name(at);
    }

    /** "2.25 m aft, 0.60 m to starboard". */
    public String measured() {
        return names.measured(spot().xMm(), spot().yMm(), units::place);
    }

    /** "last, one step outboard: 19, dull", or nothing at the first point. */
    public String last() {
        if (at == 0 || noted.get(at - 1).open()) {
            return "";
        }
        Noted before = noted.get(at - 1);
        if (!before.skipped().isEmpty()) {
            return "last, " + direction() + ": left out";
        }
        Sound tap = before.tap();
        String sound = tap == null ? "" : tap.name().toLowerCase(Locale.ROOT);
        String join = before.value().isEmpty() || sound.isEmpty() ? "" : ", ";
        return "last, " + direction() + ": " + before.shown() + join + sound;
    }

    private String direction() {
        Spot a = points.get(at - 1);
        Spot b = points.get(at);
        if (a.xMm() != b.xMm()) {
            return "one row forward";
        }
        double steps = Math.abs(a.yMm() - b.yMm()) / spacingMm;
        String many = steps > 1.5 ? Figures.fixed(steps, 0) + " steps " : "one step ";
        return many + (Math.abs(a.yMm()) > Math.abs(b.yMm()) ? "outboard" : "inboard");
    }

    /** What Next goes to; "the end" at the last point. */
    public String nextPlace() {
        return at < points.size() - 1 ? name(at + 1) : "the end";
    }

    /** "relative scale, 0 to 100". */
    public String scale() {
        String kind = meter.kind() == Meter.Kind.PIN ? "pin meter" : "relative scale";
        return kind + ", 0 to " + Figures.atMost(meter.fullScale(), 0);
    }

    /** "Walk the grid", then where and how far. */
    public String progress() {
        long out = noted.stream().filter(n -> !n.skipped().isEmpty()).count();
        long read = noted.stream().filter(n -> !n.open()).count() - out;
        return face.name() + ", " + units.length(spacingMm) + ". " + read + " of " + points.size() + " read"
                + (out > 0 ? ", " + out + " left out." : ".");
    }

    /** A value far from its neighbours, or out of the scale, as a fact and what to do; empty where nothing is odd. */
    public String question() {
        if (entry.value().isEmpty()) {
            return message;
        }
        double value = Double.parseDouble(entry.value());
        if (value > meter.fullScale()) {
            return entry.value() + " is beyond the meter's scale, 0 to " + Figures.atMost(meter.fullScale(), 0)
                    + ". Type it again, or press Next to keep it as over the scale.";
        }
        String odd = touched ? Neighbours.question(points, noted, at, spacingMm, value, meter) : "";
        return odd.isEmpty() ? message : odd;
    }

    // --- what there is -----------------------------------------------------------------------------------------------

    /** Value and tap as they stand on the screen. */
    public Noted entry() {
        return entry;
    }

    public List<Spot> points() {
        return List.copyOf(points);
    }

    public Noted noted(int i) {
        return i == at && touched ? entry : noted.get(i);
    }

    public int at() {
        return at;
    }

    public Spot spot() {
        return points.get(at);
    }

    public Face face() {
        return face;
    }

    public double spacingMm() {
        return spacingMm;
    }
}
