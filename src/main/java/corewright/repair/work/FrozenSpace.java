package corewright.repair.work;

import corewright.damage.Region;
import corewright.repair.plan.Batch;
import corewright.repair.plan.EmptySpace;
import corewright.repair.plan.Fill;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.Outlook;
import corewright.survey.FrozenPlan;
import corewright.survey.FrozenPlan.Kind;
import corewright.survey.FrozenPlan.PlannedHole;
import corewright.survey.FrozenPlan.Standing;
import corewright.survey.MovedHole;
import corewright.survey.NamedLog;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.WorkEntry;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * What a frozen plan says of one space, and a new plan of that space under its names.
 *
 * <p>A hole at the very place of an old one of its kind has the old name; any other gets a number that was never given. Holes
 * that are drilled stay exactly, with their stop. Once one of a space is drilled, none that may still be drilled moves, vents
 * too; only what is not covered gets new ones. What went in stays as it was planned, see {@link PartFilled}.
 */
public final class FrozenSpace {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** A new vent this share of the reach from one that is there would let out the same air. Practice. */
    private static final double SAME_AIR = 0.5;

    private final Survey survey;
    private final FrozenPlan plan;
    private final List<Region> regions;
    private final EmptySpace space;
    private final Set<String> begun;
    private final Set<String> written;
    private final List<WorkEntry> log;
    private final List<MovedHole> moved;
    /** Those of the plan that lie here and are not left out, or are drilled. */
    private final List<PlannedHole> here;

    private FrozenSpace(Survey survey, List<Region> regions, EmptySpace space) {
        this.survey = survey;
        plan = survey.repairPlan();
        this.regions = regions;
        this.space = space;
        begun = Begun.holes(survey);
        written = NamedLog.written(survey.log());
        log = NamedLog.of(
                        survey.log(),
                        plan.holes().stream().map(PlannedHole::name).toList())
                .entries();
        moved = survey.judgements().holes();
        here = plan.holes().stream().filter(this::isHere).toList();
    }

    /** @param regions all of the face, so that each hole belongs to one space only */
    public static FrozenSpace of(Survey survey, List<Region> regions, EmptySpace space) {
        return new FrozenSpace(survey, List.copyOf(regions), space);
    }

    private boolean isHere(PlannedHole hole) {
        boolean drilled = begun.contains(hole.name());
        boolean same = hole.spot().face().equals(space.face());
        boolean ours = same && space.regions().stream().anyMatch(r -> r.id().equals(owner(hole, drilled)));
        return ours && (drilled || !hole.dropped() && !movedAway(hole));
    }

    /** The region that a hole lies in; of one that is drilled and lies in none any more, the one it was made for. */
    private String owner(PlannedHole hole, boolean drilled) {
        return regions.stream()
                .filter(r -> r.likely().covers(FACTORY.createPoint(hole.spot().coordinate())))
                .map(Region::id)
                .findFirst()
                .orElse(drilled ? hole.region() : "");
    }

    /** A person put it elsewhere, which is another place and has another name. */
    private boolean movedAway(PlannedHole hole) {
        return moved.stream().anyMatch(m -> m.planned().equals(hole.spot()));
    }

    /** Whether the plan has a hole here. */
    public boolean isEmpty() {
        return here.isEmpty();
    }

    /** Whether one of them is drilled. */
    public boolean begun() {
        return here.stream().anyMatch(h -> begun.contains(h.name()));
    }

    /** Injection holes that were held when the plan was made, as the planner takes them. */
    public List<MovedHole> heldBefore() {
        return locks(here.stream().filter(PlannedHole::held));
    }

    /** All its injection holes. */
    public List<MovedHole> all() {
        return locks(here.stream());
    }

    private static List<MovedHole> locks(Stream<PlannedHole> holes) {
        return holes.filter(h -> h.kind() == Kind.INJECTION)
                .map(h -> new MovedHole(h.spot(), h.spot()))
                .toList();
    }

    /** Whether a plan under the frozen names has the holes of the frozen one and no others. */
    public boolean same(InjectionPlan named) {
        Set<String> names = new HashSet<>();
        here.forEach(h -> names.add(h.name()));
        Set<String> now = new HashSet<>();
        named.holes().forEach(h -> now.add(h.id()));
        return names.equals(now);
    }

    /** Whether it is the frozen plan again: its holes, and their grams where more was filled since. */
    public boolean stands(InjectionPlan named) {
        return same(named) && (before(named).equals(filledNow(named)) || sameGrams(named));
    }

    private boolean sameGrams(InjectionPlan named) {
        Map<String, Double> grams =
                WorkLog.planned(named, survey.settings().drilling().wasteFraction());
        return here.stream()
                .allMatch(h -> Math.abs(h.grams() - grams.getOrDefault(h.name(), 0.0)) <= PartFilled.SAME_G);
    }

    /**
     * Names of the holes into which mix had gone when the revision was made that has this plan of the space.
     *
     * @param named under the frozen names
     */
    public Set<String> filled(InjectionPlan named) {
        return stands(named) ? before(named) : filledNow(named);
    }

    /** Those of the frozen plan; not where their lines of the log are gone. */
    private Set<String> before(InjectionPlan named) {
        Set<String> filled = filledNow(named);
        filled.removeIf(name -> plan.hole(name).orElseThrow().standing() != Standing.FILLED);
        return filled;
    }

    /** All by the log; not those that took next to nothing, or of which a lift is still to go. */
    private Set<String> filledNow(InjectionPlan named) {
        LiftsIn lifts = new LiftsIn(named.batches(), log);
        Set<String> filled = new LinkedHashSet<>();
        for (Hole hole : named.filling()) {
            double g = takenG(hole.id());
            double plannedG = plan.hole(hole.id()).map(PlannedHole::grams).orElse(0.0);
            if (g > WorkWords.NOTHING * plannedG && lifts.in(hole.id()) >= lifts.all(hole.id())) {
                filled.add(hole.id());
            }
        }
        return filled;
    }

    private double takenG(String hole) {
        return log.stream()
                .filter(e -> e.hole().equals(hole))
                .mapToDouble(WorkEntry::grams)
                .sum();
    }

    /** Where nothing was planned for a filled hole, what went in counts: it is in the space. */
    private InjectionPlan partFilled(InjectionPlan named, Set<String> filled) {
        Map<String, Double> doneG = new LinkedHashMap<>();
        for (String hole : filled) {
            double plannedG = plan.hole(hole).map(PlannedHole::grams).orElse(0.0);
            doneG.put(hole, plannedG > 0 ? plannedG : takenG(hole));
        }
        double takenG = filled.stream().mapToDouble(this::takenG).sum();
        return filled.isEmpty() ? named : new PartFilled(survey, doneG, takenG).of(named);
    }

    /** A new plan of this space under the names of the frozen one, with what is drilled in it and what was filled before. */
    public InjectionPlan named(InjectionPlan fresh) {
        InjectionPlan named = begunWords(new Names().on(fresh, kept(fresh)));
        return partFilled(named, before(named));
    }

    /** The same as a new revision, with all that is filled by now. */
    public InjectionPlan revised(InjectionPlan fresh) {
        InjectionPlan named = begunWords(new Names().on(fresh, kept(fresh)));
        return partFilled(named, filledNow(named));
    }

    /** The holes of a new plan, and those of the old one that stay. */
    private List<Hole> kept(InjectionPlan fresh) {
        boolean began = begun();
        List<Hole> filling = new ArrayList<>();
        List<Hole> vents = new ArrayList<>();
        List<PlannedHole> staying = here.stream()
                .filter(h -> begun.contains(h.name()) || began && h.kind() == Kind.VENT)
                .filter(h -> fresh.holes().stream().noneMatch(f -> at(f, h)))
                .toList();
        List<Spot> air =
                staying.stream().filter(h -> !h.fills()).map(PlannedHole::spot).toList();
        for (Hole hole : fresh.holes()) {
            boolean spare = hole.kind() == Hole.Kind.VENT
                    && here.stream().noneMatch(h -> at(hole, h))
                    && air.stream()
                            .anyMatch(s ->
                                    s.coordinate().distance(hole.spot().coordinate()) < SAME_AIR * fresh.reachMm());
            if (!spare) {
                (hole.fills() ? filling : vents).add(hole);
            }
        }
        staying.forEach(h -> (h.fills() ? filling : vents).add(drilled(h)));
        filling.addAll(vents);
        return filling;
    }

    private Hole drilled(PlannedHole h) {
        String region = space.regions().stream()
                .filter(r -> r.likely().covers(FACTORY.createPoint(h.spot().coordinate())))
                .findFirst()
                .orElse(space.lead())
                .id();
        Hole.Nozzle nozzle = h.kind() == Kind.NOZZLE ? new Hole.Nozzle(h.access(), h.spot(), h.pushMm()) : null;
        String id = "held " + h.name(); // no planner gives such a name
        return new Hole(
                id,
                region,
                Hole.Kind.valueOf(h.kind().name()),
                0,
                h.spot(),
                h.diameterMm(),
                h.stopMm(),
                0,
                0,
                nozzle,
                Hole.Range.NONE,
                0);
    }

    private static boolean at(Hole hole, PlannedHole old) {
        return hole.kind().name().equals(old.kind().name()) && hole.spot().equals(old.spot());
    }

    /** The planner's words on holes that a person moved are not for holes of the plan. */
    private InjectionPlan begunWords(InjectionPlan named) {
        List<String> said = named.cautions().stream()
                .filter(c -> here.stream()
                        .filter(h -> moved.stream().noneMatch(m -> m.spot().equals(h.spot())))
                        .noneMatch(h -> c.startsWith(String.format(
                                Locale.ROOT,
                                "The hole moved to %.0f mm aft, %.0f mm to starboard",
                                h.spot().xMm(),
                                h.spot().yMm()))))
                .toList();
        return with(named, named.holes(), named.batches(), said, named.fill(), named.outlook());
    }

    private static InjectionPlan with(
            InjectionPlan p, List<Hole> holes, List<Batch> batches, List<String> cautions, Fill fill, Outlook outlook) {
        return new InjectionPlan(
                p.region(),
                p.parts(),
                p.resin(),
                p.cavityMm3(),
                p.reachMm(),
                p.reachGovernedBy(),
                holes,
                p.coveredFraction(),
                batches,
                p.resinG(),
                p.hardenerG(),
                p.buyG(),
                p.arithmetic(),
                cautions,
                fill,
                outlook);
    }

    /** Gives holes their names, each once. */
    private final class Names {
        private final Set<String> used = new HashSet<>();
        private final Map<String, String> ofHole = new LinkedHashMap<>();

        Names() {
            plan.holes().forEach(h -> used.add(h.name()));
        }

        InjectionPlan on(InjectionPlan fresh, List<Hole> holes) {
            List<Hole> named = new ArrayList<>();
            for (Hole hole : holes) {
                Optional<PlannedHole> old =
                        plan.holes().stream().filter(h -> at(hole, h)).findFirst();
                String name = old.map(PlannedHole::name).orElseGet(() -> next(hole));
                ofHole.put(hole.id(), name);
                boolean stays = old.isPresent() && begun.contains(name);
                named.add(new Hole(
                        name,
                        hole.region(),
                        hole.kind(),
                        named.size() + 1,
                        hole.spot(),
                        stays ? old.get().diameterMm() : hole.diameterMm(),
                        stays ? old.get().stopMm() : hole.depthStopMm(),
                        hole.reachMm(),
                        hole.servedMm3(),
                        hole.nozzle(),
                        hole.range(),
                        hole.gapMm()));
            }
            fresh.holes().forEach(h -> ofHole.computeIfAbsent(h.id(), id -> nearest(named, h)));
            return with(
                    fresh,
                    named,
                    fresh.batches().stream().map(this::batch).toList(),
                    fresh.cautions(),
                    fill(fresh.fill()),
                    fresh.outlook().renamed(this::name));
        }

        /** What was to be seen or given at a vent that is spared goes to the hole of its kind nearest to it. */
        private static String nearest(List<Hole> named, Hole spared) {
            return named.stream()
                    .filter(h -> h.kind() == spared.kind())
                    .min(Comparator.comparingDouble(
                            h -> h.spot().coordinate().distance(spared.spot().coordinate())))
                    .orElseThrow()
                    .id();
        }

        /** The number after the greatest that was ever given in this space: they run over all its regions. */
        private String next(Hole hole) {
            String letter =
                    switch (hole.kind()) {
                        case INJECTION -> "";
                        case VENT -> "V";
                        case NOZZLE -> "N";
                    };
            int number = 1;
            for (Region region : space.regions()) {
                String head = region.id() + "-" + letter;
                number = Math.max(
                        number,
                        1
                                + used.stream()
                                        .filter(n -> n.startsWith(head)
                                                && n.substring(head.length()).matches("[0-9]{1,6}"))
                                        .mapToInt(n -> Integer.parseInt(n.substring(head.length())))
                                        .max()
                                        .orElse(0));
            }
            while (written.contains(NamedLog.folded(letter + number))
                    || written.contains(NamedLog.folded(hole.region() + "-" + letter + number))) {
                number++; // a line of the log goes on meaning what it meant when it was written
            }
            String name = hole.region() + "-" + letter + number;
            used.add(name);
            return name;
        }

        private Batch batch(Batch b) {
            return new Batch(
                    b.number(),
                    b.region(),
                    b.holes().stream().map(this::name).toList(),
                    b.partAG(),
                    b.partBG(),
                    b.mixAtS(),
                    b.workUntilS(),
                    b.firstRiseS(),
                    b.hardAtS());
        }

        private Fill fill(Fill f) {
            Map<String, Double> filled = new LinkedHashMap<>();
            f.filledMm3().forEach((hole, mm3) -> filled.merge(name(hole), mm3, Double::sum));
            Map<String, Double> taken = new LinkedHashMap<>();
            f.takenMm3().forEach((hole, mm3) -> taken.merge(name(hole), mm3, Double::sum));
            return new Fill(f.arrivalS(), f.liquidShare(), f.emptyShare(), f.pockets(), filled, taken, f.density());
        }

        private String name(String planned) {
            return Objects.requireNonNull(ofHole.get(planned), planned);
        }
    }
}
