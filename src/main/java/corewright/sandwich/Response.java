package corewright.sandwich;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a panel does under its loads. */
public final class Response {
    /** How far displacements may move in a last repetition, as part of them: far below a printed digit. */
    private static final double SETTLED = 1e-7;

    private final PanelModel model;

    /** The loads' forces on the outer skin, by node. */
    private final double[] forces;

    /** The loads as a right-hand side. */
    private final double[] load;

    /** Displacements by the linear theory, and by this answer's. */
    private final double[] linear;

    private final double[] x;

    /** Whether the skins' strains hold von Karman's terms. */
    private final boolean large;

    private @Nullable List<CellStress> stresses;

    private Response(PanelModel model, double[] forces, double[] load, double[] linear, double[] x, boolean large) {
        this.model = model;
        this.forces = forces;
        this.load = load;
        this.linear = linear;
        this.x = x;
        this.large = large;
    }

    /**
     * @param forces on the outer skin, by node
     * @param load the same as a right-hand side
     */
    static Response linear(PanelModel model, double[] forces, double[] load) {
        double[] x = model.factor.solveRefined(model.matrix, load);
        return new Response(model, forces, load, x, x, false);
    }

    /**
     * Deflections at a place, positive inward.
     *
     * @param outerMm of the outer skin
     * @param innerMm of the inner skin
     */
    public record Deflection(double x, double y, double outerMm, double innerMm) {}

    /** Deflections at a place; empty outside the panel. */
    public Optional<Deflection> at(double px, double py) {
        return model.loads.locate(px, py).map(spot -> {
            CellShape cell = model.mesh.shape(spot.cell());
            double[] row = new CellRows(cell).deflection(spot.r(), spot.s());
            return new Deflection(px, py, along(spot.cell(), row, 0), along(spot.cell(), row, 1));
        });
    }

    /** The node at which the outer skin moves most, either way. */
    public Deflection largest() {
        int most = 0;
        double[] outer = new double[model.mesh.nodes()];
        double[] inner = new double[model.mesh.nodes()];
        for (int v = 0; v < outer.length; v++) {
            double[] q = model.nodes.displacements(v, x, model.matrix.first(v));
            outer[v] = q[2];
            inner[v] = q[7];
            most = Math.abs(outer[v]) > Math.abs(outer[most]) ? v : most;
        }
        return new Deflection(model.mesh.x[most], model.mesh.y[most], outer[most], inner[most]);
    }

    private double along(int cell, double[] row, int surface) {
        return Stresses.dot(row, surface, model.surfaces(cell), model.cellDisplacements(cell, x));
    }

    /** The same loads with loose skins resting on what is below them instead of passing through it. */
    public Response withContact() {
        double[] resting = model.factor.solveRefined(model.matrix, model.withContact(load));
        return new Response(model, forces, load, linear, resting, false);
    }

    /**
     * The same loads with the pull of skins that move far (von Karman's strains) and with loose skins resting on what is
     * below them; empty where no equilibrium is found.
     */
    public Optional<Response> largeDeflection() {
        return largeDeflection(SETTLED);
    }

    /**
     * The same, as near as asked.
     *
     * @param part how far displacements may still be off, as part of them
     */
    public Optional<Response> largeDeflection(double part) {
        return model.pull()
                .settle(load, linear, part)
                .map(found -> new Response(model, forces, load, linear, found, true));
    }

    /** Where a loose skin nears what is below it most; empty where nothing is loose. */
    public Optional<LooseSkin> looseSkin() {
        int[] nodes = model.loose.nodes;
        int best = -1;
        for (int k = 0; k < nodes.length; k++) {
            if (best < 0 || model.approach(nodes[k], x) > model.approach(nodes[best], x)) {
                best = k;
            }
        }
        return best < 0
                ? Optional.empty()
                : Optional.of(LooseSkin.of(
                        model.mesh.x[nodes[best]],
                        model.mesh.y[nodes[best]],
                        model.approach(nodes[best], x),
                        model.loose.gap[best],
                        model.panel.outer().thicknessMm()));
    }

    /** Stresses at the centres of all elements; found once. */
    public synchronized List<CellStress> stresses() {
        if (stresses == null) {
            stresses = new Stresses(model, forces, x, large).all();
        }
        return stresses;
    }

    /** How {@link CellStress#crush} is found. */
    String crushFormula() {
        return model.together.isEmpty()
                ? "Ez (w_o - w_i) / c + p/2, p what presses on the outer skin"
                : "what presses on the outer skin, p; beside loose skins and in soft cores Ez (w_o - w_i) / c + p/2";
    }

    /**
     * Largest resultant core shear, MPa, at element centres more than a core thickness from edges and rims: at a rim the
     * exact solution has no bound. If no element is that far from them, of all elements.
     */
    public double maxCoreShearMPa() {
        List<CellStress> stresses = stresses();
        return stresses.stream()
                .filter(s -> s.place().clear())
                .mapToDouble(CellStress::shear)
                .max()
                .orElseGet(() ->
                        stresses.stream().mapToDouble(CellStress::shear).max().orElse(0));
    }

    /** Sum of what the supports carry, N, from the cells at them; equals the sum of the loads. */
    public double reactionSumN() {
        boolean[] held = new Edges(model.panel, model.mesh).deflection;
        double sum = 0;
        for (int v = 0; v < held.length; v++) {
            sum += held[v] ? forces[v] : 0;
        }
        for (int c = 0; c < model.mesh.cells.length; c++) {
            sum -= shareOfSupports(c, held);
        }
        return sum;
    }

    /** Forces of a cell on the held deflections of its corners. */
    private double shareOfSupports(int c, boolean[] held) {
        int[] corners = model.mesh.cells[c];
        boolean any = false;
        for (int v : corners) {
            any |= held[v];
        }
        if (!any) {
            return 0;
        }
        double[] k = model.cellMatrix(c);
        double[] q = model.cellDisplacements(c, x);
        int surfaces = model.surfaces(c);
        double[] extra =
                large ? new Karman(model.panel, model.mesh.shape(c), surfaces).forces(q) : new double[q.length];
        double sum = 0;
        for (int a = 0; a < corners.length; a++) {
            for (int s = 0; held[corners[a]] && s < surfaces; s++) {
                int row = (a * surfaces + s) * CellRows.PER_SURFACE + 2;
                sum += extra[row];
                for (int j = 0; j < q.length; j++) {
                    sum += k[row * q.length + j] * q[j];
                }
            }
        }
        return sum;
    }
}
