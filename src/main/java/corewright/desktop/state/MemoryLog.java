package corewright.desktop.state;

import corewright.survey.Edit;
import corewright.survey.Finding;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Edits that nobody needs to keep: the sample survey, and tests. */
public final class MemoryLog implements EditLog {
    private record Step(Edit edit, Edit inverse) {}

    private final List<Finding> importNotes;
    private final List<Step> steps = new ArrayList<>();
    private final Map<String, byte[]> pictures = new HashMap<>();
    private Survey survey;
    private int cursor;

    public MemoryLog(Survey survey, List<Finding> importNotes) {
        this.survey = survey;
        this.importNotes = List.copyOf(importNotes);
    }

    @Override
    public synchronized Survey survey() {
        return survey;
    }

    @Override
    public List<Finding> importNotes() {
        return importNotes;
    }

    @Override
    public java.nio.file.@Nullable Path place() {
        return null;
    }

    @Override
    public String whyReadOnly() {
        return "";
    }

    @Override
    public synchronized void append(Edit edit) {
        Survey after = edit.apply(survey);
        steps.subList(cursor, steps.size()).clear();
        steps.add(new Step(edit, edit.inverse(survey)));
        cursor++;
        survey = after;
    }

    @Override
    public synchronized boolean canUndo() {
        return cursor > 0;
    }

    @Override
    public synchronized boolean canRedo() {
        return cursor < steps.size();
    }

    @Override
    public synchronized void undo() {
        if (canUndo()) {
            survey = steps.get(--cursor).inverse().apply(survey);
        }
    }

    @Override
    public synchronized void redo() {
        if (canRedo()) {
            survey = steps.get(cursor++).edit().apply(survey);
        }
    }

    @Override
    public synchronized byte @Nullable [] picture(String name) {
        return pictures.get(name);
    }

    @Override
    public synchronized void putPicture(String name, byte[] content) {
        pictures.put(name, content.clone());
    }

    @Override
    public void close() {
        // nothing is held open
    }
}
