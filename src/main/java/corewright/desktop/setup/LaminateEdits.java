package corewright.desktop.setup;

import corewright.desktop.state.Typed;
import corewright.desktop.state.Units;
import corewright.survey.Edit;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Laminate;
import corewright.survey.Part;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;

/** The values of a laminate: as shown, and as an edit of what is typed. */
final class LaminateEdits {
    private static final String MEASURED = "measured here";
    private static final String PAPERS = "from papers";

    /** Beyond any sandwich deck: thicker is a slip of the finger. */
    private static final double MOST_SKIN_MM = 60;

    private static final double MOST_CORE_MM = 300;

    /** Thinner than any skin or core, and above zero. */
    private static final double LEAST_MM = 0.05;

    /** Kept to a millionth of a millimetre, so that 0.75 in are 19.05 mm. */
    private static final double MILLIONTHS = 1e6;

    private LaminateEdits() {}

    static SetupRow row(Survey survey, Laminate l, Units units) {
        return new SetupRow(
                l.name(),
                List.of(
                        SetupValue.typed(SetupField.NAME, l.name()),
                        SetupValue.typed(SetupField.OUTER, SetupText.thickness(l.outerSkinMm(), units)),
                        SetupValue.typed(SetupField.CORE_MM, SetupText.thickness(l.coreMm(), units)),
                        SetupValue.typed(SetupField.INNER, SetupText.thickness(l.innerSkinMm(), units)),
                        new SetupValue(
                                SetupField.SKIN,
                                l.skin(),
                                survey.materials().skins().keySet().stream()
                                        .sorted()
                                        .toList()),
                        new SetupValue(
                                SetupField.CORE,
                                l.core(),
                                survey.materials().cores().keySet().stream()
                                        .sorted()
                                        .toList()),
                        new SetupValue(
                                SetupField.MEASURED, l.measured() ? MEASURED : PAPERS, List.of(MEASURED, PAPERS))));
    }

    /** The laminate with one value as typed. */
    static Laminate changed(Survey survey, Laminate l, SetupField field, String text, Units units) throws Typed {
        return switch (field) {
            case NAME -> l.named(Typed.name("laminate", text, others(survey, l)));
            case OUTER -> l.thick(mm("The outer skin", text, MOST_SKIN_MM, units), l.coreMm(), l.innerSkinMm());
            case CORE_MM -> l.thick(l.outerSkinMm(), mm("The core", text, MOST_CORE_MM, units), l.innerSkinMm());
            case INNER -> l.thick(l.outerSkinMm(), l.coreMm(), mm("The inner skin", text, MOST_SKIN_MM, units));
            case SKIN -> l.of(text, l.core(), l.measured());
            case CORE -> l.of(l.skin(), text, l.measured());
            case MEASURED -> l.of(l.skin(), l.core(), text.equals(MEASURED));
            default -> throw new IllegalArgumentException("a laminate has no " + field);
        };
    }

    private static List<String> others(Survey survey, Laminate l) {
        return survey.laminates().stream()
                .map(Laminate::name)
                .filter(n -> !n.equals(l.name()))
                .toList();
    }

    private static double mm(String what, String text, double mostMm, Units units) throws Typed {
        double least = units.typed(LEAST_MM);
        String example = SetupText.thickness(mostMm > MOST_SKIN_MM ? 12.7 : 3.2, units);
        String expected = "a thickness above 0 and up to " + SetupText.thickness(mostMm, units) + " "
                + units.depthUnit() + ", such as " + example;
        double mm = units.mm(Typed.number(what, text, least, units.typed(mostMm) * (1 + 1e-9), expected));
        return Math.rint(mm * MILLIONTHS) / MILLIONTHS;
    }

    /** Exchanges the laminate; faces and laminate areas go by its name. */
    static Edit edit(Survey survey, Laminate before, Laminate now) {
        List<Edit> edits = new ArrayList<>();
        edits.add(Edit.replace(survey, Part.LAMINATES, before, now));
        if (!before.name().equals(now.name())) {
            for (Face face : survey.faces()) {
                Face renamed = with(face, before.name(), now.name());
                if (!renamed.equals(face)) {
                    edits.add(Edit.replace(survey, Part.FACES, face, renamed));
                }
            }
        }
        return edits.size() == 1 ? edits.get(0) : new Edit.Together(edits);
    }

    private static Face with(Face f, String before, String now) {
        List<Feature> features = f.features().stream()
                .map(feature -> feature instanceof Feature.LaminateArea a
                                && a.laminate().equals(before)
                        ? new Feature.LaminateArea(a.origin(), a.name(), a.geometry(), now)
                        : feature)
                .toList();
        String own = f.laminate().equals(before) ? now : f.laminate();
        return new Face(f.name(), f.tiltDeg(), f.uphillDeg(), f.outline(), f.edge(), own, features);
    }

    /** One more, like the last. */
    static Laminate fresh(Survey survey) {
        List<String> taken = survey.laminates().stream().map(Laminate::name).toList();
        Laminate last = survey.laminates().get(survey.laminates().size() - 1);
        return last.named(SetupText.freeName("laminate", taken)).of(last.skin(), last.core(), false);
    }

    /** Takes a laminate away that nothing is made of. */
    static Edit remove(Survey survey, Laminate l) throws Typed {
        for (Face face : survey.faces()) {
            boolean area = face.all(Feature.LaminateArea.class).stream()
                    .anyMatch(a -> a.laminate().equals(l.name()));
            if (area || face.laminate().equals(l.name())) {
                throw new Typed("Laminate " + l.name() + " stays: " + face.name() + " is made of it.");
            }
        }
        return Edit.remove(survey, Part.LAMINATES, l);
    }
}
