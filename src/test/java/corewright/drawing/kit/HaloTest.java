package corewright.drawing.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

class HaloTest {
    private static final double HALO_MM = 0.7;

    /** Rounding of curves may move an edge by a hundredth of a pixel: 8 of 255 shades are a thirtieth. */
    @Test
    void onAScreenIsFilledWhatAPenCoversOnPaper() {
        Type type = Type.READING;
        BufferedImage drawn = painted(g -> {
            g.setStroke(Pen.solid(2 * HALO_MM).stroke());
            g.draw(type.outline("(38) 104", 2, 5));
        });
        BufferedImage filled = painted(g -> g.fill(type.halo("(38) 104", 2, 5, HALO_MM)));
        int ink = 0;
        for (int x = 0; x < drawn.getWidth(); x++) {
            for (int y = 0; y < drawn.getHeight(); y++) {
                int was = drawn.getRaster().getSample(x, y, 0);
                assertThat(filled.getRaster().getSample(x, y, 0))
                        .as(x + ", " + y)
                        .isBetween(was - 8, was + 8);
                ink += was;
            }
        }
        assertThat(ink).isGreaterThan(100 * 255);
    }

    private static BufferedImage painted(Consumer<Graphics2D> painting) {
        BufferedImage image = new BufferedImage(160, 60, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = image.createGraphics();
        new Paper(g); // sets how edges are drawn
        g.scale(7, 7);
        g.setColor(Color.WHITE);
        painting.accept(g);
        g.dispose();
        return image;
    }
}
