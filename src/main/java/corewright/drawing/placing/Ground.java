package corewright.drawing.placing;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.PlanView;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import org.locationtech.jts.geom.Polygon;

/**
 * Which paper the deck covers, on cells of half a millimetre, so that a label's box is checked in four look-ups (summed-area
 * table: Crow 1984).
 */
final class Ground {
    private static final double CELL = 0.5;

    /** Paper kept free between the deck's edge and words. */
    private static final double CLEAR = 1.2;

    private final Box box;
    private final int columns;
    private final int rows;
    private final int[] sums;

    Ground(Box box, Polygon deckOnPaper) {
        this.box = box;
        columns = (int) Math.ceil(box.width() / CELL);
        rows = (int) Math.ceil(box.height() / CELL);
        sums = new int[(columns + 1) * (rows + 1)];
        byte[] cells = raster(deckOnPaper);
        for (int r = 0; r < rows; r++) {
            int line = 0;
            for (int c = 0; c < columns; c++) {
                line += cells[r * columns + c] != 0 ? 1 : 0;
                sums[(r + 1) * (columns + 1) + c + 1] = sums[r * (columns + 1) + c + 1] + line;
            }
        }
    }

    private byte[] raster(Polygon deck) {
        BufferedImage image = new BufferedImage(columns, rows, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = image.createGraphics();
        g.scale(1 / CELL, 1 / CELL);
        g.translate(-box.x(), -box.y());
        g.setColor(Color.WHITE);
        g.fill(PlanView.shape(deck.buffer(CLEAR, 4)));
        g.dispose();
        return ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    }

    Box box() {
        return box;
    }

    /** Inside the paper and clear of the deck. */
    boolean free(Box wanted) {
        return box.holds(wanted) && covered(wanted) == 0;
    }

    boolean holdsY(double y) {
        return y >= box.y() && y <= box.bottom();
    }

    private int covered(Box b) {
        int left = clamp((int) Math.floor((b.x() - box.x()) / CELL), columns);
        int right = clamp((int) Math.ceil((b.right() - box.x()) / CELL), columns);
        int top = clamp((int) Math.floor((b.y() - box.y()) / CELL), rows);
        int bottom = clamp((int) Math.ceil((b.bottom() - box.y()) / CELL), rows);
        int w = columns + 1;
        return sums[bottom * w + right] - sums[top * w + right] - sums[bottom * w + left] + sums[top * w + left];
    }

    private static int clamp(int i, int most) {
        return Math.max(0, Math.min(most, i));
    }
}
