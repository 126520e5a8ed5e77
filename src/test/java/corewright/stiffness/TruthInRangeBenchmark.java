package corewright.stiffness;

import corewright.bench.InventedDeck;
import corewright.bench.InventedTruth.Kind;
import corewright.bench.TrialDecks;
import corewright.bench.Truth;
import corewright.damage.Damage;
import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Quantiles;
import corewright.intake.SurveyFolder;
import corewright.overlay.Overlay;
import corewright.overlay.Pieces;
import corewright.reuse.Memory;
import corewright.sandwich.CellMatrices;
import corewright.sandwich.spec.CoreMaterial;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Patch;
import corewright.survey.Survey;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;

/**
 * How often the stiffness from the true damage lies in the range stated from the survey: invented decks of every kind that
 * has damage, as found, at the place each panel's stiffness is told for, elements and material laws the same on both sides. So
 * it judges extents, depths and the range they make, not the model. Stands beside the package's tests because it asks the
 * package's inside. Run with a folder of decks of known truth, or with decks of each kind and the first seed: {@code mvn -o -q test-compile exec:java
 * -Dexec.classpathScope=test -Dexec.mainClass=corewright.stiffness.TruthInRangeBenchmark -Dexec.args="6 5000"}.
 */
public final class TruthInRangeBenchmark {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** Takes the stairs of a raster's cells away. */
    private static final double SMOOTH = 0.7;

    /** Stiffness is told in whole parts of a hundred: a truth that rounds to an end of the range is in it. */
    private static final double HALF_A_PART = 0.005;

    private final PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    private int inside;
    private int stiffer;
    private int softer;

    private TruthInRangeBenchmark() {}

    /** @param arguments a folder that holds one folder a deck; or decks of each kind and the first seed */
    public static void main(String[] arguments) throws IOException {
        TruthInRangeBenchmark benchmark = new TruthInRangeBenchmark();
        if (arguments.length == 1) {
            for (Path deck : TrialDecks.decks(Path.of(arguments[0]))) {
                Survey survey = SurveyFolder.read(deck).survey();
                benchmark.deck(String.valueOf(deck.getFileName()), survey, Truth.read(deck));
            }
            return;
        }
        long first = Long.parseLong(arguments[1]);
        for (long seed = first; seed < first + Long.parseLong(arguments[0]); seed++) {
            for (Kind kind : Kind.values()) {
                if (kind != Kind.NONE) {
                    InventedDeck deck = new InventedDeck(kind, seed);
                    benchmark.deck(kind + "-" + seed, deck.survey(), deck.grids());
                }
            }
        }
    }

    private void deck(String name, Survey survey, Truth truth) {
        DamageMap damage = Damage.fit(survey, new Memory()).map();
        for (FaceDamage face : damage.faces().stream().filter(FaceDamage::told).toList()) {
            for (DeckPanel panel : DeckPanels.of(survey, face.face()).panels()) {
                panel(name, survey, truth, face, panel);
            }
        }
    }

    private void panel(String name, Survey survey, Truth truth, FaceDamage face, DeckPanel cut) {
        PanelInput input = PanelInput.of(survey, face, cut, new CaseLoads(List.of(), List.of()), new Memory());
        PanelSpec real = real(input.built(), truth, survey);
        if (input.damaged() || !real.patches().isEmpty()) {
            PanelStiffness panel = PanelStudy.found(input);
            Coordinate place = panel.softest().coordinate();
            double mm = new Sink(real, place).mm(new CellMatrices(real));
            count(name + " " + cut.name(), panel, panel.in(State.AS_BUILT).deflectionMm() / mm);
        }
    }

    private void count(String name, PanelStiffness panel, double truth) {
        Quantiles range = panel.in(State.AS_FOUND).ofAsBuilt();
        boolean above = truth > range.p90() + HALF_A_PART;
        boolean below = truth < range.p10() - HALF_A_PART;
        stiffer += above ? 1 : 0;
        softer += below ? 1 : 0;
        inside += above || below ? 0 : 1;
        out.printf(
                Locale.ROOT,
                "%-24s stated %.3f (%.3f to %.3f), true %.3f%s; inside %d, truly stiffer %d, truly softer %d%n",
                name,
                range.p50(),
                range.p10(),
                range.p90(),
                truth,
                above ? " STIFFER" : below ? " SOFTER" : "",
                inside,
                stiffer,
                softer);
    }

    /**
     * Patches as a survey makes them, from what is truly there: wet, then loose, then each void with its mean depth. Rot is none of
     * the truth's: core is as rotten as the pilot holes in it say, on both sides.
     */
    static PanelSpec real(PanelSpec built, Truth truth, Survey survey) {
        List<Patch> patches = new ArrayList<>();
        Rot rot = new Rot(truth, survey, built.core().material());
        for (Polygon wet : area(truth, truth::wetAt, built.outline())) {
            patches.add(new Patch.Core(wet, rot.of(wet, i -> truth.wetAt(i) && !truth.looseAt(i))));
        }
        IntPredicate soft = i -> truth.looseAt(i) && truth.wetAt(i);
        for (Polygon loose : area(truth, soft, built.outline())) {
            CoreMaterial below = rot.of(loose, i -> soft.test(i) && !truth.emptyAt(i));
            patches.add(new Patch.Loose(loose, 0, Optional.of(below)));
        }
        area(truth, i -> truth.looseAt(i) && !truth.wetAt(i), built.outline())
                .forEach(a -> patches.add(new Patch.Loose(a, 0)));
        for (Polygon empty : area(truth, truth::emptyAt, built.outline())) {
            double depth = 0;
            int cells = 0;
            boolean soaked = false;
            for (int i = 0; i < truth.depth().size(); i++) {
                if (truth.emptyAt(i) && empty.contains(GEOMETRY.createPoint(centre(truth, i)))) {
                    depth += truth.depth().at(i);
                    cells++;
                    soaked |= truth.wetAt(i);
                }
            }
            double mean = Math.min(built.core().thicknessMm(), depth / Math.max(1, cells));
            Optional<CoreMaterial> below = soaked ? Optional.of(rot.of(empty, truth::emptyAt)) : Optional.empty();
            patches.add(new Patch.Loose(empty, mean, below));
        }
        return built.with(patches);
    }

    /** What is left of wet core, by the pilot holes in it. */
    private record Rot(Truth truth, Survey survey, CoreMaterial built) {
        CoreMaterial of(Polygon area, IntPredicate kind) {
            return Softening.found(survey.readings().probes().stream()
                            .filter(p ->
                                    area.covers(GEOMETRY.createPoint(p.spot().coordinate())))
                            .filter(p -> IntStream.range(0, truth.wet().size())
                                    .anyMatch(i -> kind.test(i)
                                            && Math.abs(centre(truth, i).x
                                                            - p.spot().xMm())
                                                    <= truth.wet().cell / 2
                                            && Math.abs(centre(truth, i).y
                                                            - p.spot().yMm())
                                                    <= truth.wet().cell / 2))
                            .toList())
                    .of(built);
        }
    }

    private static Coordinate centre(Truth truth, int i) {
        return new Coordinate(truth.wet().x(i), truth.wet().y(i));
    }

    /** The cells of a kind on a panel, without stairs and without crumbs of a foot's tenth. */
    private static List<Polygon> area(Truth truth, IntPredicate kind, Polygon panel) {
        double half = truth.wet().cell / 2;
        List<Geometry> cells = new ArrayList<>();
        for (int i = 0; i < truth.wet().size(); i++) {
            if (truth.wet().onDeck(i) && kind.test(i)) {
                Coordinate c = centre(truth, i);
                cells.add(GEOMETRY.toGeometry(new Envelope(c.x - half, c.x + half, c.y - half, c.y + half)));
            }
        }
        if (cells.isEmpty()) {
            return List.of();
        }
        Geometry smooth = TopologyPreservingSimplifier.simplify(UnaryUnionOp.union(cells), SMOOTH * 2 * half);
        return Pieces.polygons(Overlay.intersection(smooth, panel)).stream()
                .filter(p -> p.getArea() > 1000)
                .toList();
    }
}
