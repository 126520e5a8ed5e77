package corewright.decision;

import corewright.damage.Quantiles;
import java.util.Optional;

/**
 * One row of the owner's table of choices.
 *
 * @param title what is done, in the owner's words
 * @param regions which regions and how
 * @param costLow in the survey's currency
 * @param costHigh in the survey's currency
 * @param daysLow in the yard
 * @param daysHigh in the yard
 * @param ofAsBuilt stiffness of the worst panel over the one as built, p10 in the worse tenth of cases; empty where no
 *     panel was calculated
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
        Optional<Quantiles> ofAsBuilt,
        String toKnow,
        boolean advised) {}
