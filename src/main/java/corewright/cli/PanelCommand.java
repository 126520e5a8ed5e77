package corewright.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.intake.text.Complaint;
import corewright.intake.text.RefusedException;
import corewright.report.data.PanelsJson;
import corewright.sandwich.LooseSkin;
import corewright.sandwich.Margin;
import corewright.sandwich.Margins;
import corewright.sandwich.MeshSize;
import corewright.sandwich.PanelModel;
import corewright.sandwich.Response;
import corewright.sandwich.Theory;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.UnsupportedPanelException;
import corewright.survey.Origin;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code corewright panel}: deflections and stresses of one sandwich panel. */
@Command(
        name = "panel",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Calculates deflections and core shear of one sandwich panel (finite elements).",
            "A calculation supports a naval architect's judgement and does not replace it."
        })
@SuppressWarnings("NullAway.Init") // the command line sets the required options
final class PanelCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "PANEL.yaml", description = "The panel, its patches and its loads.")
    private Path file;

    @Option(names = "--out", required = true, paramLabel = "F.json", description = "Where results go.")
    private Path out;

    @Option(names = "--json", description = "Print results as JSON.")
    private boolean json;

    @Override
    public Integer call() throws IOException {
        if (Files.exists(out) && Files.exists(file) && Files.isSameFile(file, out)) {
            throw new ParameterException(spec.commandLine(), "--out: would overwrite the panel " + file);
        }
        WholeFile.check(out);
        PanelFile panel = PanelReader.read(file);
        ObjectNode results = results(panel);
        WholeFile.write(out, results.toPrettyString() + "\n");
        if (json) {
            spec.commandLine().getOut().println(results.toPrettyString());
        } else {
            print(results);
        }
        return Corewright.DONE;
    }

    private ObjectNode results(PanelFile file) throws RefusedException {
        PanelSpec panel = file.panel();
        MeshSize size =
                file.meshMm().isPresent() ? MeshSize.of(panel, file.meshMm().getAsDouble()) : MeshSize.automatic(panel);
        try {
            PanelModel model = PanelModel.of(panel, size);
            Response response = model.solve(file.loads());
            return describe(file, model, response);
        } catch (UnsupportedPanelException e) {
            throw refused(List.of(String.valueOf(e.getMessage())));
        }
    }

    private RefusedException refused(List<String> problems) {
        Origin origin = new Origin(file.getFileName().toString(), 0);
        return new RefusedException(
                problems.stream().map(p -> new Complaint(origin, "", p)).toList());
    }

    private ObjectNode describe(PanelFile file, PanelModel model, Response response) throws RefusedException {
        ObjectNode root = new ObjectMapper().createObjectNode();
        putDeflections(root.putArray("deflections"), file, response);
        root.put("theory", Theory.LINEAR.words());
        root.put("max_core_shear_MPa", response.maxCoreShearMPa());
        root.put("reaction_sum_N", response.reactionSumN());
        Optional<LooseSkin> loose = response.looseSkin();
        if (loose.isPresent()) {
            PanelsJson.looseSkin(root.putObject("loose_skin"), loose.get());
            if (loose.get().linearMm() > loose.get().gapMm()) {
                Response resting = response.withContact();
                ObjectNode node = root.putObject("with_contact");
                putDeflections(node.putArray("deflections"), file, resting);
                node.put("theory", Theory.CONTACT.words());
            }
        }
        if (loose.filter(LooseSkin::overstated).isPresent() || wide(model, response)) {
            putLargeDeflection(root, file, response, loose);
        }
        ArrayNode margins = root.putArray("margins");
        for (Margin m : Margins.of(model.panel(), response, file.strengths())) {
            PanelsJson.margin(margins.addObject(), m);
        }
        ObjectNode mesh = root.putObject("mesh");
        mesh.put("size_mm", model.meshSize().generalMm());
        mesh.put("rim_size_mm", model.meshSize().rimMm());
        mesh.put("nodes", model.meshNodes());
        mesh.put("unknowns", model.unknowns());
        ArrayNode notes = root.putArray("notes");
        notes(loose, model, response).forEach(notes::add);
        return root;
    }

    /** Whether a panel moves more than half its own thickness: up to there plates are taken as linear (common practice). */
    private static boolean wide(PanelModel model, Response response) {
        PanelSpec panel = model.panel();
        double thickness = panel.outer().thicknessMm()
                + panel.core().thicknessMm()
                + panel.inner().thicknessMm();
        return Math.abs(response.largest().innerMm()) > thickness / 2;
    }

    private void putLargeDeflection(ObjectNode root, PanelFile file, Response response, Optional<LooseSkin> loose)
            throws RefusedException {
        Optional<Response> large = response.largeDeflection();
        if (large.isEmpty()) {
            root.putNull("large_deflection");
            return;
        }
        ObjectNode node = root.putObject("large_deflection");
        putDeflections(node.putArray("deflections"), file, large.get());
        loose.flatMap(l -> large.get().at(l.x(), l.y()))
                .ifPresent(d -> node.put("approach_mm", d.outerMm() - d.innerMm()));
        node.put("max_core_shear_MPa", large.get().maxCoreShearMPa());
        node.put("reaction_sum_N", large.get().reactionSumN());
        node.put("theory", Theory.LARGE.words());
    }

    private static List<String> notes(Optional<LooseSkin> loose, PanelModel model, Response response) {
        List<String> notes = new ArrayList<>(model.notes());
        if (loose.filter(LooseSkin::overstated).isEmpty() && wide(model, response)) {
            notes.add(String.format(
                    Locale.ROOT,
                    "the panel moves %.2f mm, more than half its thickness: the linear figure overstates it;"
                            + " large_deflection counts the pull of its skins",
                    response.largest().outerMm()));
        }
        loose.filter(LooseSkin::overstated)
                .ifPresent(l -> notes.add(String.format(
                        Locale.ROOT,
                        "the loose skin moves %.2f mm against the other, more than half its thickness: the linear figure"
                                + " overstates it; large_deflection counts the skins' own pull (by a rule of thumb for a"
                                + " disc about %.2f mm)",
                        l.linearMm(),
                        l.restrainedMm())));
        loose.filter(l -> l.linearMm() > l.gapMm())
                .ifPresent(l -> notes.add(String.format(
                        Locale.ROOT,
                        "deflections are linear and pass through the gap of %.2f mm; with_contact has the skin rest on"
                                + " what is below",
                        l.gapMm())));
        notes.add("have a naval architect or surveyor judge what follows from these figures");
        return notes;
    }

    private void putDeflections(ArrayNode list, PanelFile file, Response response) throws RefusedException {
        List<String> outside = new ArrayList<>();
        for (PanelFile.Probe spot : file.probePoints()) {
            Optional<Response.Deflection> found = response.at(spot.x(), spot.y());
            if (found.isEmpty()) {
                outside.add(String.format(
                        Locale.ROOT, "probe_points: (%s, %s) lies outside the panel", spot.x(), spot.y()));
            } else {
                list.addObject()
                        .put("x", spot.x())
                        .put("y", spot.y())
                        .put("outer_mm", found.get().outerMm())
                        .put("inner_mm", found.get().innerMm());
            }
        }
        if (!outside.isEmpty()) {
            throw refused(outside);
        }
    }

    private void print(ObjectNode results) {
        var writer = spec.commandLine().getOut();
        print(writer, results);
        if (results.path("with_contact").has("deflections")) {
            print(writer, results.get("with_contact"));
        }
        if (results.path("large_deflection").has("deflections")) {
            print(writer, results.get("large_deflection"));
        }
        writer.printf(
                Locale.ROOT,
                "largest core shear %.4f MPa%n",
                results.get("max_core_shear_MPa").asDouble());
        writer.printf(
                Locale.ROOT,
                "sum of reactions %.3f N%n",
                results.get("reaction_sum_N").asDouble());
        results.get("margins")
                .forEach(m -> writer.printf(
                        Locale.ROOT,
                        "%s: %.3f of capacity%n",
                        m.get("what").asText(),
                        m.get("ratio").asDouble()));
        writer.println("core shear and margins " + results.get("theory").asText());
        results.get("notes").forEach(n -> writer.println("note: " + n.asText()));
    }

    private static void print(PrintWriter writer, JsonNode figures) {
        writer.println("deflections " + figures.get("theory").asText());
        writer.println("      x mm      y mm  outer mm  inner mm");
        figures.get("deflections")
                .forEach(d -> writer.printf(
                        Locale.ROOT,
                        "%10.1f%10.1f%10.4f%10.4f%n",
                        d.get("x").asDouble(),
                        d.get("y").asDouble(),
                        d.get("outer_mm").asDouble(),
                        d.get("inner_mm").asDouble()));
    }
}
