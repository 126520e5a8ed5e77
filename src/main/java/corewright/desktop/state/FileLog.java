package corewright.desktop.state;

import corewright.store.Pictures;
import corewright.store.SurveyFile;
import corewright.survey.Edit;
import corewright.survey.Finding;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Edits in a survey file. A folder that is opened and edited becomes one beside it at the first edit. */
final class FileLog implements EditLog {
    /** Makes the file when it is first needed. */
    interface Creation {
        SurveyFile create() throws IOException;
    }

    private final Survey first;
    private final List<Finding> notes;
    private final Path place;
    private final Creation creation;
    private final Pictures pictures;
    private @Nullable SurveyFile file;

    private FileLog(
            Survey first,
            List<Finding> notes,
            Path place,
            Creation creation,
            Pictures pictures,
            @Nullable SurveyFile file) {
        this.first = first;
        this.notes = List.copyOf(notes);
        this.place = place;
        this.creation = creation;
        this.pictures = pictures;
        this.file = file;
    }

    static FileLog of(SurveyFile file) {
        return new FileLog(file.survey(), file.importNotes(), file.path(), () -> file, Pictures.NONE, file);
    }

    static FileLog ofFolder(Path folder, Survey survey, List<Finding> notes, Creation creation) {
        return new FileLog(survey, notes, folder, creation, Pictures.in(folder), null);
    }

    private SurveyFile file() throws IOException {
        SurveyFile open = file;
        if (open == null) {
            open = creation.create();
            file = open;
        }
        return open;
    }

    @Override
    public synchronized Survey survey() {
        return file == null ? first : file.survey();
    }

    @Override
    public List<Finding> importNotes() {
        return notes;
    }

    @Override
    public synchronized Path place() {
        return file == null ? place : file.path();
    }

    @Override
    public synchronized String whyReadOnly() {
        return file == null ? "" : file.whyReadOnly();
    }

    @Override
    public synchronized void append(Edit edit) throws IOException {
        if (file == null) {
            Survey refused = edit.apply(first); // an edit that does not fit makes no file
            assert refused != null;
        }
        file().append(edit);
    }

    @Override
    public synchronized boolean canUndo() {
        return file != null && file.canUndo();
    }

    @Override
    public synchronized boolean canRedo() {
        return file != null && file.canRedo();
    }

    @Override
    public synchronized void undo() throws IOException {
        if (file != null) {
            file.undo();
        }
    }

    @Override
    public synchronized void redo() throws IOException {
        if (file != null) {
            file.redo();
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
