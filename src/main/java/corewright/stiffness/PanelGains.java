package corewright.stiffness;

import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.overlay.Overlay;
import corewright.reuse.Memory;
import corewright.sandwich.CellMatrices;
import corewright.sandwich.spec.PanelSpec;
import corewright.survey.Survey;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/** What one panel has of its stiffness as built when a part of its core is treated, the rest as found. */
public final class PanelGains {
    /** Less of a region than this is no part of a panel: 0.001 m2. */
    private static final double SMALLEST_MM2 = 1000;

    /** A treatment of everything that changes less than this part leaves nothing to lie between. */
    private static final double NO_WAY = 1e-3;

    private final Survey survey;
    private final DamageMap damage;
    private final StiffnessMap stiffness;
    private final Memory memory;
    private final Map<String, Kept> kept = new ConcurrentHashMap<>();
    private final Map<Asked, Optional<Quantiles>> told = new ConcurrentHashMap<>();

    /** @param stiffness panels that were calculated; others have no gain */
    public PanelGains(Survey survey, DamageMap damage, StiffnessMap stiffness, Memory memory) {
        this.survey = survey;
        this.damage = damage;
        this.stiffness = stiffness;
        this.memory = memory;
    }

    /** The calculated panel that holds most of a region; empty where none holds any. */
    public Optional<String> panelOf(Region region) {
        return stiffness.of(region.face()).stream()
                .filter(p -> p.damaged() && held(p, region) > SMALLEST_MM2)
                .max(Comparator.comparingDouble(p -> held(p, region)))
                .map(p -> p.panel().name());
    }

    private static double held(PanelStiffness panel, Region region) {
        return Overlay.intersection(region.likely(), panel.panel().area()).getArea();
    }

    /** The panel as it was found. */
    public Quantiles asFound(String panel) {
        return known(panel).in(State.AS_FOUND).ofAsBuilt();
    }

    /** The panel with all damage renewed. */
    public Quantiles renewed(String panel) {
        return known(panel).in(State.AFTER_RECORE).ofAsBuilt();
    }

    private PanelStiffness known(String panel) {
        return stiffness.panels().stream()
                .filter(p -> p.panel().name().equals(panel))
                .findFirst()
                .orElseThrow();
    }

    /**
     * A panel after treatments.
     *
     * @param treatments of the whole face; empty is as found
     */
    public record Asked(String panel, List<Treatment> treatments) {
        public Asked {
            treatments = List.copyOf(treatments);
        }
    }

    /** Works out side by side what {@link #after} will be asked. */
    public void ahead(List<Asked> asked) {
        Abreast.on(asked.stream().distinct().toList(), a -> known(a.panel).panel(), this::after);
    }

    /**
     * Stiffness over the one as built, at the place that is softest as found.
     *
     * @param treatments of the whole face; empty is as found
     * @return empty where it cannot be calculated
     */
    public Optional<Quantiles> after(String panel, List<Treatment> treatments) {
        return after(new Asked(panel, treatments));
    }

    /** The same. */
    public Optional<Quantiles> after(Asked asked) {
        Optional<Quantiles> known = told.get(asked);
        if (known == null) {
            known = reckoned(asked.panel, asked.treatments);
            told.put(asked, known);
        }
        return known;
    }

    private Optional<Quantiles> reckoned(String panel, List<Treatment> treatments) {
        Kept kept = kept(panel);
        PanelStiffness known = kept.known;
        PanelInput input = kept.input;
        PanelSpec middle = kept.patches.with(Outlook.MIDDLE, treatments);
        for (State same : List.of(State.AS_FOUND, State.AFTER_INJECTION, State.AFTER_RECORE)) {
            if (input.in(same).middle().equals(middle) && input.in(same).equals(kept.patches.with(treatments))) {
                return Optional.of(known.in(same).ofAsBuilt());
            }
        }
        if (middle.equals(input.built()) && kept.patches.with(treatments).equals(Prospects.all(middle))) {
            return Optional.of(known.in(State.AS_BUILT).ofAsBuilt());
        }
        try {
            State full = treatments.stream().anyMatch(t -> t instanceof Treatment.Fill)
                    ? State.AFTER_INJECTION
                    : State.AFTER_RECORE;
            return Optional.of(gain(known, full, middle, kept.cells, memory));
        } catch (RuntimeException e) {
            return Optional.empty(); // the panel's own defect is told where it is calculated as found
        }
    }

    /**
     * Stiffness over the one as built in a state that is told as a gain only. The middle is calculated; the range is that of a state
     * between as found and the one in which all of the panel is treated, by how much of the way the middle comes (in logarithms):
     * what is left untreated varies as found, what is treated as after it.
     *
     * @param known the panel's figures
     * @param full the state with all treated
     * @param cells of the panel in other states
     */
    static Quantiles gain(PanelStiffness known, State full, PanelSpec state, CellMatrices cells, Memory memory) {
        double mm = memory.of(new Sink(state, known.softest().coordinate()), sink -> sink.mm(cells));
        double ratio = known.in(State.AS_BUILT).deflectionMm() / mm;
        Quantiles from = known.in(State.AS_FOUND).ofAsBuilt();
        Quantiles to = known.in(full).ofAsBuilt();
        double way = Math.log(to.p50() / from.p50());
        double come = Math.abs(way) < NO_WAY ? 0 : Math.max(0, Math.min(1, Math.log(ratio / from.p50()) / way));
        return new Quantiles(
                ratio * between(from.p10() / from.p50(), to.p10() / to.p50(), come),
                ratio,
                ratio * between(from.p90() / from.p50(), to.p90() / to.p50(), come));
    }

    /**
     * What a panel has of its stiffness as built after treatments where one thing is at the ends of its range, all else as estimated:
     * its own figure after the advised plan times a ratio of linear deflections on one coarse mesh, which serves for a ratio. Where all
     * that is loose is bonded again, as after most plans, nothing is left to touch or to pull. Things without which the
     * panel would be the same are left out, and all of them where it cannot be calculated.
     *
     * @param treatments of what is advised
     */
    public Map<Doubt, Ends> ends(String panel, List<Treatment> treatments) {
        Kept kept = kept(panel);
        StateStiffness planned = kept.known.states().get(State.AFTER_PLAN);
        if (planned == null) {
            return Map.of();
        }
        try {
            Sway sway = new Sway(
                    outlook -> kept.patches.with(outlook, treatments),
                    kept.face,
                    kept.known.softest().coordinate());
            double share = planned.ofAsBuilt().p50();
            Map<Doubt, Ends> ends = new ConcurrentHashMap<>();
            Stream.of(Doubt.values()).parallel().forEach(doubt -> sway.of(doubt)
                    .ifPresent(r -> ends.put(doubt, new Ends(share * r.low(), share * r.high()))));
            return Map.copyOf(ends);
        } catch (RuntimeException e) {
            return Map.of(); // the panel's own defect is told where it is calculated as found
        }
    }

    private static double between(double from, double to, double come) {
        return Math.pow(from, 1 - come) * Math.pow(to, come);
    }

    /** What stays the same of a panel, whatever is done to it. */
    private record Kept(PanelStiffness known, FaceDamage face, Patches patches, PanelInput input, CellMatrices cells) {}

    private Kept kept(String panel) {
        return kept.computeIfAbsent(panel, name -> {
            PanelStiffness known = known(name);
            FaceDamage face = damage.face(known.panel().face());
            PanelInput input = PanelInput.of(survey, face, known.panel(), new CaseLoads(List.of(), List.of()), memory);
            return new Kept(
                    known, face, new Patches(survey, face, known.panel()), input, new CellMatrices(input.built()));
        });
    }
}
