package corewright.drawing.screen;

import corewright.contour.Raster;
import corewright.drawing.kit.PlanView;
import corewright.drawing.kit.Tone;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;

/** A surface as a wash under the plan: from the paper towards ink as values grow, so that its order holds in grey. */
final class SurfaceImage {
    /** Ink at the largest value: readings on top must stay legible, 4.5 : 1 and more. */
    private static final double DEEPEST = 0.5;

    private SurfaceImage() {}

    /** @param most value shown deepest */
    static void paint(Graphics2D g, Raster raster, double most, PlanView view, Tone tone) {
        BufferedImage image = new BufferedImage(raster.columns(), raster.rows(), BufferedImage.TYPE_INT_ARGB);
        for (int row = 0; row < raster.rows(); row++) {
            for (int column = 0; column < raster.columns(); column++) {
                double value = raster.at(row, column);
                if (!Double.isNaN(value)) {
                    double share = Math.max(0, Math.min(1, value / most)) * DEEPEST;
                    image.setRGB(
                            column,
                            view.yDown() ? row : raster.rows() - 1 - row,
                            mixed(tone.ground(), tone.ink(), share));
                }
            }
        }
        double cell = raster.cell() / view.scale();
        double top = view.y(raster.y0() + (view.yDown() ? 0 : raster.rows() * raster.cell()));
        Object before = g.getRenderingHint(RenderingHints.KEY_INTERPOLATION);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.drawImage(image, new AffineTransform(cell, 0, 0, cell, view.x(raster.x0()), top), null);
        if (before != null) {
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, before);
        }
    }

    private static int mixed(Color from, Color to, double share) {
        return 0xFF000000
                | channel(from.getRed(), to.getRed(), share) << 16
                | channel(from.getGreen(), to.getGreen(), share) << 8
                | channel(from.getBlue(), to.getBlue(), share);
    }

    private static int channel(int from, int to, double share) {
        return (int) Math.round(from + (to - from) * share);
    }
}
