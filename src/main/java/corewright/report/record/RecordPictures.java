package corewright.report.record;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.PlaceNames;
import corewright.report.page.Flow;
import corewright.report.page.PageFrame;
import corewright.report.page.Prose;
import corewright.store.Pictures;
import corewright.survey.Face;
import corewright.survey.Photo;
import corewright.survey.Survey;
import corewright.survey.settings.Settings.Letterhead;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.jspecify.annotations.Nullable;

/** The pictures of the record: photographs with file, place and caption, two a row, and the head of the surveyor's firm. */
final class RecordPictures {
    private static final double GAP = 6;
    private static final double WIDTH = (PageFrame.FULL_WIDTH - GAP) / 2;
    private static final double HEIGHT = 62;
    private static final double LOGO_WIDTH = 50;
    private static final double LOGO_HEIGHT = 16;

    /** Longer side of a photograph on paper, pixels: 84 mm at 300 dots per inch. */
    private static final int LONGER_SIDE = 1000;

    private record Shown(Photo photo, @Nullable BufferedImage picture) {}

    private final Survey survey;
    private final Pictures pictures;

    RecordPictures(Survey survey, Pictures pictures) {
        this.survey = survey;
        this.pictures = pictures;
    }

    /** Logo, firm, address and title; nothing where nothing is said. */
    void letterhead(Flow flow) throws IOException {
        Letterhead head = survey.settings().letterhead();
        if (head.equals(Letterhead.NONE)) {
            return;
        }
        BufferedImage logo = head.logo().isEmpty() ? null : picture(head.logo());
        List<String> lines = new ArrayList<>();
        add(lines, Prose.bold(Prose.plain(head.firm())), head.firm());
        add(lines, Prose.plain(head.address()), head.address());
        String who = Prose.plain(survey.heading().surveyor());
        String title = Prose.plain(head.qualification());
        add(lines, who.isEmpty() || title.isEmpty() ? who + title : who + ", " + title, who + title);
        String words = String.join("\n", lines);
        double left = logo == null ? PageFrame.LEFT : PageFrame.ANSWERS;
        double width = PageFrame.RIGHT - left;
        double height = Math.max(logo == null ? 0 : LOGO_HEIGHT, Flow.SMALL.height(words, width)) + 3;
        flow.block(height, (paper, top) -> {
            if (logo != null) {
                paper.figure(
                        "Logo of " + head.firm(),
                        p -> p.picture(logo, new Box(PageFrame.LEFT, top, LOGO_WIDTH - GAP, LOGO_HEIGHT)));
            }
            Flow.SMALL.paint(paper, words, left, top, width, Anchor.LEFT);
        });
    }

    private static void add(List<String> lines, String line, String said) {
        if (!said.isBlank()) {
            lines.add(line);
        }
    }

    void photographs(Flow flow) throws IOException {
        List<Photo> photos = survey.photos();
        for (int i = 0; i < photos.size(); i += 2) {
            List<Shown> row = new ArrayList<>();
            for (Photo photo : photos.subList(i, Math.min(photos.size(), i + 2))) {
                row.add(new Shown(photo, picture(photo.file())));
            }
            row(flow, row, i == 0);
        }
    }

    private void row(Flow flow, List<Shown> row, boolean first) {
        double head = first ? 9 : 2;
        double words = row.stream()
                .mapToDouble(s -> Prose.NOTE.height(words(s), WIDTH))
                .max()
                .orElse(0);
        boolean seen = row.stream().anyMatch(s -> s.picture != null);
        double high = seen ? HEIGHT + 1.5 : 0;
        flow.block(head + high + words + 3, (paper, top) -> {
            if (first) {
                PageFrame.question(paper, "Photographs", top + 1);
            }
            double x = PageFrame.LEFT;
            for (Shown shown : row) {
                Box box = new Box(x, top + head, WIDTH, HEIGHT);
                BufferedImage picture = shown.picture;
                if (picture != null) {
                    paper.figure("Photograph: " + words(shown).replace("**", ""), p -> p.picture(picture, box));
                }
                Prose.NOTE.paint(paper, words(shown), x, top + head + high, WIDTH, Anchor.LEFT);
                x += WIDTH + GAP;
            }
        });
    }

    private String words(Shown shown) {
        Photo photo = shown.photo;
        Face face = survey.face(photo.spot().face());
        Measure measure = Measure.of(survey);
        String place = PlaceNames.of(face)
                .measured(
                        photo.spot().xMm(),
                        photo.spot().yMm(),
                        mm -> Figures.fixed(measure.deck(mm), 2) + " " + measure.deckUnit());
        String caption = Prose.plain(photo.caption());
        return Prose.bold(Prose.plain(photo.file())) + " " + Prose.plain(face.name()) + ", " + place + "."
                + (caption.isEmpty() ? "" : " " + caption)
                + (shown.picture == null ? " The picture itself was not to be had." : "");
    }

    /** Small enough for paper, on white; null where there is none that can be read. */
    private @Nullable BufferedImage picture(String name) throws IOException {
        byte[] content = pictures.content(name);
        if (content == null) {
            return null;
        }
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(content))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                return null;
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true, true);
                return smaller(reader);
            } finally {
                reader.dispose();
            }
        } catch (IOException | IllegalArgumentException e) {
            return null; // damaged: intake looked at its head alone
        }
    }

    private static BufferedImage smaller(ImageReader reader) throws IOException {
        int longer = Math.max(reader.getWidth(0), reader.getHeight(0));
        int every = Math.max(1, longer / (2 * LONGER_SIDE));
        ImageReadParam param = reader.getDefaultReadParam();
        param.setSourceSubsampling(every, every, 0, 0);
        BufferedImage read = reader.read(0, param);
        double scale = Math.min(1, (double) LONGER_SIDE / Math.max(read.getWidth(), read.getHeight()));
        int width = Math.max(1, (int) Math.round(read.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(read.getHeight() * scale));
        BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = small.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        g.drawImage(read, 0, 0, width, height, Color.WHITE, null);
        g.dispose();
        return small;
    }
}
