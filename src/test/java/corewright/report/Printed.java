package corewright.report;

import corewright.Assessments;
import corewright.assessment.Assessed;
import corewright.assessment.Assessment;
import corewright.assessment.Assessor;
import corewright.assessment.Earlier;
import corewright.assessment.Progress;
import corewright.damage.Damage;
import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.decision.Decision;
import corewright.intake.Intake;
import corewright.intake.SurveyFolder;
import corewright.repair.plan.RepairOptions;
import corewright.reuse.Memory;
import corewright.stiffness.StiffnessMap;
import corewright.survey.Finding;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** Surveys taken through the chain, and the words of all that is printed of them. */
public final class Printed {
    static final Path DECK = Path.of("src/test/resources/corewright/cli/small-deck");
    static final Path TRIAL = Path.of("src/test/resources/trial-decks/deck12");
    static final Path DEMO = Path.of("demo-data/quillwort");

    /** What the assessment before this one worked out, which saves time and changes nothing (ReuseTest). */
    private static Earlier earlier = Earlier.NONE;

    private static Memory memory = new Memory();

    private Printed() {}

    /** A copy of a folder, each file's text changed by its name. */
    static Intake intake(Path from, Path copy, BiFunction<String, String, String> change) throws IOException {
        Files.createDirectories(copy);
        try (DirectoryStream<Path> files = Files.newDirectoryStream(from)) {
            for (Path file : files) {
                String name = file.getFileName().toString();
                Files.writeString(copy.resolve(name), change.apply(name, Files.readString(file)));
            }
        }
        return SurveyFolder.read(copy);
    }

    /** The same with only survey.yaml changed. */
    static Intake intake(Path from, Path copy, UnaryOperator<String> yaml) throws IOException {
        return intake(from, copy, (name, text) -> name.equals("survey.yaml") ? yaml.apply(text) : text);
    }

    /** The whole chain. */
    static Assessment assessed(Intake in) {
        Assessed assessed = Assessor.assess(in.survey(), in.findings(), earlier, Progress.NONE);
        earlier = assessed.earlier();
        return assessed.assessment();
    }

    /** The chain without panels, whose stiffness takes most of its time. */
    public static Assessment withoutPanels(Intake in) {
        memory = memory.next();
        Survey survey = in.survey();
        DamageMap damage = Damage.fit(survey, memory).map();
        RepairOptions options = Assessments.alone(survey, damage, memory);
        Decision decision = Assessments.decide(survey, damage, options);
        List<Finding> found = damage.faces().stream()
                .map(FaceDamage::findings)
                .flatMap(List::stream)
                .toList();
        return Assessments.of(
                survey,
                damage,
                StiffnessMap.NONE,
                options,
                decision,
                Finding.once(List.of(in.findings(), found, decision.findings())),
                damage.faces().stream().flatMap(f -> f.next().stream()).toList());
    }

    /** The words of every page that a run writes, by file and page, and of every map; thin spaces as plain ones. */
    static Map<String, String> pages(Assessment assessment, Path out) throws IOException {
        Outputs.write(assessment, out, Progress.NONE, Map::of);
        Map<String, String> pages = new TreeMap<>();
        try (var files = Files.walk(out)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String name = out.relativize(file).toString();
                if (name.endsWith(".pdf")) {
                    pdf(file, name, pages);
                } else if (name.endsWith(".svg")) {
                    pages.put(name, words(Files.readString(file)));
                }
            }
        }
        return pages;
    }

    /** The words of a document, by page. */
    static Map<String, String> pages(Path pdf) throws IOException {
        Map<String, String> pages = new TreeMap<>();
        pdf(pdf, String.valueOf(pdf.getFileName()), pages);
        return pages;
    }

    private static void pdf(Path file, String name, Map<String, String> pages) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.put(name + " page " + page, plain(stripper.getText(pdf)));
            }
        }
    }

    /** What stands between the tags of a drawing, a line each. */
    private static String words(String svg) {
        return plain(svg.replaceAll("(?s)<style.*?</style>", "")
                .replaceAll("<[^>]*>", "\n")
                .replace("&#8230;", "…")
                .replace("&amp;", "&")
                .replaceAll("\n\\s*", "\n"));
    }

    private static String plain(String text) {
        return text.replace('\u2009', ' ').replace('\u00a0', ' ').replace("\r\n", "\n");
    }
}
