package corewright.desktop.sketch;

import corewright.desktop.slip.SlipView;
import corewright.desktop.state.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.image.Image;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import org.locationtech.jts.geom.Coordinate;

/** Scaling a picture: two points of it are touched, and where the first lies and how far the second is are typed. */
public final class UnderlayView extends VBox {
    private static final double WIDTH = 1100;
    private static final double HEIGHT = 600;

    private final List<Coordinate> touched = new ArrayList<>();
    private final Label message = SlipView.text("Touch two points of the picture whose distance is known.", "sentence");

    /** @param turn asks for another page of the same file */
    public UnderlayView(UnderlayPicture picture, Units units, SketchHand drawing, IntConsumer turn, Runnable done) {
        Image image = picture.pixels().image();
        getStyleClass().add("import");
        setId("underlay-view");
        double shrink = Math.min(WIDTH / image.getWidth(), HEIGHT / image.getHeight());
        Canvas canvas = new Canvas(image.getWidth() * shrink, image.getHeight() * shrink);
        draw(canvas, image, shrink);
        canvas.setOnMouseClicked(e -> {
            if (touched.size() == 2) {
                touched.clear();
            }
            touched.add(new Coordinate(e.getX() / shrink, e.getY() / shrink));
            draw(canvas, image, shrink);
        });
        TextField length = field("underlay-length", "distance, " + units.depthUnit());
        TextField x = field("underlay-x", "first point, aft");
        TextField y = field("underlay-y", "first point, starboard");
        TextField direction = field("underlay-direction", "direction, degrees");
        direction.setText("0");
        Button go = new Button("Lay it under the plan");
        go.setId("underlay-lay");
        go.setOnAction(e -> {
            try {
                Coordinate at = new Coordinate(units.mm(number(x)), units.mm(number(y)));
                drawing.lay(image, touched.get(0), touched.get(1), at, units.mm(number(length)), number(direction));
                done.run();
            } catch (NumberFormatException ex) {
                message.setText("All four are numbers; the direction is 0 where the second point lies straight aft.");
            } catch (IllegalArgumentException | IndexOutOfBoundsException ex) {
                message.setText("Two points apart and a distance above zero are needed.");
            }
        });
        Button no = new Button("Leave it");
        no.setOnAction(e -> done.run());
        HBox deeds = new HBox(12, go, no);
        if (picture.page() < picture.pages()) {
            Button next = new Button("Page " + (picture.page() + 1) + " of " + picture.pages());
            next.setId("underlay-next");
            next.setOnAction(e -> turn.accept(picture.page() + 1));
            deeds.getChildren().add(next);
        }
        getChildren().addAll(message, canvas, new HBox(8, length, x, y, direction), deeds);
    }

    private static TextField field(String id, String prompt) {
        TextField field = new TextField();
        field.setId(id);
        field.setPromptText(prompt);
        field.setAccessibleText(prompt);
        return field;
    }

    private static double number(TextField field) {
        return Double.parseDouble(field.getText().strip().replace(',', '.'));
    }

    private void draw(Canvas canvas, Image image, double shrink) {
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.drawImage(image, 0, 0, canvas.getWidth(), canvas.getHeight());
        g.setStroke(Color.rgb(0xB0, 0x3A, 0));
        g.setLineWidth(3);
        for (Coordinate c : touched) {
            g.strokeOval(c.x * shrink - 7, c.y * shrink - 7, 14, 14);
        }
        if (touched.size() == 2) {
            g.strokeLine(
                    touched.get(0).x * shrink,
                    touched.get(0).y * shrink,
                    touched.get(1).x * shrink,
                    touched.get(1).y * shrink);
        }
    }
}
