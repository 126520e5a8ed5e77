package corewright.report.cards;

import corewright.repair.plan.Holding;
import corewright.survey.Face.Posture;
import java.util.List;

/** The sentences of a card that no plan changes, chosen by how one works at the face and by whether the mix rises. */
record CardWords(Posture posture, boolean rises) {
    /** Boxes to tick before the first hole. */
    List<String> gear() {
        String eyes = posture == Posture.OVERHEAD ? "goggles, face shield" : "eye protection";
        return List.of(
                eyes,
                "gloves, two pairs",
                "P3 mask",
                "long sleeves",
                "power off",
                "fuel vapour out",
                "looked " + Holding.of(posture).otherSide());
    }

    /** What to do with an open vent. */
    String vent() {
        return posture == Posture.OVERHEAD
                ? "vent. Plug it the moment mix shows."
                : "vent. Open until mix shows, then plug it.";
    }

    /** When to stop, gravest last. */
    List<String> stops() {
        return List.of(next(), nothing(), MUCH, skin(), WARM, through());
    }

    private static final String MUCH =
            "**A hole has taken one and a half times its grams, and mix shows where it is due.** Write it down. Find where it goes"
                    + " before pouring more.";

    private static final String WARM =
            "**The cup feels warm, or its work time is over.** Do not pour. Carry it out to the tray.";

    private String nothing() {
        return "**Nothing shows where mix is due.** The space is larger: mix another cup at once and "
                + (rises
                        ? "give the holes beside it, and those left, their high grams. After the rise pour what is left there."
                        : "go on in the same hole until mix shows at the next or its high grams are in; in the end pour what is left"
                                + " where nothing shows.");
    }

    private String next() {
        return switch (posture) {
            case DECK -> "**Mix shows at the next place.** Plug the hole you leave and move to where it showed.";
            case WALL ->
                "**Mix shows at the next place.** Plug the hole you leave before you move up to where it showed.";
            case OVERHEAD -> "**Mix shows at the next place, or drips.** Plug that hole at once; only vents stay open.";
        };
    }

    private String skin() {
        String moves =
                switch (posture) {
                    case DECK -> "**The skin lifts 1 mm at the straightedge.**";
                    case WALL -> "**The skin stands off 1 mm at the straightedge.**";
                    case OVERHEAD -> "**The skin comes down 1 mm at the straightedge.**";
                };
        String vent = posture == Posture.OVERHEAD
                ? " Stop. Tighten the props; let air out at the vent."
                : " Stop. Open the nearest vent.";
        return moves + vent + (rises ? " Wait for the rise to end." : " Wait until it has settled.");
    }

    private String through() {
        String where =
                switch (posture) {
                    case DECK -> "below";
                    case WALL -> "behind";
                    case OVERHEAD -> "above";
                };
        return "**Anything comes through " + where + ".** Stop. Close it there before the next cup.";
    }

    /** Who mixes, and where. */
    String mixing() {
        return "Mix with gloves, eye protection and an A2 mask in moving air, never alone below deck, no flame or spark near."
                + " Leftovers harden in the open; waste as local rules say. The product’s data sheet wins over this card.";
    }
}
