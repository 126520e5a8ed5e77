package corewright.intake.text;

import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;

/** The input cannot be used; every complaint of every file is listed. */
public final class RefusedException extends IOException {
    private static final long serialVersionUID = 1L;

    private final transient List<Complaint> complaints;

    public RefusedException(List<Complaint> complaints) {
        super(complaints.stream().map(Complaint::toString).collect(Collectors.joining("\n")));
        this.complaints = List.copyOf(complaints);
    }

    public List<Complaint> complaints() {
        return complaints;
    }
}
