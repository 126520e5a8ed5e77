package corewright.report;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.assessment.Assessment;
import corewright.repair.plan.RecorePlan;
import corewright.report.cards.WorkCards;
import corewright.report.data.ScheduleCsv;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.NullUnmarked;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every sentence on a card is true of how one works there: over it, before it, under it, with a mix that rises or not. */
@NullUnmarked // JUnit fills the folder
class PostureWordsTest {
    /** What is said of a deck alone. */
    private static final List<String> DECK_ONLY = List.of(
            "weights",
            "weigh the skin",
            "walk",
            "low to high",
            "steps here",
            "looked from below",
            "look from below",
            "lower skin",
            "skin lifts",
            "lift this skin",
            "through below",
            "hold the skin down");

    private static final List<String> OVERHEAD_ONLY = List.of(
            "props",
            "face shield",
            "dam of tape",
            "comes down",
            "looked from above",
            "look from above",
            "through above",
            "skin up",
            "fall on you");

    private static final List<String> WALL_ONLY = List.of(
            "presses with",
            "the lowest first",
            "stands off",
            "looked from behind",
            "look from behind",
            "through behind",
            "strut");

    /** Takes the mixes that rise off the list of those that may carry load. */
    private static final String ONLY_THIN = """

            resins:
              - { name: epoxy-foam-240, structural: no }
              - { name: epoxy-foam-300, structural: no }
            """;

    /** Each is read in more than one way. */
    private static final Map<String, Assessment> ASSESSED = new HashMap<>();

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "0, false",
        "3, true",
        "45, false",
        "60, true",
        "90, true",
        "115, false",
        "130, true",
        "180, true",
        "180, false"
    })
    void cards(double tilt, boolean rising) throws IOException {
        Assessment assessment = assessed(tilt, rising);
        assertThat(assessment.decision().injections()).as("a card to read").isNotEmpty();
        assertThat(assessment
                                .survey()
                                .settings()
                                .resin(assessment.decision().injections().get(0).resin())
                                .expansion()
                        > 1)
                .isEqualTo(rising);
        Path file = folder.resolve("work-cards.pdf");
        WorkCards.write(assessment, file);
        String cards = String.join(" ", Printed.pages(file).values())
                .replaceAll("\\s+", " ")
                .toLowerCase(Locale.ROOT);
        Path table = folder.resolve("schedule.csv");
        ScheduleCsv.of(assessment).write(table);
        String schedule = Files.readString(table);
        String all = tilt <= 45 ? "deck" : tilt <= 120 ? "wall" : "overhead";
        none(cards, all.equals("deck") ? WALL_ONLY : DECK_ONLY);
        none(cards, all.equals("overhead") ? WALL_ONLY : OVERHEAD_ONLY);
        switch (all) {
            case "deck" -> {
                assertThat(cards)
                        .contains(
                                "weights on",
                                "may be walked on",
                                "hold the skin down",
                                "look from below",
                                "lower skin");
                assertThat(cards.contains("low to high")).isEqualTo(tilt > 0.5);
                assertThat(schedule).contains(",weights,", ",walk,");
            }
            case "wall" -> {
                assertThat(cards).contains(WALL_ONLY).contains("plate on", "may be loaded", "inner skin");
                assertThat(schedule).contains(",plate,", ",load,").doesNotContain("walk", "weights");
            }
            default -> {
                assertThat(cards).contains(OVERHEAD_ONLY).contains("mix runs out of every open hole", "inner skin");
                assertThat(schedule).contains(",props,", ",load,").doesNotContain("walk", "weights");
            }
        }
        assertThat(cards.contains("rise")).as("a mix that rises").isEqualTo(rising);
        assertThat(cards)
                .contains("naval architect or surveyor")
                .contains("p3", "a2 mask", "power", "fuel vapour", "waste");
    }

    /** What the cut asks for. */
    @ParameterizedTest
    @CsvSource({"3, 'Prop the deck'", "90, 'Strut the wall'", "180, 'Prop a board under the piece'"})
    void cuts(double tilt, String words) throws IOException {
        List<RecorePlan> plans = assessed(tilt, true).plans().recores();
        assertThat(plans).isNotEmpty();
        for (RecorePlan plan : plans) {
            String cautions = String.join(" ", plan.cautions());
            assertThat(cautions).contains(words, "P3 mask", "A2 filter", "fuel vapour");
            assertThat(Stream.of("Prop the deck", "Strut the wall", "Prop a board under the piece")
                            .filter(cautions::contains))
                    .containsExactly(words);
        }
    }

    /** What the cards ask for can be bought. */
    @ParameterizedTest
    @CsvSource({"3, eye protection", "180, sealed goggles and face shield"})
    void whatCardsAskForIsOnTheBuyingList(double tilt, String eyes) throws IOException {
        Assessment assessment = assessed(tilt, true);
        Map<String, Double> buy = assessment.decision().buying().stream()
                .collect(Collectors.toMap(i -> i.item(), i -> i.buy(), (a, b) -> a));
        long holes = assessment.decision().injections().stream()
                .flatMap(p -> p.holes().stream())
                .filter(h -> h.drilled())
                .count();
        assertThat(buy)
                .containsKeys(
                        "gloves", "dust mask P3", "half mask with A2 filters", eyes, "masking tape", "epoxy filler");
        assertThat(buy.get("plugs for the holes")).isGreaterThanOrEqualTo(holes);
        int people = assessment.survey().settings().crew().people();
        assertThat(buy.get(eyes)).isGreaterThan(people);
    }

    @AfterAll
    static void forget() {
        ASSESSED.clear();
    }

    private Assessment assessed(double tilt, boolean rising) throws IOException {
        String key = tilt + " " + rising;
        if (!ASSESSED.containsKey(key)) {
            ASSESSED.put(key, afresh(tilt, rising));
        }
        return ASSESSED.get(key);
    }

    private Assessment afresh(double tilt, boolean rising) throws IOException {
        return Printed.withoutPanels(Printed.intake(Printed.DECK, folder.resolve("in"), (file, text) -> {
            String turned = text.replace("tilt_deg: 3, uphill_deg: 180", "tilt_deg: " + tilt + ", uphill_deg: 90");
            return rising || !file.equals("survey.yaml") ? turned : turned + ONLY_THIN;
        }));
    }

    private static void none(String text, List<String> words) {
        words.forEach(w -> assertThat(text).doesNotContain(w));
    }
}
