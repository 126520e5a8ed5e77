package corewright.desktop;

import corewright.assessment.Assessor;
import corewright.desktop.state.Recent;
import corewright.desktop.state.Workbench;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.prefs.Preferences;
import javafx.application.Application;
import javafx.geometry.Rectangle2D;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Screen;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;

/** The window as JavaFX starts it. Public because JavaFX makes it by reflection. */
public final class DesktopApp extends Application {
    private final FxJobs jobs = new FxJobs();
    private @Nullable Desk desk;

    @Override
    public void start(Stage stage) {
        Workbench bench = new Workbench(jobs, Assessor::assess);
        Desk made = new Desk(
                bench,
                new SystemChooser(stage),
                new Recent(() -> Preferences.userNodeForPackage(DesktopApp.class)),
                file -> getHostServices().showDocument(file.toUri().toString()));
        desk = made;
        stage.setTitle("Corewright");
        stage.setScene(made.scene());
        place(stage);
        List<String> files = getParameters().getRaw();
        if (files.isEmpty()) {
            made.listRecent();
        } else {
            Path survey = Path.of(files.get(0));
            made.open(survey, WarmUp.opening(survey));
        }
        stage.show();
    }

    private static void place(Stage stage) {
        Rectangle2D bounds = Screen.getPrimary().getVisualBounds();
        WindowPlace screen =
                new WindowPlace(bounds.getMinX(), bounds.getMinY(), bounds.getWidth(), bounds.getHeight(), false);
        stage.setMinWidth(Math.min(900, screen.width()));
        stage.setMinHeight(Math.min(520, screen.height()));
        Preferences store = Preferences.userNodeForPackage(DesktopApp.class);
        WindowPlace before = WindowPlace.read(store, screen);
        stage.setX(before.x());
        stage.setY(before.y());
        stage.setWidth(before.width());
        stage.setHeight(before.height());
        stage.setMaximized(before.maximised());
        stage.setOnHiding(e -> new WindowPlace(
                        stage.getX(), stage.getY(), stage.getWidth(), stage.getHeight(), stage.isMaximized())
                .write(store));
    }

    @Override
    public void stop() {
        if (desk != null) {
            desk.stop();
        }
        jobs.close();
    }

    /** The system's dialogs. */
    private record SystemChooser(Stage stage) implements Chooser {
        @Override
        public Optional<Path> folder(String title) {
            DirectoryChooser chooser = new DirectoryChooser();
            chooser.setTitle(title);
            return Optional.ofNullable(chooser.showDialog(stage)).map(File::toPath);
        }

        @Override
        public Optional<Path> file(String title, String kind, String... endings) {
            FileChooser chooser = new FileChooser();
            chooser.setTitle(title);
            chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(kind, endings));
            return Optional.ofNullable(chooser.showOpenDialog(stage)).map(File::toPath);
        }

        @Override
        public Optional<Path> newFile(String title, String proposed) {
            FileChooser chooser = new FileChooser();
            chooser.setTitle(title);
            chooser.setInitialFileName(proposed);
            return Optional.ofNullable(chooser.showSaveDialog(stage)).map(File::toPath);
        }
    }
}
