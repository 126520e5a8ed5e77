package corewright.desktop.state;

import corewright.survey.Edit;
import corewright.survey.Finding;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where a survey's edits go: each is safe before the next is taken. */
public interface EditLog extends AutoCloseable {
    /** The survey with every edit in effect. */
    Survey survey();

    /** What was odd about the files it was first read from. */
    List<Finding> importNotes();

    /** Where it is kept; null before there is any place. */
    @Nullable
    Path place();

    /** Empty where edits are taken, else a sentence that says why not. */
    String whyReadOnly();

    void append(Edit edit) throws IOException;

    boolean canUndo();

    boolean canRedo();

    void undo() throws IOException;

    void redo() throws IOException;

    /** The bytes of a photograph, or null where there is none of that name. */
    byte @Nullable [] picture(String name) throws IOException;

    /** Keeps the bytes of a photograph. */
    void putPicture(String name, byte[] content) throws IOException;

    @Override
    void close();
}
