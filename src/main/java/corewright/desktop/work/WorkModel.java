package corewright.desktop.work;

import corewright.assessment.Assessment;
import corewright.assessment.Issued;
import corewright.damage.Region;
import corewright.desktop.state.Workbench;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.PlaceNames;
import corewright.repair.plan.Batch;
import corewright.repair.plan.CupTarget;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.work.LiftsIn;
import corewright.repair.work.WorkLog;
import corewright.survey.Edit;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Survey;
import corewright.survey.WorkEntry;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.DoubleSupplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** One injection under way: which hole is next, what is typed, how far every clock is. Knows no window. */
public final class WorkModel {
    private static final Origin TYPED = new Origin("work at the boat", 0);
    private static final int LONGEST_ENTRY = 5;

    /** What the figure keys write into. */
    public enum Field {
        GRAMS,
        DEPTH
    }

    private final Workbench bench;
    private final String region;
    private final DoubleSupplier nowS;
    private final WhatChanged changed;
    private final LogCaution caution;
    private final Map<Integer, Double> mixedS = new HashMap<>();
    private double startS = Double.NaN;
    private @Nullable InjectionPlan last;
    private Field field = Field.GRAMS;
    private String grams = "";
    private String depth = "";
    private String vent = "";
    private String ooze = "";
    private String leak = "";
    private String chosen = "";
    private String message = "";

    /**
     * @param region that leads the space
     * @param nowS seconds of a clock that never stands still
     */
    public WorkModel(Workbench bench, String region, DoubleSupplier nowS) {
        this.bench = bench;
        this.region = region;
        this.nowS = nowS;
        changed = new WhatChanged(bench);
        caution = new LogCaution(bench);
    }

    /** The newest plan of the region; the one before while another is being made. */
    public Optional<InjectionPlan> plan() {
        Optional<Assessment> found = bench.found().filter(a -> a.ages().freshRest());
        found.flatMap(a -> a.decision().injections().stream()
                        .filter(p -> p.part(region).isPresent())
                        .findFirst())
                .ifPresent(p -> last = p);
        return Optional.ofNullable(last);
    }

    /** Has the plan put down as it is, so that its names stay; asked for once before the first line, and after every change. */
    public void freeze() {
        Assessment found = bench.found().filter(a -> a.ages().freshRest()).orElse(null);
        if (found != null) {
            bench.edit("the plan as it is issued", s -> {
                Issued issued = Issued.of(found.survey(), found.damage(), found.decision());
                if (issued.plan().equals(s.repairPlan())) {
                    return null;
                }
                changed.took(s.repairPlan(), issued.plan());
                return Freezing.put(s, issued.plan());
            });
        }
    }

    /** Holes into which mix goes, in working order. */
    public List<Hole> holes() {
        return plan().map(p -> p.holes().stream().filter(Hole::fills).toList()).orElse(List.of());
    }

    public List<Hole> vents() {
        return plan().map(p -> p.holes().stream().filter(h -> !h.fills()).toList())
                .orElse(List.of());
    }

    /** Grams that the log has for a hole; empty where it has no line. */
    public Optional<Double> logged(Hole hole) {
        List<WorkEntry> own =
                entries().stream().filter(e -> e.hole().equals(hole.id())).toList();
        return own.isEmpty()
                ? Optional.empty()
                : Optional.of(own.stream().mapToDouble(WorkEntry::grams).sum());
    }

    List<WorkEntry> entries() {
        return bench.survey().map(Survey::log).orElse(List.of());
    }

    /** The hole in hand: the one touched, else the first without a line; empty where all are done. */
    public Optional<Hole> hole() {
        Optional<Hole> touched =
                holes().stream().filter(h -> h.id().equals(chosen)).findFirst();
        return touched.or(() -> open().findFirst());
    }

    /** The hole after the one in hand. */
    public Optional<Hole> next() {
        return hole().flatMap(now -> open().filter(h -> h != now).findFirst());
    }

    /** Holes that still take mix, in the order of the cups: of a space in lifts each comes once a lift. */
    private Stream<Hole> open() {
        return lifts().open().stream().flatMap(id -> holes().stream().filter(h -> h.id().equals(id)));
    }

    LiftsIn lifts() {
        return new LiftsIn(plan().map(InjectionPlan::batches).orElse(List.of()), entries());
    }

    /** Takes another hole in hand. */
    public void choose(Hole hole) {
        clear();
        chosen = hole.id();
    }

    /** Grams planned into a hole at once, without waste: of one lift, where there are several. */
    public double plannedG(Hole hole) {
        double waste =
                bench.survey().map(s -> s.settings().drilling().wasteFraction()).orElse(0.0);
        return plan().map(p -> WorkLog.planned(p, waste).getOrDefault(hole.id(), 0.0) / lifts().all(hole.id()))
                .orElse(0.0);
    }

    /** "2.35 m aft, 0.55 m to starboard". */
    public String place(Hole hole) {
        return bench.survey()
                .map(s -> PlaceNames.of(s.face(hole.spot().face()))
                        .measured(
                                hole.spot().xMm(),
                                hole.spot().yMm(),
                                bench.sight().units()::place))
                .orElse("");
    }

    /** The cup from which the hole in hand is filled. */
    public Optional<Batch> cup() {
        return hole().flatMap(h -> lifts().cup(h.id()));
    }

    public Optional<CupTarget> target() {
        return cup().map(CupTarget::of);
    }

    /** The cup in hand is mixed: its clocks run from now. */
    public void mix() {
        cup().ifPresent(c -> {
            mixedS.put(c.number(), nowS.getAsDouble());
            begin();
            message = "Cup " + c.number() + " is mixed: its clocks run.";
        });
    }

    public boolean mixed() {
        return cup().filter(c -> mixedS.containsKey(c.number())).isPresent();
    }

    /** The log's clock goes on from its last line, or begins with the first cup. */
    private void begin() {
        if (Double.isNaN(startS)) {
            double before =
                    entries().stream().mapToDouble(WorkEntry::afterS).max().orElse(0);
            startS = nowS.getAsDouble() - before;
        }
    }

    /** Work time, first rise, hard, of the cup in hand; none before it is mixed. */
    public List<Clock> clocks() {
        Batch cup = cup().orElse(null);
        Double from = cup == null ? null : mixedS.get(cup.number());
        if (cup == null || from == null) {
            return List.of();
        }
        double gone = nowS.getAsDouble() - from;
        return List.of(
                Clock.of("work time left", cup.workUntilS() - cup.mixAtS(), gone),
                Clock.of("to the first rise; leave the weights on", cup.firstRiseS() - cup.mixAtS(), gone),
                Clock.of("to hard; feel by hand: cool and firm", cup.hardAtS() - cup.mixAtS(), gone));
    }

    public void write(Field into) {
        field = into;
    }

    public Field field() {
        return field;
    }

    public void digit(int figure) {
        String before = typed();
        if (before.length() < LONGEST_ENTRY) {
            type(before.equals("0") ? "" + figure : before + figure);
        }
    }

    public void point() {
        if (!typed().contains(".")) {
            type(typed().isEmpty() ? "0." : typed() + ".");
        }
    }

    public void backspace() {
        String before = typed();
        type(before.isEmpty() ? "" : before.substring(0, before.length() - 1));
    }

    private String typed() {
        return field == Field.GRAMS ? grams : depth;
    }

    private void type(String now) {
        if (field == Field.GRAMS) {
            grams = now;
        } else {
            depth = now;
        }
    }

    public void clear() {
        grams = "";
        depth = "";
        vent = "";
        ooze = "";
        leak = "";
        chosen = "";
        field = Field.GRAMS;
    }

    /** Mix showed in a vent; the same again takes it back. */
    public void vent(Hole shown) {
        vent = vent.equals(shown.id()) ? "" : shown.id();
    }

    /** Mix showed at the next hole. */
    public void ooze() {
        ooze = ooze.isEmpty() ? next().map(Hole::id).orElse("") : "";
    }

    /** Mix runs out below. */
    public void leak() {
        leak = leak.isEmpty() ? "below" : "";
    }

    /** Keeps the line; what is not typed is as planned. */
    public void keep() {
        keep("");
    }

    /** The hole took nothing: kept with 0 grams. */
    public void tookNothing() {
        grams = "0";
        keep("took nothing");
    }

    private void keep(String stopped) {
        Hole hole = hole().orElse(null);
        if (hole == null) {
            return;
        }
        begin();
        double in = number(grams, plannedG(hole));
        Survey survey = bench.survey().orElseThrow();
        int revision = survey.repairPlan().revision();
        WorkEntry entry = new WorkEntry(
                TYPED,
                hole.id(),
                Math.rint(nowS.getAsDouble() - startS),
                Math.rint(10 * in) / 10,
                ooze.isEmpty() ? null : ooze,
                cup().map(Batch::number).orElse(null),
                vent.isEmpty() ? null : vent,
                depth.isEmpty() ? null : bench.sight().units().mm(number(depth, 0)),
                leak,
                stopped,
                "",
                survey.heading().surveyor(),
                "",
                revision > 0 ? revision : null,
                lifts().said(hole.id()));
        String name = "hole " + Figures.holeNumber(hole.id()) + ", " + Figures.atMost(entry.grams(), 1) + " g";
        clear();
        message = "Kept: " + name + ".";
        bench.edit(name, s -> Edit.add(s, Part.LOG, entry));
    }

    private static double number(String text, double otherwise) {
        String plain = text.endsWith(".") ? text + "0" : text;
        return plain.isEmpty() ? otherwise : Double.parseDouble(plain);
    }

    /** "Hole 4", or "Nozzle N1". */
    public String name(Hole hole) {
        return (hole.drilled() ? "Hole " : "Nozzle ") + Figures.holeNumber(hole.id());
    }

    /** The same inside a sentence. */
    public String nameInside(Hole hole) {
        return (hole.drilled() ? "hole " : "nozzle ") + Figures.holeNumber(hole.id());
    }

    /** The depth stop, or how far the nozzle is pushed. */
    public String how(Hole hole) {
        Hole.Nozzle nozzle = hole.nozzle();
        return nozzle == null
                ? "depth stop " + bench.sight().units().depth(hole.depthStopMm())
                : "push it " + bench.sight().units().length(nozzle.pushMm()) + " in from " + nozzle.access();
    }

    /** The figure of the depth stop, as everything here is measured. */
    String stop(Hole hole) {
        return bench.sight().units().depthFigure(hole.depthStopMm());
    }

    /** The regions that are filled, to be drawn. */
    public List<Region> regions() {
        return plan().map(p -> bench.found().stream()
                        .flatMap(a -> a.damage().regions().stream())
                        .filter(r -> p.part(r.id()).isPresent())
                        .toList())
                .orElse(List.of());
    }

    /** Grams as they would be kept. */
    public String grams() {
        return grams.isEmpty() ? hole().map(h -> Figures.fixed(plannedG(h), 0)).orElse("") : grams;
    }

    public String depth() {
        return depth;
    }

    public boolean shown(Hole of) {
        return vent.equals(of.id());
    }

    public boolean oozed() {
        return !ooze.isEmpty();
    }

    public boolean leaks() {
        return !leak.isEmpty();
    }

    /** The gravest that the log says of this work, and what to do; else what was done last. */
    public String says() {
        String stop = caution.of(holes());
        return stop.isEmpty() ? message : stop;
    }

    /** What another revision of the plan alters. */
    public WhatChanged changed() {
        return changed;
    }

    /** The same in sentences, of the space that is filled. */
    public List<String> changes() {
        return changed.sentences(plan().map(InjectionPlan::parts).orElse(List.of()).stream()
                .map(InjectionPlan.Part::region)
                .collect(Collectors.toCollection(TreeSet::new)));
    }

    Workbench bench() {
        return bench;
    }
}
