package corewright.report.record;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.PlaceNames;
import corewright.report.page.Flow;
import corewright.report.page.PageFrame;
import corewright.report.page.PictureFile;
import corewright.report.page.Prose;
import corewright.store.Pictures;
import corewright.survey.Face;
import corewright.survey.Photo;
import corewright.survey.Survey;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The photographs of the record with file, place and caption, two a row. */
final class RecordPictures {
    private static final double GAP = 6;
    private static final double WIDTH = (PageFrame.FULL_WIDTH - GAP) / 2;
    private static final double HEIGHT = 62;

    private record Shown(Photo photo, @Nullable BufferedImage picture) {}

    private final Survey survey;
    private final Pictures pictures;

    RecordPictures(Survey survey, Pictures pictures) {
        this.survey = survey;
        this.pictures = pictures;
    }

    void photographs(Flow flow) throws IOException {
        List<Photo> photos = survey.photos();
        for (int i = 0; i < photos.size(); i += 2) {
            List<Shown> row = new ArrayList<>();
            for (Photo photo : photos.subList(i, Math.min(photos.size(), i + 2))) {
                row.add(new Shown(photo, PictureFile.read(pictures, photo.file())));
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
}
