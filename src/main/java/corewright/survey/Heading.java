package corewright.survey;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What stands at the head of every page; an empty text where the survey does not say. All but the notes are lines: a break in one is
 * read as a space.
 */
public record Heading(
        String name,
        LocalDate surveyed,
        String vessel,
        String client,
        String surveyor,
        String weather,
        @Nullable Integer daysAshore,
        String notes) {
    public Heading {
        name = line(name);
        vessel = line(vessel);
        client = line(client);
        surveyor = line(surveyor);
        weather = line(weather);
    }

    private static String line(String text) {
        return text.replaceAll("\\s*[\\n\\r\\t]\\s*", " ");
    }

    /** The same with other notes. */
    public Heading withNotes(String others) {
        return new Heading(name, surveyed, vessel, client, surveyor, weather, daysAshore, others);
    }
}
