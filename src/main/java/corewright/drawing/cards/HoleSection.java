package corewright.drawing.cards;

import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Tone;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.survey.Face.Posture;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The laminate cut through at a hole, full size, with the bit and its collar: the collar can be laid on the paper.
 *
 * @param emptyMm expected empty space under the outer skin
 * @param stopMm from the outer surface to the drill's tip
 * @param posture overhead the bit comes from below, and the outer skin is the lower one
 */
public record HoleSection(
        double outerSkinMm,
        double coreMm,
        double innerSkinMm,
        double emptyMm,
        double stopMm,
        double bitMm,
        Posture posture,
        Measure measure) {
    private static final Color SKIN = new Color(0xC8C8C8);
    private static final double WIDTH = 42;
    private static final double ABOVE = 9;
    private static final double BESIDE_ABOVE = 3.6;
    private static final double BESIDE_BELOW = 7;
    private static final double COLLAR = 5;
    private static final double COLLAR_OVER = 3.4;
    private static final double LINES_EVERY = 1.6;
    private static final double LEAD = 4.6;
    private static final double WORDS_FROM = 5;
    private static final double LAST_WORD = 1.5;
    private static final double LEAST_SHOWN = 0.3;
    private static final Type WORD = new Type(Typeface.TEXT, 10);
    private static final Type STOP = new Type(Typeface.CONDENSED_BOLD, 12);
    private static final Type ON_COLLAR = new Type(Typeface.CONDENSED_BOLD, 9);

    private record Ply(String name, double from, double to) {}

    private boolean fromBelow() {
        return posture == Posture.OVERHEAD;
    }

    /** Paper it takes downwards. */
    public double heightMm() {
        return ABOVE + Math.max(outerSkinMm + coreMm + innerSkinMm, 4 * LEAD) + LAST_WORD;
    }

    /** Where words beside the bit stand, outside the laminate: the baseline, the section's upper left corner at y. */
    public double besideBit(double y) {
        return fromBelow() ? y + heightMm() - ABOVE + BESIDE_BELOW : y + BESIDE_ABOVE;
    }

    private List<Ply> plies() {
        double empty = emptyMm < LEAST_SHOWN ? 0 : Math.min(emptyMm, coreMm);
        double inner = outerSkinMm + coreMm;
        List<Ply> plies = new ArrayList<>();
        plies.add(new Ply("outer skin " + measure.depthFigure(outerSkinMm), 0, outerSkinMm));
        if (empty > 0) {
            plies.add(new Ply("empty " + measure.depthFigure(empty), outerSkinMm, outerSkinMm + empty));
        }
        if (coreMm - empty >= LEAST_SHOWN) {
            String core = empty > 0 ? "core left " : "core ";
            plies.add(new Ply(core + measure.depthFigure(coreMm - empty), inner - (coreMm - empty), inner));
        }
        plies.add(new Ply(
                (posture == Posture.DECK ? "lower skin " : "inner skin ") + measure.depthFigure(innerSkinMm),
                inner,
                inner + innerSkinMm));
        return plies;
    }

    /** Paints it, its upper left corner at (x, y). */
    public void paint(Paper paper, double x, double y) {
        paper.figure(
                "Section at the deepest hole: skins, core and empty space, the bit and its collar.",
                p -> draw(p, x, y));
    }

    private void draw(Paper paper, double x, double y) {
        double surface = fromBelow() ? y + heightMm() - ABOVE : y + ABOVE;
        double words = fromBelow() ? y + WORD.capMm() / 2 : surface;
        List<Ply> plies = new ArrayList<>(plies());
        if (fromBelow()) {
            Collections.reverse(plies); // from the top of the paper down
        }
        for (Ply ply : plies) {
            double from = Math.min(surface + in() * ply.from, surface + in() * ply.to);
            double to = Math.max(surface + in() * ply.from, surface + in() * ply.to);
            Rectangle2D body = new Rectangle2D.Double(x, from, WIDTH, to - from);
            if (ply.name.contains("skin")) {
                paper.fill(body, SKIN);
            } else if (ply.name.startsWith("core")) {
                for (double at = x + LINES_EVERY; at < x + WIDTH; at += LINES_EVERY) {
                    paper.line(Pen.FAINT, at, from, at, to);
                }
            }
            paper.draw(body, Pen.MARK);
            double middle = (from + to) / 2;
            words = Math.max(words, middle);
            paper.line(Pen.LEADER, x + WIDTH, middle, x + WIDTH + 2, middle, x + WIDTH + WORDS_FROM - 1, words);
            paper.text(ply.name, x + WIDTH + WORDS_FROM, words + WORD.capMm() / 2, WORD, Paper.Anchor.LEFT);
            words += LEAD;
        }
        bit(paper, x + 15, surface);
    }

    /** Which way on the paper it goes into the laminate. */
    private int in() {
        return fromBelow() ? -1 : 1;
    }

    private void bit(Paper paper, double middle, double surface) {
        double half = bitMm / 2;
        double tip = surface + in() * stopMm;
        double shoulder = surface + in() * Math.max(0, stopMm - half * 0.3);
        double shank = surface - in() * ABOVE;
        Shape bit = Paper.closed(
                middle - half,
                shank,
                middle + half,
                shank,
                middle + half,
                shoulder,
                middle,
                tip,
                middle - half,
                shoulder);
        paper.fill(bit, Tone.WHITE);
        paper.draw(bit, Pen.MARK);
        double wide = Math.max(half + COLLAR_OVER, ON_COLLAR.width("collar") / 2 + 1);
        paper.fill(new Rectangle2D.Double(middle - wide, fromBelow() ? surface : surface - COLLAR, 2 * wide, COLLAR));
        paper.text(
                "collar",
                middle,
                surface - in() * COLLAR / 2 + ON_COLLAR.capMm() / 2,
                ON_COLLAR,
                Paper.Anchor.CENTRE,
                Tone.WHITE);
        double at = middle + half + 2.2;
        paper.casing(Paper.path(at, surface, at, tip), 1.4);
        paper.line(Pen.EDGE, at, surface, at, tip);
        paper.line(Pen.EDGE, at - 1.2, tip, at + 1.2, tip);
        paper.haloText(
                measure.stopFigure(stopMm),
                at + 2,
                (surface + tip) / 2 + STOP.capMm() / 2,
                STOP,
                Paper.Anchor.LEFT,
                0.9);
    }
}
