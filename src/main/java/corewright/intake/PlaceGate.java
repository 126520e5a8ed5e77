package corewright.intake;

import corewright.overlay.AreaIndex;
import corewright.survey.Face;
import corewright.survey.Feature.Opening;
import corewright.survey.Finding.Severity;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Reading;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Location;

/**
 * Whether the readings of one face can have been taken where they are said to be. A file whose readings do not fit the
 * outline is held against every {@link Mistake}; the one that mends it is named, once for all files that it mends.
 */
final class PlaceGate {
    /** A reading this far outside may be a slip of the tape or of the drawing. Common practice. */
    private static final double SLACK_MM = 25;

    /** Fewer misplaced readings than this are slips of their own, unless all of a file are misplaced. */
    private static final int LEAST_MISPLACED = 4;

    private static final double FEW_MISPLACED = 0.03;
    private static final double MANY_MISPLACED = 0.3;

    /** Read closer than this, over a small part of the face: no meter's foot or hammer is that small. Common practice. */
    private static final double CLOSE_MM = 35;

    private static final String MOISTURE = "moisture reading";
    private static final String TAP = "tap";
    private static final double SMALL_PART = 0.15;
    private static final int ENOUGH = 6;

    /** A slip must spread the readings over at least this share of the deck's box; more where less speaks for it. */
    private static final double LEAST_LIKE = 0.05;

    private static final double LEAST_LIKE_MOVED = 0.2;
    private static final double LEAST_LIKE_SMALL = 0.25;

    /** Readings within this of each other are at one place. */
    private static final double ONE_PLACE_MM = 5;

    /** Places looked at when a slip is sought: every so-many-th of a large file. */
    private static final int SAMPLE = 1500;

    /** Readings of one kind from one file. */
    private record Group(String kind, String file, List<Reading> readings) {
        String words() {
            return readings.size() + " " + kind + (readings.size() == 1 ? "" : "s") + " of " + file;
        }
    }

    private final Face face;
    private final Implausible gate;
    private final IndexedPointInAreaLocator deck;
    private final AreaIndex<Opening> openings;
    private final Envelope box;
    private final Set<Reading> told = Collections.newSetFromMap(new IdentityHashMap<>());

    private PlaceGate(Face face, Implausible gate) {
        this.face = face;
        this.gate = gate;
        deck = new IndexedPointInAreaLocator(face.outline());
        openings = new AreaIndex<>(face.all(Opening.class), Opening::geometry);
        box = face.outline().getEnvelopeInternal();
    }

    /** The readings whose places were spoken of together. */
    static Set<Reading> check(Face face, List<Reading> readings, Implausible gate) {
        PlaceGate places = new PlaceGate(face, gate);
        Map<List<String>, Group> groups = new LinkedHashMap<>();
        for (Reading r : readings) {
            String kind = kind(r);
            groups.computeIfAbsent(
                            List.of(kind, r.origin().file()),
                            k -> new Group(kind, r.origin().file(), new ArrayList<>()))
                    .readings
                    .add(r);
        }
        places.check(List.copyOf(groups.values()));
        return places.told;
    }

    private static String kind(Reading reading) {
        return reading instanceof Moisture
                ? MOISTURE
                : reading.getClass()
                        .getSimpleName()
                        .replaceAll("(?<=[a-z])(?=[A-Z])", " ")
                        .toLowerCase(Locale.ROOT);
    }

    private void check(List<Group> groups) {
        List<Group> odd = groups.stream().filter(g -> misfits(g) || tooSmall(g)).toList();
        Set<Group> named = new HashSet<>();
        Mistake shared =
                odd.isEmpty() ? null : likeliest(places(odd), odd.stream().anyMatch(this::misfits));
        if (shared != null) {
            List<Group> mended = odd.stream()
                    .filter(g -> mends(shared, sampled(places(List.of(g)))))
                    .toList();
            name(mended, shared);
            named.addAll(mended);
        }
        List<Group> others = new ArrayList<>();
        for (Group group : groups) {
            Mistake own = named.contains(group) || !odd.contains(group)
                    ? null
                    : likeliest(places(List.of(group)), misfits(group));
            if (own != null) {
                name(List.of(group), own);
            } else if (!named.contains(group)) {
                unexplained(group);
                others.add(group);
            }
        }
        for (String kind : List.of(MOISTURE, TAP)) {
            List<Group> same = others.stream().filter(g -> g.kind.equals(kind)).toList();
            if (!same.isEmpty()) {
                oneSide(same);
            }
        }
    }

    private static List<Coordinate> places(List<Group> groups) {
        return groups.stream()
                .flatMap(g -> g.readings.stream())
                .map(r -> r.spot().coordinate())
                .toList();
    }

    private static List<Coordinate> sampled(List<Coordinate> all) {
        int step = Math.max(1, all.size() / SAMPLE);
        List<Coordinate> some = new ArrayList<>();
        for (int i = 0; i < all.size(); i += step) {
            some.add(all.get(i));
        }
        return some;
    }

    private boolean misfits(Group group) {
        List<Coordinate> places = places(List.of(group));
        long off = misplaced(places);
        return off > FEW_MISPLACED * places.size() && (off >= LEAST_MISPLACED || (off > 1 && off == places.size()));
    }

    private boolean tooSmall(Group group) {
        Envelope read = extent(places(List.of(group)));
        return group.readings.size() >= ENOUGH
                && read.getWidth() < SMALL_PART * box.getWidth()
                && read.getHeight() < SMALL_PART * box.getHeight()
                && read.getWidth() * read.getHeight() < group.readings.size() * CLOSE_MM * CLOSE_MM;
    }

    private static Envelope extent(List<Coordinate> places) {
        Envelope extent = new Envelope();
        places.forEach(extent::expandToInclude);
        return extent;
    }

    private long misplaced(List<Coordinate> places) {
        return places.stream().filter(c -> !fits(c)).count();
    }

    private boolean fits(Coordinate c) {
        if (deck.locate(c) == Location.EXTERIOR) {
            return face.outline().isWithinDistance(face.outline().getFactory().createPoint(c), SLACK_MM);
        }
        Opening opening = openings.lastAt(c, false).orElse(null);
        return opening == null
                || opening.geometry()
                        .getBoundary()
                        .isWithinDistance(face.outline().getFactory().createPoint(c), SLACK_MM);
    }

    /** The slip that puts nearly all readings on the deck and spreads them best over it; null where none does. */
    private @Nullable Mistake likeliest(List<Coordinate> all, boolean placesWrong) {
        List<Coordinate> places = sampled(all);
        Mistake best = null;
        double most = 0;
        for (Mistake mistake : Mistake.all(extent(places), box)) {
            if (mends(mistake, places) && (placesWrong || mistake.scale() > 1)) {
                double fit = mistake.weight() * likeness(places, mistake);
                boolean enough = fit > (mistake.weight() > 0.5 ? LEAST_LIKE : LEAST_LIKE_MOVED);
                if (enough && fit > most) {
                    most = fit;
                    best = mistake;
                }
            }
        }
        return placesWrong || most > LEAST_LIKE_SMALL ? best : null;
    }

    private boolean mends(Mistake mistake, List<Coordinate> places) {
        List<Coordinate> mended = places.stream().map(mistake.mended()).toList();
        long still = misplaced(mended);
        long before = misplaced(places);
        return still <= FEW_MISPLACED * places.size() && (before == 0 || 5 * still <= before);
    }

    /** Share that the boxes around the mended readings and the deck have in common of both together. */
    private double likeness(List<Coordinate> places, Mistake mistake) {
        Envelope mended = extent(places.stream().map(mistake.mended()).toList());
        double common = mended.intersection(box).getArea();
        return common / (mended.getArea() + box.getArea() - common);
    }

    private void name(List<Group> groups, Mistake mistake) {
        Envelope read = extent(places(groups));
        String of = words(groups);
        boolean one = groups.size() == 1 && groups.get(0).readings.size() == 1;
        String message = mistake.scale() != 1
                ? "The " + of + " on " + face.name() + " span " + size(read) + " mm of an outline of " + size(box)
                        + " mm: " + mistake.question()
                : "The " + of + (one ? " does" : " do") + " not fit the outline of " + face.name() + ", "
                        + misplaced(places(groups)) + " lie off it: " + mistake.question();
        gate.say(
                Severity.HAZARD, origin(groups.get(0)), message, mistake.remedy() + " Until then no verdict is given.");
        groups.forEach(g -> told.addAll(g.readings));
    }

    private void unexplained(Group group) {
        List<Coordinate> places = places(List.of(group));
        Envelope read = extent(places);
        int n = places.size();
        if (n >= ENOUGH && Math.max(read.getWidth(), read.getHeight()) < ONE_PLACE_MM) {
            gate.say(
                    Severity.HAZARD,
                    origin(group),
                    "All " + group.words() + " lie at one place, " + size(read) + " mm wide: were the places left out?",
                    "They say nothing of the rest of " + face.name() + ".");
            told.addAll(group.readings);
            return;
        }
        long off =
                places.stream().filter(c -> deck.locate(c) == Location.EXTERIOR).count();
        if (off >= LEAST_MISPLACED && off > MANY_MISPLACED * n) {
            gate.say(
                    Severity.HAZARD,
                    origin(group),
                    off + " of the " + group.words() + " lie outside the outline of " + face.name()
                            + ", and no single slip of unit, axis or datum explains it.",
                    "Check the plan's outline and the places against the boat. Those outside say nothing of the deck.");
            told.addAll(group.readings);
        }
        line(group, read);
    }

    private void line(Group group, Envelope read) {
        double width = read.getWidth();
        double height = read.getHeight();
        double thin = Math.min(width, height);
        double across = width < height ? box.getWidth() : box.getHeight();
        if (new HashSet<>(places(List.of(group))).size() >= ENOUGH
                && thin < ONE_PLACE_MM
                && across > 20 * CLOSE_MM
                && Math.max(width, height) > across / 4) {
            String axis = width < height ? "x" : "y";
            gate.say(
                    Severity.DOUBT,
                    origin(group),
                    "All " + group.words() + " on " + face.name() + " lie along one line of equal " + axis
                            + ": is the column " + axis + " right?",
                    "Beside that line nothing was read.");
        }
    }

    /** Readings of one kind all on one half of the face, while that half is far from being all of it. */
    private void oneSide(List<Group> groups) {
        List<Coordinate> places = places(groups);
        if (new HashSet<>(places).size() < 2 * ENOUGH) {
            return;
        }
        Coordinate middle = box.centre();
        Envelope read = extent(places);
        String where = read.getMinY() >= middle.y
                ? "y above " + Math.round(middle.y)
                : read.getMaxY() <= middle.y
                        ? "y below " + Math.round(middle.y)
                        : read.getMinX() >= middle.x
                                ? "x above " + Math.round(middle.x)
                                : read.getMaxX() <= middle.x ? "x below " + Math.round(middle.x) : "";
        if (!where.isEmpty()) {
            gate.say(
                    Severity.DOUBT,
                    origin(groups.get(0)),
                    "All " + words(groups) + " lie on the half of " + face.name() + " with " + where
                            + ": was the other half left out, or the sign lost?",
                    "Of the other half they say nothing.");
        }
    }

    private static String words(List<Group> groups) {
        return groups.stream().map(Group::words).collect(Collectors.joining(", "));
    }

    private static Origin origin(Group group) {
        return new Origin(group.file, 0);
    }

    private static String size(Envelope extent) {
        return digits(extent.getWidth()) + " x " + digits(extent.getHeight());
    }

    /** Whole millimetres, or two digits that count. */
    private static String digits(double mm) {
        return mm >= 10
                ? String.valueOf(Math.round(mm))
                : new BigDecimal(mm)
                        .round(new MathContext(2))
                        .stripTrailingZeros()
                        .toPlainString();
    }
}
