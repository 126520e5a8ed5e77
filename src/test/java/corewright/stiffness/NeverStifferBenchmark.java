package corewright.stiffness;

import corewright.bench.TrialDecks;
import corewright.bench.Truth;
import corewright.damage.Damage;
import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.intake.SurveyFolder;
import corewright.reuse.Memory;
import corewright.sandwich.FootLoadMap;
import corewright.sandwich.FootLoadMap.Place;
import corewright.sandwich.PanelModel;
import corewright.sandwich.Theory;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Patch;
import corewright.survey.Survey;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;

/**
 * Whether damage ever stiffens a panel: as built against as found and against the true damage, on one mesh, at the places where the panel
 * gives most by the linear theory, as built and damaged. Run with a folder of decks of known truth: {@code mvn -o -q test-compile exec:java
 * -Dexec.classpathScope=test -Dexec.mainClass=corewright.stiffness.NeverStifferBenchmark -Dexec.args=FOLDER}.
 */
public final class NeverStifferBenchmark {
    private static final double STEP_MM = 150;

    private final PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    private double worst;

    private NeverStifferBenchmark() {}

    public static void main(String[] folders) throws IOException {
        NeverStifferBenchmark benchmark = new NeverStifferBenchmark();
        for (Path deck : TrialDecks.decks(Path.of(folders[0]))) {
            benchmark.deck(
                    String.valueOf(deck.getFileName()), SurveyFolder.read(deck).survey(), Truth.read(deck));
        }
    }

    private void deck(String name, Survey survey, Truth truth) {
        DamageMap damage = Damage.fit(survey, new Memory()).map();
        for (FaceDamage face : damage.faces().stream().filter(FaceDamage::told).toList()) {
            for (DeckPanel cut : DeckPanels.of(survey, face.face()).panels()) {
                PanelInput input = PanelInput.of(survey, face, cut, new CaseLoads(List.of(), List.of()), new Memory());
                compare(name + " " + cut.name() + " as found", input.built(), input.found());
                compare(
                        name + " " + cut.name() + " truly",
                        input.built(),
                        TruthInRangeBenchmark.real(input.built(), truth, survey));
            }
        }
    }

    private void compare(String name, PanelSpec built, PanelSpec damaged) {
        if (damaged.patches().isEmpty()) {
            return;
        }
        List<Patch> rims = new ArrayList<>();
        damaged.patches()
                .forEach(p -> rims.add(new Patch.Core(p.area(), built.core().material())));
        List<Patch> all = new ArrayList<>(rims);
        all.addAll(damaged.patches());
        PanelModel before = model(built.with(rims));
        PanelModel after = model(built.with(all));
        List<Coordinate> places = List.of(softest(before), softest(after));
        List<Place> asBuilt = FootLoadMap.at(before, places, Theory.LARGE).places();
        List<Place> asDamaged = FootLoadMap.at(after, places, Theory.LARGE).places();
        for (int k = 0; k < asBuilt.size(); k++) {
            double stiffer = asBuilt.get(k).deflectionMm() / asDamaged.get(k).deflectionMm() - 1;
            worst = Math.max(worst, stiffer);
            out.printf(
                    Locale.ROOT,
                    "%-32s as built %.3f mm (linear %.3f), damaged %.3f mm (linear %.3f), stiffer by %+.2f %%; worst so far %.2f %%%n",
                    name,
                    asBuilt.get(k).deflectionMm(),
                    asBuilt.get(k).linearMm(),
                    asDamaged.get(k).deflectionMm(),
                    asDamaged.get(k).linearMm(),
                    100 * stiffer,
                    100 * worst);
        }
    }

    private static PanelModel model(PanelSpec spec) {
        return PanelModel.forDeflections(spec, StudyMesh.of(spec));
    }

    private static Coordinate softest(PanelModel model) {
        return FootLoadMap.of(model, STEP_MM).places().stream()
                .max(Comparator.comparingDouble(Place::deflectionMm))
                .map(p -> new Coordinate(p.x(), p.y()))
                .orElseThrow();
    }
}
