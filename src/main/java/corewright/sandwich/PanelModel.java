package corewright.sandwich;

import corewright.linear.Around;
import corewright.linear.BlockMatrix;
import corewright.linear.Cholesky;
import corewright.linear.NotPositiveDefiniteException;
import corewright.linear.SparseVector;
import corewright.sandwich.spec.Load;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.UnsupportedPanelException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A panel meshed, assembled and factored once; any number of loads can be put on it. */
public final class PanelModel {
    /** A foot, 0.1 MPa, squeezes a core of this modulus and 12.5 mm by 0.01 mm. */
    private static final double STIFF_MPA = 125;

    final PanelSpec panel;
    final MeshSize meshSize;
    final Mesh mesh;
    final List<Zone> zones;
    final RimLayers layers;
    final Nodes nodes;

    /** Null where stretching and bending hang together. */
    final @Nullable NeutralPlane neutral;

    /** Nodes at which both skins deflect and turn as one; none in a model with nothing left out. */
    final BitSet together;

    private final boolean tellsAll;

    final LoadVector loads;
    final LooseAreas loose;
    final BlockMatrix matrix;
    final Cholesky factor;

    /** The same factor with the panel on the nodes of all loose cells; null where nothing is loose. */
    final @Nullable Around around;

    private final CellMatrices cells;
    private boolean @Nullable [] clear;
    private @Nullable Contact contact;
    private @Nullable PanelPull pull;
    private final Map<Long, LargeDeflection> large = new HashMap<>();

    /** A panel with its mesh, and what follows from these alone. */
    private record Meshed(
            PanelSpec panel,
            MeshSize size,
            List<Zone> zones,
            Mesh mesh,
            LoadVector loads,
            LooseAreas loose,
            CellMatrices cells) {
        static Meshed of(PanelSpec panel, MeshSize size, CellMatrices cells) {
            Mesh mesh = Mesher.mesh(panel, size);
            if (mesh.cells.length == 0) {
                throw new UnsupportedPanelException("the panel is smaller than one element");
            }
            List<Zone> zones = Zone.of(panel);
            return new Meshed(
                    panel, size, zones, mesh, new LoadVector(mesh), new LooseAreas(panel, mesh, zones), cells);
        }
    }

    private PanelModel(Meshed on, boolean deflectionsOnly) {
        panel = on.panel;
        meshSize = on.size;
        zones = on.zones;
        mesh = on.mesh;
        loads = on.loads;
        loose = on.loose;
        cells = on.cells;
        layers = deflectionsOnly ? new RimLayers(mesh) : new RimLayers(panel, mesh, zones);
        neutral = NeutralPlane.of(panel, zones);
        together = deflectionsOnly ? together() : new BitSet();
        nodes = Nodes.of(panel, mesh, zones, layers, together, neutral);
        tellsAll = !deflectionsOnly || new RimLayers(panel, mesh, zones).none();
        matrix = new Assembly(panel, mesh, zones, nodes).matrix(this::cellMatrix);
        try {
            if (loose.none()) {
                factor = Cholesky.factor(matrix, nodes.stretch, mesh.gridX, mesh.gridY);
                around = null;
            } else {
                around = Cholesky.around(matrix, nodes.stretch, mesh.gridX, mesh.gridY, loose.corners);
                factor = around.factor();
            }
        } catch (NotPositiveDefiniteException e) {
            throw new UnsupportedPanelException("a part of its skins is held by nothing that the mesh can see");
        }
    }

    /**
     * Meshes and factors a panel.
     *
     * @throws UnsupportedPanelException where nothing holds it, or a loose part of it
     */
    public static PanelModel of(PanelSpec panel, MeshSize size) {
        return new PanelModel(Meshed.of(panel, size, new CellMatrices(panel)), false);
    }

    /**
     * The same for deflections, in less than half the work: away from loose areas, where the core is stiff enough through its thickness,
     * both skins deflect and turn as one, and the core has one layer beside the rims of voids too, which the outer skin hardly feels.
     * What squeezes the core there is half of what presses on the outer skin, by equilibrium ({@link Stresses}).
     */
    public static PanelModel forDeflections(PanelSpec panel, MeshSize size) {
        return forDeflections(panel, size, new CellMatrices(panel));
    }

    /** @param cells of panels with the same skins and thickness of core */
    public static PanelModel forDeflections(PanelSpec panel, MeshSize size, CellMatrices cells) {
        return new PanelModel(Meshed.of(panel, size, cells), true);
    }

    /** The same panel for {@link Margins} too: with two layers of core where the rims of voids want them. */
    public PanelModel forMargins() {
        return tellsAll ? this : new PanelModel(new Meshed(panel, meshSize, zones, mesh, loads, loose, cells), false);
    }

    /** Nodes away from loose cells by one cell or more, of stiff cores. */
    private BitSet together() {
        BitSet apart = new BitSet();
        for (int c = 0; c < mesh.cells.length; c++) {
            Zone zone = zones.get(mesh.zone[c]);
            if (!zone.bonded() || layers.split[c] || zone.material().ezMPa() < STIFF_MPA) {
                Arrays.stream(mesh.cells[c]).forEach(apart::set);
            }
        }
        BitSet beside = new BitSet();
        for (int[] cell : mesh.cells) {
            if (Arrays.stream(cell).anyMatch(apart::get)) {
                Arrays.stream(cell).forEach(beside::set);
            }
        }
        BitSet together = new BitSet();
        together.set(0, mesh.nodes());
        together.andNot(beside);
        return together;
    }

    /** Linear answer to loads that act together. */
    public Response solve(List<Load> acting) {
        double[] forces = loads.forces(acting);
        return Response.linear(this, forces, rightHandSide(forces));
    }

    public PanelSpec panel() {
        return panel;
    }

    /** Number of nodes of the mesh. */
    public int meshNodes() {
        return mesh.nodes();
    }

    /** Number of unknowns solved for. */
    public int unknowns() {
        return matrix.size();
    }

    /** What the mesh could not follow: zones whose area it misses by more than one per cent. */
    public List<String> notes() {
        double[] exact = Partition.areas(panel);
        double[] meshed = new double[exact.length];
        for (int c = 0; c < mesh.cells.length; c++) {
            meshed[mesh.zone[c]] += mesh.shape(c).area();
        }
        List<String> notes = new ArrayList<>();
        for (int z = 0; z < exact.length; z++) {
            if (Math.abs(meshed[z] - exact[z]) > 0.01 * exact[z] + 1e-9 * exact[0]) {
                notes.add(String.format(
                        Locale.ROOT,
                        "%s covers %.0f mm² and its elements %.0f mm²: too small or thin for this mesh",
                        z == 0 ? "the panel outside its patches" : "patch " + z,
                        exact[z],
                        meshed[z]));
            }
        }
        return notes;
    }

    /** Element sizes used. */
    public MeshSize meshSize() {
        return meshSize;
    }

    /** @param forces square to the panel on the outer skin, by node */
    double[] rightHandSide(double[] forces) {
        double[] b = new double[matrix.size()];
        for (int v = 0; v < mesh.nodes(); v++) {
            double[] all = new double[Nodes.PER_NODE];
            all[2] = forces[v];
            nodes.addForces(v, all, b, matrix.first(v));
        }
        return b;
    }

    /** Forces of a node that drive the outer skin inward and the inner one outward. */
    static double[] pair(double forceN) {
        double[] forces = new double[Nodes.PER_NODE];
        forces[2] = forceN;
        forces[CellRows.PER_SURFACE + 2] = -forceN;
        return forces;
    }

    /** By how much the skins have neared each other at a node. */
    double approach(int v, double[] x) {
        double[] q = nodes.displacements(v, x, matrix.first(v));
        return q[2] - q[CellRows.PER_SURFACE + 2];
    }

    /** Linear displacements at the nodes of loose cells, zeros elsewhere, by forces anywhere: less work than to solve for all. */
    double[] solveLoose(SparseVector forces) {
        return around == null ? new double[matrix.size()] : around.solve(forces);
    }

    /** By how much a solution brings the skins nearer at the nodes where they may meet. */
    double[] approaches(double[] x) {
        return Arrays.stream(loose.nodes).mapToDouble(v -> approach(v, x)).toArray();
    }

    /** A right-hand side with the pushes of loose skins that come to rest on what is below, the rest linear. */
    double[] withContact(double[] load) {
        double[] x = solveLoose(SparseVector.of(load));
        double[] pushed = load.clone();
        addPushes(contact().settle(approaches(x), new BitSet()), pushed);
        return pushed;
    }

    /** Contact of the loose skins; the compliance it needs is found once. */
    synchronized Contact contact() {
        if (contact == null) {
            List<SparseVector> pushes = Contact.pushes(this);
            contact = new Contact(loose, factor.compliance(pushes, pushes.size()));
        }
        return contact;
    }

    /** Cells of which no corner is within a core thickness of an edge or a rim. */
    synchronized boolean[] clear() {
        if (clear == null) {
            clear = mesh.clear(panel.core().thicknessMm() * (1 + 1e-6));
        }
        return clear;
    }

    synchronized void keep(Contact found) {
        contact = found;
    }

    /** Von Karman's strain everywhere on the panel; what it needs is put together once. */
    synchronized PanelPull pull() {
        if (pull == null) {
            pull = new PanelPull(this);
        }
        return pull;
    }

    /** The panel condensed onto some cells, once for each set of them. */
    synchronized LargeDeflection large(int[] cells) {
        return large.computeIfAbsent(
                (long) cells.length << Integer.SIZE | cells[0], key -> new LargeDeflection(this, cells));
    }

    /** Forces, and the pushes of loose skins on each other. */
    SparseVector withPushes(SparseVector forces, double[] push) {
        double[] load = full(forces);
        addPushes(push, load);
        return SparseVector.of(load);
    }

    double[] full(SparseVector forces) {
        double[] load = new double[matrix.size()];
        forces.addTo(load);
        return load;
    }

    /** Takes the pushes of loose skins on each other from a right-hand side. */
    void addPushes(double[] push, double[] rightHandSide) {
        for (int k = 0; k < push.length; k++) {
            nodes.addForces(loose.nodes[k], pair(-push[k]), rightHandSide, matrix.first(loose.nodes[k]));
        }
    }

    /** Adds forces on a cell's displacements to a right-hand side. */
    void addCellForces(int cell, double[] forces, double[] rightHandSide) {
        int stride = CellRows.PER_SURFACE * surfaces(cell);
        int[] corners = mesh.cells[cell];
        for (int a = 0; a < corners.length; a++) {
            double[] all = new double[Nodes.PER_NODE];
            System.arraycopy(forces, a * stride, all, 0, stride);
            nodes.addForces(corners[a], all, rightHandSide, matrix.first(corners[a]));
        }
    }

    int surfaces(int cell) {
        return layers.split[cell] ? 3 : 2;
    }

    /** The stiffness of a cell. */
    double[] cellMatrix(int cell) {
        return cells.of(mesh.shape(cell), zones.get(mesh.zone[cell]), surfaces(cell), neutral);
    }

    /** Displacements of a cell's corners in the order of {@link CellStiffness}. */
    double[] cellDisplacements(int cell, double[] x) {
        int[] corners = mesh.cells[cell];
        int stride = CellRows.PER_SURFACE * surfaces(cell);
        double[] q = new double[corners.length * stride];
        for (int a = 0; a < corners.length; a++) {
            double[] node = nodes.displacements(corners[a], x, matrix.first(corners[a]));
            System.arraycopy(node, 0, q, a * stride, stride);
        }
        return q;
    }
}
