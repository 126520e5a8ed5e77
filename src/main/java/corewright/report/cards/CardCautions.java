package corewright.report.cards;

import java.util.List;
import java.util.regex.Pattern;

/**
 * The plan's own cautions, each on the side of the card where the hand is: about holes at the drill, about pressure beside
 * what holds the skin, all others at the cups. Every sentence stands on one of them.
 */
record CardCautions(List<String> drilling, List<String> holding, List<String> mixing) {
    private static final Pattern DRILLING = Pattern.compile("\\b[Dd]rill(ed|ing)?\\b|\\bholes? stand");
    private static final Pattern HOLDING =
            Pattern.compile("kPa|before filling|Weigh the skin|weights slide|dam of tape");

    static CardCautions of(List<String> cautions) {
        List<String> drilling = cautions.stream()
                .filter(c -> DRILLING.matcher(c).find() && !HOLDING.matcher(c).find())
                .toList();
        List<String> holding =
                cautions.stream().filter(c -> HOLDING.matcher(c).find()).toList();
        List<String> mixing = cautions.stream()
                .filter(c -> !drilling.contains(c) && !holding.contains(c))
                .toList();
        return new CardCautions(drilling, holding, mixing);
    }
}
