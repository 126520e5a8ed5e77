package corewright.report.template;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Tone;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.template.Tiling;
import corewright.drawing.template.Tiling.Tile;
import java.util.Optional;

/** Which sheet lies where: printed ones framed and named, this one black, places without work left bare. */
final class SheetKey {
    private static final Type HEAD = new Type(Typeface.CONDENSED_SEMIBOLD, 8);
    private static final Type NAME = new Type(Typeface.TEXT_BOLD, 9);
    private static final double LEAST_POINTS = 6.5;

    private SheetKey() {}

    static void paint(Paper paper, Tiling tiling, Tile tile, Box room) {
        paper.text("sheets, bow to the left", room.x(), room.y() + HEAD.capMm(), HEAD, Anchor.LEFT);
        double top = room.y() + HEAD.capMm() + 2;
        double aspect = tile.frame().height() / tile.frame().width();
        double width = Math.min(room.width() / tiling.columns(), (room.bottom() - top) / tiling.rows() / aspect);
        double cell = Math.min(width, 14);
        double high = cell * aspect;
        for (int c = 0; c < tiling.columns(); c++) {
            for (int r = 0; r < tiling.rows(); r++) {
                Box at = new Box(room.x() + c * cell, top + r * high, cell, high);
                cell(paper, tiling.at(c, r), tile, at);
            }
        }
    }

    private static void cell(Paper paper, Optional<Tile> there, Tile tile, Box at) {
        if (there.isEmpty()) {
            paper.draw(at.shape(), Pen.KEEP_OUT);
            return;
        }
        boolean here = there.get().equals(tile);
        if (here) {
            paper.fill(at.shape());
        }
        paper.draw(at.shape(), Pen.MARK);
        String name = there.get().name();
        Type type = NAME;
        while (type.width(name) > at.width() - 1 && type.points() > LEAST_POINTS) {
            type = type.at(type.points() - 0.5);
        }
        if (type.width(name) <= at.width() - 0.4 && type.capMm() < at.height() - 0.6) {
            double foot = at.middleY() + type.capMm() / 2;
            paper.text(name, at.middleX(), foot, type, Anchor.CENTRE, here ? Tone.WHITE : Tone.INK);
        }
    }
}
