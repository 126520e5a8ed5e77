package corewright.report.record;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import corewright.damage.Insight;
import corewright.drawing.kit.LyingSheet;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Parts.Part;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.plates.Plate;
import corewright.drawing.plates.PlateKind;
import corewright.drawing.plates.Plates;
import corewright.report.data.InputHash;
import corewright.report.page.FirmHead;
import corewright.report.page.Flow;
import corewright.report.page.PageFrame;
import corewright.report.page.PageSize;
import corewright.report.page.PdfFile;
import corewright.report.page.Program;
import corewright.report.page.Prose;
import corewright.report.page.Titles;
import corewright.store.Pictures;
import corewright.survey.Heading;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** survey-record.pdf: what was done, read and concluded, and what that rests on. */
public final class SurveyRecord {
    private static final Prose TITLE = new Prose(18, 7.2);
    private static final double SIGNED = 26;
    private static final Type NOTE = new Type(Typeface.TEXT, 8.5);
    private static final Type FOOT = new Type(Typeface.TEXT, 7.5);

    /** @param upright laid out by {@link PageFrame}; else a lying sheet with its own foot */
    private record Page(boolean upright, PdfFile.Painting painting) {}

    private final Assessment assessment;
    private final Map<String, Insight> insights;
    private final String hash;
    private final PageSize size;
    private final LyingSheet lying;
    private final RecordPictures pictures;
    private final FirmHead firm;

    private SurveyRecord(Assessment assessment, Map<String, Insight> insights, Pictures pictures) throws IOException {
        firm = new FirmHead(assessment.survey(), pictures);
        this.pictures = new RecordPictures(assessment.survey(), pictures);
        this.assessment = assessment;
        this.insights = insights;
        hash = InputHash.of(assessment.survey());
        size = PageSize.of(assessment.survey());
        lying = LyingSheet.of(assessment.survey());
    }

    /** @param insights by face, how its map stands up to its readings; a face without one goes without the check */
    public static void write(Assessment assessment, Map<String, Insight> insights, Path file) throws IOException {
        write(assessment, insights, Pictures.NONE, file);
    }

    /** @param pictures photographs and logo */
    public static void write(Assessment assessment, Map<String, Insight> insights, Pictures pictures, Path file)
            throws IOException {
        new SurveyRecord(assessment, insights, pictures).write(file);
    }

    private void write(Path file) throws IOException {
        Heading heading = assessment.survey().heading();
        List<Page> pages = pages();
        try (PdfFile pdf = new PdfFile(
                Titles.boat(heading) + ", survey record",
                heading.surveyed(),
                assessment.survey().settings().terms().decimal())) {
            for (int i = 0; i < pages.size(); i++) {
                Page page = pages.get(i);
                int number = i + 1;
                PdfFile.Painting all = paper -> {
                    page.painting.on(paper);
                    foot(paper, page, number, pages.size());
                };
                if (page.upright) {
                    pdf.page(size, all);
                } else {
                    pdf.page(lying, all);
                }
            }
            pdf.save(file);
        }
    }

    private List<Page> pages() throws IOException {
        List<Page> pages = new ArrayList<>();
        portrait(pages, facts(), " · survey record");
        for (Plate plate : Plates.of(assessment, Set.of(PlateKind.CONDITION))) {
            pages.add(new Page(false, plate::paint));
            String face = plate.layout().spec().face();
            boolean moisture =
                    !assessment.survey().readings().on(face).moisture().isEmpty();
            boolean taps = !assessment.survey().readings().on(face).taps().isEmpty();
            if (moisture) {
                pages.add(new Page(false, p -> RecordMaps.moisture(p, assessment, face)));
            }
            if (taps) {
                pages.add(new Page(false, p -> RecordMaps.taps(p, assessment, face)));
            }
        }
        portrait(pages, appendix(), " · survey record, checks, readings and findings");
        return pages;
    }

    private void portrait(List<Page> pages, Flow flow, String what) {
        Heading heading = assessment.survey().heading();
        for (int i = 0; i < flow.pages(); i++) {
            int page = i;
            pages.add(new Page(true, paper -> {
                PageFrame.head(paper, Titles.boat(heading) + what, Titles.data(heading));
                flow.paint(paper, page);
            }));
        }
    }

    private Flow facts() throws IOException {
        Flow flow = new Flow(size);
        if (firm.heightMm() > 0) {
            flow.block(firm.heightMm(), firm::paint);
        }
        RecordFacts facts = new RecordFacts(assessment);
        RecordFound found = new RecordFound(assessment);
        String title = Prose.bold(Prose.plain(found.title()));
        flow.block(
                TITLE.height(title, PageFrame.FULL_WIDTH) + 2,
                (paper, top) -> TITLE.paint(paper, title, PageFrame.LEFT, top, PageFrame.FULL_WIDTH, Anchor.LEFT));
        facts.visit(flow);
        facts.instruments(flow);
        facts.method(flow);
        found.regions(flow);
        found.unread(flow);
        found.doubts(flow);
        found.limits(flow);
        rests(flow);
        flow.block(SIGNED, this::signed);
        return flow;
    }

    private void rests(Flow flow) {
        flow.answer(
                "Rests on",
                "Input data, SHA-256: " + fours(hash) + ". Program: Corewright " + Program.VERSION
                        + ". The same sum stands in summary.json under data_sha256. Whoever runs this program on the same survey gets"
                        + " the same sum and the same figures; another sum means other data. Photographs count by their names.");
    }

    private static String fours(String hex) {
        return hex.replaceAll("(.{4})(?=.)", "$1 ");
    }

    private void signed(Paper paper, double top) {
        Heading heading = assessment.survey().heading();
        PageFrame.hairline(paper, top);
        PageFrame.question(paper, "Signed", top + 2.4);
        double y = top + 19;
        double half = PageFrame.ANSWER_WIDTH / 2;
        paper.line(Pen.LEADER, PageFrame.ANSWERS, y, PageFrame.ANSWERS + half - 5, y);
        paper.line(Pen.LEADER, PageFrame.ANSWERS + half, y, PageFrame.RIGHT, y);
        signer(paper, heading.surveyor(), "surveyor · place, date", PageFrame.ANSWERS, y, half - 5);
        signer(paper, heading.client(), "received · date", PageFrame.ANSWERS + half, y, half);
    }

    private static void signer(Paper paper, String who, String as, double x, double y, double width) {
        String words = who.isBlank() ? as : Prose.plain(who) + ", " + as;
        Type type = NOTE.within(words, width, 1);
        paper.text(type.wrap(words, width).get(0), x, y + 4, type, Anchor.LEFT);
    }

    private Flow appendix() throws IOException {
        Flow flow = new Flow(size);
        checks(flow);
        pictures.photographs(flow);
        new RecordFound(assessment).findings(flow);
        ReadingList list = new ReadingList(Measure.of(assessment.survey()));
        assessment.survey().faces().forEach(f -> list.of(flow, assessment.survey(), f.name()));
        if (flow.empty()) {
            flow.answer("Readings", "None was taken.");
        }
        return flow;
    }

    private void checks(Flow flow) {
        RecordChecks checks = new RecordChecks(Measure.of(assessment.survey()));
        for (FaceDamage face : assessment.damage().faces()) {
            Insight insight = insights.get(face.face().name());
            if (insight != null) {
                checks.of(flow, face.face().name(), insight);
            }
        }
        RecordDrying.of(flow, assessment);
        RecordSensitivity.of(flow, assessment);
    }

    private void foot(Paper paper, Page page, int number, int pages) {
        String words = "data sha-256 " + fours(hash.substring(0, 16)) + " · Corewright " + Program.VERSION
                + " · an estimate from readings, not a view through the skin";
        if (page.upright) {
            PageFrame.foot(paper, size, words, number, pages);
        } else {
            String all = words + " · page " + number + " of " + pages;
            paper.part(Part.ASIDE, p -> p.text(all, lying.rightMm(), lying.footMm(), FOOT, Anchor.RIGHT));
        }
    }
}
