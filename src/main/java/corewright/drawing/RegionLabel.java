package corewright.drawing;

import java.util.List;

/**
 * What a region is, outside the deck, with its leader: from a 0.9 dot inside the region straight up or down, one bend, a
 * run-in to the label's first line.
 *
 * @param region id
 * @param lines first line with the id bold and the rest semibold 8.5 pt, further lines 7.5 pt
 * @param box of the words
 * @param dotX in the region
 * @param leadY of the level leg
 * @param toLeft words stand left of the leader and are ranged right
 * @param leader false where the words stand on the region itself
 */
record RegionLabel(String region, List<String> lines, Box box, double dotX, double dotY, double leadY, boolean toLeft) {
    RegionLabel {
        lines = List.copyOf(lines);
    }

    static final Type HEAD = Type.LABEL;
    static final Type BODY = Type.NOTE;
    static final double RUN_IN = 1;
    private static final double HEAD_GAP = 0.4;
    private static final double LEAD = 3.5;
    private static final double ID_GAP = 0.9;

    static double width(String region, List<String> lines) {
        double w = Type.LABEL_BOLD.width(region) + ID_GAP + HEAD.width(lines.get(0));
        for (String line : lines.subList(1, lines.size())) {
            w = Math.max(w, BODY.width(line));
        }
        return w;
    }

    static double height(List<String> lines) {
        return HEAD.capMm() + (lines.size() - 1) * LEAD + BODY.descentMm();
    }

    /** Baseline of the first line above the level leg. */
    static double headAbove() {
        return HEAD_GAP;
    }

    void paintLeader(Paper paper) {
        double end = toLeft ? box.right() + RUN_IN : box.x() - RUN_IN;
        var line = Paper.path(dotX, dotY, dotX, leadY, end, leadY);
        paper.casing(line, 0.8);
        paper.draw(line, Pen.LEADER);
        paper.disc(dotX, dotY, 1.5, Paper.WHITE);
        paper.disc(dotX, dotY, 0.9);
    }

    void paintWords(Paper paper) {
        double y = box.y() + HEAD.capMm();
        double headWidth = Type.LABEL_BOLD.width(region) + ID_GAP + HEAD.width(lines.get(0));
        double x = toLeft ? box.right() - headWidth : box.x();
        paper.text(region, x, y, Type.LABEL_BOLD, Paper.Anchor.LEFT);
        paper.text(lines.get(0), x + Type.LABEL_BOLD.width(region) + ID_GAP, y, HEAD, Paper.Anchor.LEFT);
        for (int i = 1; i < lines.size(); i++) {
            if (toLeft) {
                paper.text(lines.get(i), box.right(), y + i * LEAD, BODY, Paper.Anchor.RIGHT);
            } else {
                paper.text(lines.get(i), box.x(), y + i * LEAD, BODY, Paper.Anchor.LEFT);
            }
        }
    }
}
