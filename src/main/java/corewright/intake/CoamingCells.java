package corewright.intake;

import corewright.intake.text.LengthUnit;
import corewright.intake.text.Numerals;
import corewright.intake.text.Row;
import corewright.intake.text.Words;
import corewright.survey.Feature.Coaming;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The cells of a plan's row that tell of the coaming along an opening's edge. */
final class CoamingCells {
    static final String HEIGHT = "coaming_height_mm";
    static final String THICKNESS = "coaming_thickness_mm";
    static final String SKIN = "coaming_skin";

    private final Row row;
    private final Set<String> skins;

    CoamingCells(Row row, Set<String> skins) {
        this.row = row;
        this.skins = skins;
    }

    /** The coaming; none after a complaint. */
    Optional<Coaming> read() {
        Double height = length(HEIGHT);
        Double thickness = length(THICKNESS);
        String skin = row.text(SKIN);
        boolean known = skin.isEmpty() || skins.contains(skin);
        if (!known) {
            row.expected(SKIN, Words.or(skins.stream().sorted().limit(20).toList()));
        }
        return height == null || thickness == null || !known
                ? Optional.empty()
                : Optional.of(new Coaming(height, thickness, Optional.of(skin).filter(s -> !s.isEmpty())));
    }

    /** Complains of cells that no coaming claims: whoever fills them means that there is one. */
    Optional<Coaming> none() {
        for (String column : List.of(HEIGHT, THICKNESS, SKIN)) {
            if (row.has(column)) {
                row.expected(column, "nothing, as only an opening whose edge is coaming has one");
            }
        }
        return Optional.empty();
    }

    private @Nullable Double length(String column) {
        Double mm = row.length(column, LengthUnit.MM);
        if (mm != null && !(mm >= SurveyRules.THINNEST_MM && mm <= SurveyRules.THICKEST_MM)) {
            row.expected(
                    column,
                    "a length from " + Numerals.plain(SurveyRules.THINNEST_MM) + " to "
                            + Numerals.plain(SurveyRules.THICKEST_MM) + " mm");
            return null;
        }
        return mm;
    }
}
