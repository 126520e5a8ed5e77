package corewright.desktop.state;

import corewright.survey.Edit;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Edits taken at once, with their deeds noted. */
public final class MemoryEdits {
    private final MemoryLog log;
    private final List<String> deeds = new ArrayList<>();

    public MemoryEdits(Survey survey) {
        log = new MemoryLog(survey, List.of());
    }

    public Survey survey() {
        return log.survey();
    }

    public List<String> deeds() {
        return deeds;
    }

    public void edit(String deed, Function<Survey, @Nullable Edit> change) {
        Edit edit = change.apply(log.survey());
        if (edit == null) {
            return;
        }
        log.append(edit);
        deeds.add(deed);
    }

    public void undo() {
        log.undo();
    }
}
