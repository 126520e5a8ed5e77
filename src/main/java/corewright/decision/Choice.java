package corewright.decision;

/**
 * One row of the owner's table of choices.
 *
 * @param title what is done, in the owner's words
 * @param regions which regions and how
 * @param costLow in the survey's currency
 * @param costHigh in the survey's currency
 * @param daysLow in the yard
 * @param daysHigh in the yard
 * @param toKnow one thing to know
 * @param advised the row the tool advises
 */
public record Choice(
        String title,
        String regions,
        double costLow,
        double costHigh,
        double daysLow,
        double daysHigh,
        String toKnow,
        boolean advised) {}
