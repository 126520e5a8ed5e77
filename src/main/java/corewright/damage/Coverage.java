package corewright.damage;

import corewright.field.NeighbourIndex;
import corewright.reuse.Latest;
import corewright.survey.About;
import corewright.survey.Face;
import corewright.survey.Finding;
import corewright.survey.Origin;
import corewright.survey.Reading;
import corewright.survey.Readings;
import corewright.survey.Spot;
import corewright.survey.Subject;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How much of a face's core was read, whatever the readings say: within {@link #REACH_MM} of a reading of the same bay.
 *
 * @param water share of the core read with a meter, by a pilot hole that noted the core or by a plug, 0 to 1
 * @param bond share of the core that was tapped, or drilled or felt into
 */
public record Coverage(String face, double water, double bond) {
    /**
     * A coarse grid of 300 mm, roughly kept, leaves no place farther than this from a reading. Grid and figure are common
     * practice; that a place is read does not mean that it is decided.
     */
    public static final double REACH_MM = 300;

    /** Fewer readings than this do not read a face, however small: five are the least for a base line, common practice. */
    public static final int LEAST_READINGS = 5;

    /** Read to this share, a face can be spoken of as a whole. Our own choice. */
    public static final double WHOLE = 0.8;

    private static final double NOTHING = 0.05;

    /** Cells over a face that suffice for a share. */
    private static final double CELLS = 4000;

    private static final double LEAST_CELL_MM = 5;

    /** By survey, then face: pages ask some forty times, and the window asks on its own thread, which may not wait. */
    private static final Latest<Survey, Map<String, Coverage>> KNOWN = new Latest<>(4, ConcurrentHashMap::new);

    /** The coverage of every face. */
    public static List<Coverage> of(Survey survey) {
        return survey.faces().stream().map(f -> of(survey, f)).toList();
    }

    /** The coverage of one face of a survey. */
    public static Coverage of(Survey survey, Face face) {
        return KNOWN.of(survey).computeIfAbsent(face.name(), name -> worked(survey, face));
    }

    private static Coverage worked(Survey survey, Face face) {
        Plan plan = Plan.of(survey, face);
        double cellMm = Math.max(LEAST_CELL_MM, Math.sqrt(face.outline().getArea() / CELLS));
        Frame frame = Frame.over(face.outline(), cellMm);
        Readings r = survey.readings().on(face.name());
        List<Spot> water =
                spots(r.moisture().stream(), r.probes().stream().filter(p -> p.water() != null), r.plugs().stream());
        List<Spot> bond = spots(r.taps().stream(), r.probes().stream(), r.feelers().stream());
        return new Coverage(face.name(), share(plan, frame, water), share(plan, frame, bond));
    }

    @SafeVarargs
    private static List<Spot> spots(Stream<? extends Reading>... readings) {
        return Stream.of(readings).flatMap(s -> s).map(Reading::spot).toList();
    }

    private static double share(Plan plan, Frame frame, List<Spot> spots) {
        Map<String, List<Spot>> ofBay = new HashMap<>();
        int onCore = 0;
        for (Spot spot : new LinkedHashSet<>(spots)) {
            Bay bay = plan.bayAt(spot);
            if (bay != null) {
                ofBay.computeIfAbsent(bay.name(), n -> new ArrayList<>()).add(spot);
                onCore++;
            }
        }
        if (onCore < LEAST_READINGS) {
            return 0;
        }
        int all = 0;
        int read = 0;
        for (Bay bay : plan.bays()) {
            List<Spot> own = ofBay.getOrDefault(bay.name(), List.of());
            int[] cells = frame.cellsIn(bay.area());
            all += cells.length;
            read += own.isEmpty() ? 0 : near(frame, cells, own);
        }
        return all == 0 ? 0 : (double) read / all;
    }

    private static int near(Frame frame, int[] cells, List<Spot> spots) {
        double[] x = spots.stream().mapToDouble(Spot::xMm).toArray();
        double[] y = spots.stream().mapToDouble(Spot::yMm).toArray();
        NeighbourIndex index = new NeighbourIndex(x, y);
        int near = 0;
        for (int cell : cells) {
            int nearest = index.nearest(frame.x(cell), frame.y(cell), 1, -1)[0];
            if (Math.hypot(x[nearest] - frame.x(cell), y[nearest] - frame.y(cell)) <= REACH_MM) {
                near++;
            }
        }
        return near;
    }

    /** Nothing of the face was read at all. */
    public boolean nothing() {
        return water < NOTHING && bond < NOTHING;
    }

    /** Enough of the face was read, both ways, to speak of it as a whole. */
    public boolean whole() {
        return water >= WHOLE && bond >= WHOLE;
    }

    /** What was not read of several faces; empty where all can be spoken of. */
    public static String unread(List<Coverage> faces) {
        return faces.stream().map(Coverage::unread).filter(s -> !s.isEmpty()).collect(Collectors.joining(" "));
    }

    /** What was not read, as a sentence; empty where the face can be spoken of as a whole. */
    public String unread() {
        String name = face.toLowerCase(Locale.ROOT).startsWith("the ") ? face.substring(4) : face;
        if (whole()) {
            return "";
        }
        if (nothing()) {
            return "Too little of the " + name + " was read to say anything of it.";
        }
        List<String> sentences = new ArrayList<>();
        if (water < WHOLE) {
            sentences.add(
                    water < NOTHING
                            ? "The " + name + " was not read for water."
                            : part(water) + " of the " + name + "’s core was read for water.");
        }
        if (bond < WHOLE) {
            sentences.add(
                    bond < NOTHING
                            ? "The " + name + " was not tapped."
                            : part(bond) + " of the " + name + "’s core was tapped.");
        }
        return String.join(" ", sentences);
    }

    /** Quarters, so that nobody takes it for a measurement. */
    private static String part(double share) {
        return share < 0.2 ? "Only a small part" : share < 0.4 ? "Only a third" : share < 0.6 ? "Only half" : "Not all";
    }

    /** How much of the core was read, without the face's name and a full stop. */
    public String shares() {
        return shares(water, "a reading of water", "read for water", "readings") + ", "
                + shares(bond, "a tap", "tapped", "taps and pilot holes");
    }

    private static String shares(double share, String near, String done, String many) {
        return share > 0
                ? String.format(Locale.ROOT, "%.0f %% lies within %.0f mm of %s", 100 * share, REACH_MM, near)
                : "nothing counts as " + done + " (fewer than " + LEAST_READINGS + " " + many + " lie on it)";
    }

    /** A hazard where nothing can be said, a doubt where only a part was read; none where the face was read. */
    public List<Finding> findings() {
        if (whole()) {
            return List.of();
        }
        String message = "Of the core of " + face + " " + shares() + ".";
        return List.of(new Finding(
                nothing() ? Finding.Severity.HAZARD : Finding.Severity.DOUBT,
                new Origin("survey.yaml", 0),
                new About.OfFace(face),
                Subject.COVERAGE_OF_READINGS,
                message,
                "No verdict is given on what was not read: sound or damaged, it is not known."));
    }
}
