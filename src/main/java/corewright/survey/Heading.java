package corewright.survey;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What stands at the head of every page; an empty text where the survey does not say. */
public record Heading(
        String name,
        LocalDate surveyed,
        String vessel,
        String client,
        String surveyor,
        String weather,
        @Nullable Integer daysAshore,
        String notes) {
    /** The same with other notes. */
    public Heading withNotes(String others) {
        return new Heading(name, surveyed, vessel, client, surveyor, weather, daysAshore, others);
    }
}
