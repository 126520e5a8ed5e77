package corewright.desktop.state;

import corewright.damage.Coverage;
import corewright.store.Pictures;
import corewright.store.SurveyFile;
import corewright.survey.Edit;
import corewright.survey.Finding;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Edits in a survey file. A folder that is opened and edited becomes one beside it at the first edit.
 *
 * <p>The window's thread asks for the survey at every turn, and a disk may take its time over an edit: what it asks for is laid
 * out after each, so that it never waits for one.
 */
final class FileLog implements EditLog {
    /** Makes the file when it is first needed. */
    interface Creation {
        SurveyFile create() throws IOException;
    }

    /** What there is to be seen between two edits. */
    private record Seen(Survey survey, Path place, String whyReadOnly, boolean canUndo, boolean canRedo) {
        Seen {
            List<Coverage> known = Coverage.of(survey); // the slip asks for it, and finds it worked out
            assert !known.isEmpty();
        }

        static Seen of(SurveyFile file) {
            return new Seen(file.survey(), file.path(), file.whyReadOnly(), file.canUndo(), file.canRedo());
        }
    }

    private final List<Finding> notes;
    private final Creation creation;
    private final Pictures pictures;
    private @Nullable SurveyFile file;
    private volatile Seen seen;

    private FileLog(Seen seen, List<Finding> notes, Creation creation, Pictures pictures, @Nullable SurveyFile file) {
        this.seen = seen;
        this.notes = List.copyOf(notes);
        this.creation = creation;
        this.pictures = pictures;
        this.file = file;
    }

    static FileLog of(SurveyFile file) {
        return new FileLog(Seen.of(file), file.importNotes(), () -> file, Pictures.NONE, file);
    }

    static FileLog ofFolder(Path folder, Survey survey, List<Finding> notes, Creation creation) {
        Seen unedited = new Seen(survey, folder, "", false, false);
        return new FileLog(unedited, notes, creation, Pictures.in(folder), null);
    }

    private SurveyFile file() throws IOException {
        SurveyFile open = file;
        if (open == null) {
            open = creation.create();
            file = open;
            seen = Seen.of(open);
        }
        return open;
    }

    @Override
    public Survey survey() {
        return seen.survey;
    }

    @Override
    public List<Finding> importNotes() {
        return notes;
    }

    @Override
    public Path place() {
        return seen.place;
    }

    @Override
    public String whyReadOnly() {
        return seen.whyReadOnly;
    }

    @Override
    public synchronized void append(Edit edit) throws IOException {
        if (file == null) {
            Survey refused = edit.apply(seen.survey); // an edit that does not fit makes no file
            assert refused != null;
        }
        file().append(edit);
        seen = Seen.of(file());
    }

    @Override
    public boolean canUndo() {
        return seen.canUndo;
    }

    @Override
    public boolean canRedo() {
        return seen.canRedo;
    }

    @Override
    public synchronized void undo() throws IOException {
        if (file != null) {
            file.undo();
            seen = Seen.of(file);
        }
    }

    @Override
    public synchronized void redo() throws IOException {
        if (file != null) {
            file.redo();
            seen = Seen.of(file);
        }
    }

    @Override
    public synchronized byte @Nullable [] picture(String name) throws IOException {
        return file == null ? pictures.content(name) : file.picture(name);
    }

    @Override
    public synchronized void putPicture(String name, byte[] content) throws IOException {
        file().putPicture(name, content);
    }

    @Override
    public synchronized void close() {
        if (file != null) {
            file.close();
        }
    }
}
