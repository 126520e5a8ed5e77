package corewright.desktop.photos;

import corewright.desktop.plan.Pixels;
import corewright.desktop.plan.PlanCamera;
import corewright.desktop.plan.PlanPane;
import corewright.desktop.slip.Held;
import corewright.desktop.slip.Slip;
import corewright.desktop.slip.SlipView;
import corewright.desktop.state.Complaints;
import corewright.desktop.state.EditLog;
import corewright.desktop.state.Workbench;
import corewright.drawing.kit.PlaceNames;
import corewright.survey.Photo;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.image.ImageView;
import javafx.scene.image.WritableImage;
import javafx.scene.input.MouseEvent;
import org.jspecify.annotations.Nullable;

/** Photographs in the window: one is being pinned, or one is looked at in the slip. */
public final class PhotoDesk implements Held, PlanPane.Hand {
    /** As wide as the slip, at twice its pixels for sharp screens. */
    private static final int WIDTH = 350;

    private static final double REACH_PX = 5;

    private final Workbench bench;
    private final PlanPane plan;
    private @Nullable Pinning pinning;
    private @Nullable Photo selected;
    private @Nullable TextField
            newCaption; // one as long as it is selected: the slip is shown anew while a person types
    private @Nullable WritableImage image;
    private double pressX;
    private double pressY;

    /** The bytes are handed on as they came and never compared. */
    @SuppressWarnings("ArrayRecordComponent")
    private record Pinning(Path file, byte[] content, TextField caption, TextField place) {}

    public PhotoDesk(Workbench bench, PlanPane plan) {
        this.bench = bench;
        this.plan = plan;
    }

    /** Reads a file away from the window and then asks for its place. */
    public void begin(Path file) {
        bench.waiting()
                .on(
                        "Reading " + file.getFileName(),
                        progress -> Photos.read(file),
                        content -> begin(file, content),
                        e -> bench.say(Complaints.sentence(e)));
    }

    private void begin(Path file, byte[] content) {
        TextField caption = field("photo-caption", "what it shows");
        TextField place = field("photo-place", "or type it: E s2");
        place.setOnAction(e -> typed(place.getText()));
        letGo();
        pinning = new Pinning(file, content, caption, place);
        plan.giveTo(this);
        bench.say("Touch the place of " + file.getFileName() + " on the plan.");
    }

    private static TextField field(String id, String prompt) {
        TextField field = new TextField();
        field.setId(id);
        field.setPromptText(prompt);
        field.setAccessibleText(prompt);
        return field;
    }

    private void typed(String words) {
        Optional<Spot> spot =
                bench.survey().flatMap(s -> PlaceNames.of(s.face(bench.face())).find(words));
        spot.ifPresentOrElse(
                this::pin, () -> bench.say("There is no place \"" + words + "\" on " + bench.face() + "."));
    }

    private void pin(Spot spot) {
        Pinning now = pinning;
        EditLog log = bench.log();
        if (now == null || log == null) {
            return;
        }
        stop();
        bench.edit(
                "photograph " + now.file.getFileName(),
                Photos.pin(log, now.file, now.content, spot, now.caption.getText()));
    }

    /** Nothing is pinned any more. */
    private void stop() {
        pinning = null;
        plan.giveTo(null);
        bench.say("");
    }

    @Override
    public void letGo() {
        selected = null;
        newCaption = null;
        image = null;
    }

    /** Takes up the photograph at a place, if there is one; says whether. */
    @Override
    public boolean touch(double xMm, double yMm) {
        Survey survey = bench.survey().orElse(null);
        // the mark stands some 15 pixels above its place
        double aloft = 11 * plan.camera().mmPerPx();
        Optional<Photo> there = survey == null
                ? Optional.empty()
                : Photos.near(
                        survey,
                        bench.face(),
                        xMm,
                        yMm - aloft,
                        18 * plan.camera().mmPerPx());
        letGo();
        there.ifPresent(this::select);
        return there.isPresent();
    }

    private void select(Photo photo) {
        selected = photo;
        newCaption = caption(photo);
        bench.select("");
        EditLog log = bench.log();
        if (log == null) {
            return;
        }
        bench.jobs()
                .run(
                        () -> {
                            byte[] content = log.picture(photo.file());
                            if (content == null) {
                                throw new IOException("The picture " + photo.file() + " is not with the survey.");
                            }
                            return Pixels.of(Photos.small(content, 2 * WIDTH));
                        },
                        small -> show(photo, small),
                        e -> bench.say(Complaints.sentence(e)));
    }

    private void show(Photo photo, Pixels small) {
        if (!photo.equals(selected)) {
            return;
        }
        image = small.image();
        bench.say("");
    }

    /** The slip while a photograph is pinned or looked at. */
    @Override
    public Optional<Slip> slip() {
        Pinning now = pinning;
        if (now != null) {
            return Optional.of(
                    words("Photograph", String.valueOf(now.file.getFileName()), "Touch its place on the plan."));
        }
        Photo photo = selected;
        Survey survey = bench.survey().orElse(null);
        if (photo == null || survey == null || !survey.photos().contains(photo)) {
            letGo();
            return Optional.empty();
        }
        PlaceNames names = PlaceNames.of(survey.face(photo.spot().face()));
        return Optional.of(words(
                "Photograph",
                names.at(photo.spot().xMm(), photo.spot().yMm()),
                photo.caption().isEmpty() ? "No caption yet." : photo.caption()));
    }

    private static Slip words(String title, String aside, String sentence) {
        return new Slip(title, aside, sentence, "", null, List.of(), new Slip.Work(List.of(), "", "", List.of()));
    }

    @Override
    public Node[] nodes() {
        Pinning now = pinning;
        if (now != null) {
            Button no = SlipView.key("photo-leave", "Leave it", () -> {
                stop();
                bench.say("");
            });
            return new Node[] {now.caption, now.place, no};
        }
        Photo photo = selected;
        TextField caption = newCaption;
        if (photo == null || caption == null) {
            return new Node[0];
        }
        ImageView view = new ImageView(image);
        view.setFitWidth(WIDTH);
        view.setPreserveRatio(true);
        view.setAccessibleText("Photograph: " + photo.caption());
        Button away = SlipView.key(
                "photo-remove", "Take it away", () -> bench.edit("taking a photograph away", Photos.remove(photo)));
        return new Node[] {view, caption, away};
    }

    private TextField caption(Photo photo) {
        TextField caption = field("photo-caption", "another caption");
        caption.setOnAction(e -> {
            bench.edit("caption of a photograph", Photos.caption(photo, caption.getText()));
            letGo();
        });
        return caption;
    }

    @Override
    public boolean pressed(PlanCamera camera, MouseEvent e) {
        pressX = e.getX();
        pressY = e.getY();
        return true;
    }

    @Override
    public void dragged(PlanCamera camera, MouseEvent e) {
        plan.move(e.getX() - pressX, e.getY() - pressY);
        pressX = e.getX();
        pressY = e.getY();
    }

    @Override
    public void released(PlanCamera camera, MouseEvent e) {
        if (Math.hypot(e.getX() - pressX, e.getY() - pressY) < REACH_PX && e.isStillSincePress()) {
            pin(new Spot(bench.face(), camera.xMm(e.getX()), camera.yMm(e.getY())));
        }
    }
}
