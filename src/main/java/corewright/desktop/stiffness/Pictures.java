package corewright.desktop.stiffness;

import corewright.desktop.plan.Pixels;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.PlanView;
import corewright.drawing.kit.Tone;
import corewright.drawing.plates.DeflectionPicture;
import corewright.stiffness.PanelStiffness;
import corewright.stiffness.State;
import corewright.survey.Face;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;

/**
 * The states of a panel as equal pictures in one scale, laid out over the window's middle.
 *
 * @param boxes in pixels, one a state
 */
record Pictures(PanelStiffness panel, Face face, List<State> states, double width, double height, List<Box> boxes) {
    /** Pixels of the window to a millimetre of paper: figures of 2.3 mm are 11 px tall. */
    static final double PX_PER_MM = 4.8;

    private static final double GAP = 20;
    private static final double TITLE = 52;

    /** The scale under the pictures: its height, and what it stands from the left and the foot. */
    private static final double SCALE = 26;

    private static final double FOOT = SCALE + 2 * GAP;

    Pictures {
        states = List.copyOf(states);
        boxes = List.copyOf(boxes);
    }

    static Pictures laidOut(PanelStiffness panel, Face face, List<State> states, double width, double height) {
        double room = height - FOOT;
        Envelope extent = panel.panel().area().getEnvelopeInternal();
        double ratio = extent.getWidth() / Math.max(1, extent.getHeight());
        int best = 1;
        double most = 0;
        for (int columns = 1; columns <= states.size(); columns++) {
            double size = cell(states.size(), columns, width, room, ratio);
            if (size > most) {
                most = size;
                best = columns;
            }
        }
        int rows = (states.size() + best - 1) / best;
        double w = (width - (best + 1) * GAP) / best;
        double h = (room - rows * (TITLE + GAP)) / rows;
        List<Box> boxes = new ArrayList<>();
        for (int i = 0; i < states.size(); i++) {
            boxes.add(new Box(
                    GAP + (i % best) * (w + GAP), TITLE + (double) (i / best) * (h + TITLE + GAP), w, Math.max(1, h)));
        }
        return new Pictures(panel, face, states, width, height, boxes);
    }

    private static double cell(int count, int columns, double width, double height, double ratio) {
        int rows = (count + columns - 1) / columns;
        double w = (width - (columns + 1) * GAP) / columns;
        double h = (height - rows * (TITLE + GAP)) / rows;
        return Math.min(w, h * ratio);
    }

    /** From survey millimetres to pixels of one of the pictures; as {@link DeflectionPicture} lays them. */
    PlanView view(int i) {
        Box box = boxes.get(i);
        Envelope extent = panel.panel().area().getEnvelopeInternal();
        double scale = DeflectionPicture.scale(panel, onPaper(box)) / PX_PER_MM;
        return PlanView.centred(face, extent, scale, box.middleX(), box.middleY());
    }

    /** Away from the window's thread. */
    Pixels painted(Tone tone, Measure measure, double sharpness) {
        BufferedImage image = new BufferedImage(
                (int) Math.max(1, Math.ceil(width * sharpness)),
                (int) Math.max(1, Math.ceil(height * sharpness)),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.scale(sharpness * PX_PER_MM, sharpness * PX_PER_MM);
        Paper paper = new Paper(g);
        DeflectionPicture.paint(
                paper,
                face,
                panel,
                states,
                boxes.stream().map(Pictures::onPaper).toList(),
                measure);
        Box scale = new Box(GAP, height - GAP - SCALE, width - 2 * GAP, SCALE);
        DeflectionPicture.paintScale(paper, panel, states, onPaper(scale), measure);
        g.dispose();
        toned(image, tone);
        return Pixels.of(image);
    }

    private static Box onPaper(Box px) {
        return new Box(px.x() / PX_PER_MM, px.y() / PX_PER_MM, px.width() / PX_PER_MM, px.height() / PX_PER_MM);
    }

    /** White becomes the ground and black the ink, so that by night softer is lighter. */
    private static void toned(BufferedImage image, Tone tone) {
        int w = image.getWidth();
        int[] row = new int[w];
        for (int y = 0; y < image.getHeight(); y++) {
            image.getRGB(0, y, w, 1, row, 0, w);
            for (int x = 0; x < w; x++) {
                double light = (row[x] & 0xFF) / 255.0;
                row[x] = mixed(tone.ink().getRed(), tone.ground().getRed(), light) << 16
                        | mixed(tone.ink().getGreen(), tone.ground().getGreen(), light) << 8
                        | mixed(tone.ink().getBlue(), tone.ground().getBlue(), light);
            }
            image.setRGB(0, y, w, 1, row, 0, w);
        }
    }

    private static int mixed(int ink, int ground, double light) {
        return (int) Math.round(ink + (ground - ink) * light);
    }
}
