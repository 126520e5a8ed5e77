package corewright.report.cards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.Assessments;
import corewright.assessment.Assessment;
import corewright.damage.Damage;
import corewright.damage.DamageMap;
import corewright.decision.Decision;
import corewright.intake.SurveyFolder;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RepairOptions;
import corewright.repair.work.WorkDone;
import corewright.reuse.Memory;
import corewright.stiffness.StiffnessMap;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Survey;
import corewright.survey.WorkEntry;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo's cards after a log, read back: sums of grams agree over holes, cups and what is still to mix. */
class WorkPapersTest {
    private static final Pattern DONE = Pattern.compile("(R\\d+-\\w+) ([0-9.]+) ([0-9.]+) done\\b");
    private static final Pattern OPEN = Pattern.compile("(R\\d+-\\w+) ([0-9.]+) ([0-9.]+) open\\b");
    private static final Pattern TOGETHER = Pattern.compile("together ([0-9.]+) ([0-9.]+) ([0-9.]+)");
    private static final Pattern CUP =
            Pattern.compile("(?m)(?:done|open) (\\d+) .*? ([0-9]+\\.[0-9]) ([0-9]+\\.[0-9])$");
    private static final Pattern MIX =
            Pattern.compile("Cups together ([0-9.]+) g; still to mix: ([0-9.]+) g resin, ([0-9.]+) g hardener");

    private static final Pattern LEFT_CUP =
            Pattern.compile("(?m)^\\d+ (R\\d+)(, held back)?: .*? ([0-9]+\\.[0-9]) ([0-9]+\\.[0-9]) \\d+(?: |$)");
    private static final Pattern LEFT_SUM = Pattern.compile("[a-z0-9-]+: ([0-9.]+) g and ([0-9.]+) g");
    private static final Pattern LISTED = Pattern.compile("[a-z0-9-]+ (?:resin|hardener) ([0-9]+\\.[0-9]) [0-9]+ g\\b");

    /** Half of the cups' and holes' last digit each. */
    private static final double TENTH = 0.1;

    @Test
    void gramsAgreeOverHolesCupsAndList(@TempDir Path dir) throws IOException {
        Survey survey = SurveyFolder.read(Path.of("demo-data/quillwort")).survey();
        DamageMap damage = Damage.fit(survey, new Memory()).map();
        RepairOptions options = Assessments.alone(survey, damage, new Memory());
        Decision decision = Assessments.decide(survey, damage, options);
        InjectionPlan plan = decision.injections().get(0);
        List<WorkEntry> log = new ArrayList<>();
        plan.holes().stream()
                .filter(Hole::fills)
                .limit(3)
                .forEach(h -> log.add(new WorkEntry(
                        new Origin("log.csv", log.size() + 2), h.id(), 60.0 * log.size(), 17.3 + log.size(), null)));
        Survey worked = Part.LOG.with(survey, log);
        Assessment assessment = Assessments.of(
                worked,
                damage,
                StiffnessMap.NONE,
                options,
                decision,
                WorkDone.of(worked, damage, decision.injections()).findings(),
                List.of());
        String page = page(assessment, dir.resolve("cards.pdf"), plan.region() + " next");

        double planned = sum(DONE, page, 2) + sum(OPEN, page, 2);
        Matcher together = found(TOGETHER, page);
        assertThat(planned).isCloseTo(number(together, 1), within(1e-9));
        assertThat(sum(DONE, page, 3))
                .isCloseTo(number(together, 2), within(1e-9))
                .isCloseTo(17.3 + 18.3 + 19.3, within(1e-9));
        assertThat(sum(OPEN, page, 3)).isCloseTo(number(together, 3), within(1e-9));

        Matcher mix = found(MIX, page);
        assertThat(sum(CUP, page, 3)).isCloseTo(number(mix, 1), within(1e-9));
        assertThat(sum(CUP, page, 2)).isCloseTo(number(mix, 2), within(1e-9));
        assertThat(number(mix, 2) + number(mix, 3)).isCloseTo(number(mix, 1), within(1e-9));
        double waste = survey.settings().drilling().wasteFraction();
        assertThat(number(mix, 1) * (1 - waste)).isCloseTo(number(together, 3), within(TENTH));
        // the planned grams of all holes are those of the plan's cups
        double cups = plan.batches().stream()
                .mapToDouble(b -> b.partAG() + b.partBG())
                .sum();
        assertThat(planned).isCloseTo(cups * (1 - waste), within(TENTH * 4));
        assertThat(page(assessment, dir.resolve("again.pdf"), "Record of the work"))
                .contains("3 lines, 54.9 g"); // the head may break here
        String left = page(assessment, dir.resolve("left.pdf"), "Left to do");
        leftToDo(assessment, plan, left, number(mix, 1));
    }

    /** Cups of the page, its sums and its list are equal to the last digit, and hold what the card of the region has. */
    private static void leftToDo(Assessment assessment, InjectionPlan begun, String page, double next) {
        List<InjectionPlan> plans = assessment.left().plans();
        double resin = 0;
        double both = 0;
        double own = 0;
        Matcher cups = LEFT_CUP.matcher(page);
        while (cups.find()) {
            resin += number(cups, 3);
            both += number(cups, 4);
            own += cups.group(1).equals(begun.region()) && cups.group(2) == null ? number(cups, 4) : 0;
        }
        assertThat(own).as("cups of the begun region in\n" + page).isCloseTo(next, within(1e-9));
        double listed = sum(LISTED, page, 1);
        assertThat(resin).isCloseTo(sum(LEFT_SUM, page, 1), within(1e-9));
        assertThat(both - resin).isCloseTo(sum(LEFT_SUM, page, 2), within(1e-9));
        assertThat(both).as("cups against the list, in\n" + page).isCloseTo(listed, within(1e-9));
        assertThat(holes(plans)).isEqualTo(holes(assessment.decision().injections()) - 3);
    }

    private static long holes(List<InjectionPlan> plans) {
        return plans.stream().mapToLong(p -> p.holes().size()).sum();
    }

    private static double sum(Pattern pattern, String page, int group) {
        Matcher matcher = pattern.matcher(page);
        double sum = 0;
        while (matcher.find()) {
            sum += number(matcher, group);
        }
        assertThat(sum).as(pattern + " in\n" + page).isPositive();
        return sum;
    }

    private static Matcher found(Pattern pattern, String page) {
        Matcher matcher = pattern.matcher(page);
        assertThat(matcher.find()).as(pattern + " in\n" + page).isTrue();
        return matcher;
    }

    private static double number(Matcher matcher, int group) {
        return Double.parseDouble(matcher.group(group));
    }

    private static String page(Assessment assessment, Path file, String title) throws IOException {
        WorkCards.write(assessment, file);
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            for (int i = 1; i <= pdf.getNumberOfPages(); i++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setSortByPosition(true);
                stripper.setStartPage(i);
                stripper.setEndPage(i);
                String text = stripper.getText(pdf);
                if (text.contains(title)) {
                    return text;
                }
            }
        }
        throw new AssertionError("no page " + title);
    }
}
