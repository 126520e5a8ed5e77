package corewright.report;

import corewright.assessment.Assessed;
import corewright.report.cards.WorkCards;
import corewright.report.owner.OwnerReport;
import corewright.report.record.SurveyRecord;
import corewright.report.template.DrillTemplate;
import corewright.store.Pictures;
import java.io.IOException;
import java.nio.file.Path;

/** The papers of a run, one by one: each is the same file that {@link Outputs} writes under its name. */
public enum Papers {
    OWNER_REPORT("Report to the owner", "owner-report.pdf") {
        @Override
        public void write(Assessed assessed, Pictures pictures, Path file) throws IOException {
            OwnerReport.write(assessed.assessment(), pictures, file);
        }
    },
    SURVEY_RECORD("Survey record", "survey-record.pdf") {
        @Override
        public void write(Assessed assessed, Pictures pictures, Path file) throws IOException {
            SurveyRecord.write(assessed.assessment(), Outputs.insights(assessed), pictures, file);
        }
    },
    WORK_CARDS("Work cards", "work-cards.pdf") {
        @Override
        public void write(Assessed assessed, Pictures pictures, Path file) throws IOException {
            WorkCards.write(assessed.assessment(), file);
        }
    },
    DRILL_TEMPLATE("Drill template, A4 tiles", "drill-template.pdf") {
        @Override
        public void write(Assessed assessed, Pictures pictures, Path file) throws IOException {
            DrillTemplate.tiles(assessed.assessment(), file);
        }
    },
    DRILL_SHEET("Drill template, large sheets", "drill-template-sheet.pdf") {
        @Override
        public void write(Assessed assessed, Pictures pictures, Path file) throws IOException {
            DrillTemplate.sheets(assessed.assessment(), file);
        }
    };

    private final String title;
    private final String file;

    Papers(String title, String file) {
        this.title = title;
        this.file = file;
    }

    public String title() {
        return title;
    }

    /** Its name among the outputs of a run. */
    public String file() {
        return file;
    }

    /**
     * Writes it.
     *
     * @param pictures photographs and logo
     */
    public abstract void write(Assessed assessed, Pictures pictures, Path file) throws IOException;
}
