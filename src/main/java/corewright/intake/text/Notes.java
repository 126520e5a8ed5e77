package corewright.intake.text;

import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.Finding.Severity;
import corewright.survey.Origin;
import corewright.survey.Subject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Complaints and findings as they turn up; complaints are handed on by file, in the order read, and line. */
public final class Notes {
    /** Nobody reads more; a million bad rows would fill the screen and the memory. */
    static final int LISTED_PER_FILE = 1000;

    private final Map<String, List<Complaint>> complaints = new LinkedHashMap<>();
    private final Map<String, Integer> unlisted = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();

    /** @param first the file whose complaints come first, whenever they are found */
    public Notes(String first) {
        complaints.put(first, new ArrayList<>());
    }

    public void complain(Complaint complaint) {
        String file = complaint.origin().file();
        List<Complaint> ofFile = complaints.computeIfAbsent(file, f -> new ArrayList<>());
        if (ofFile.size() < LISTED_PER_FILE) {
            ofFile.add(complaint);
        } else {
            unlisted.merge(file, 1, Integer::sum);
        }
    }

    public void complain(Origin origin, String column, String problem) {
        complain(new Complaint(origin, column, problem));
    }

    /** The usual form: {@code found "holow", expected sound, dull or hollow}. */
    public void expected(Origin origin, String column, String found, String expected) {
        complain(
                found.isEmpty()
                        ? new Complaint(origin, column, "found nothing, expected " + expected)
                        : Complaint.of(origin, column, found, expected));
    }

    /** Of a line of a file. */
    public void doubt(Origin origin, Subject subject, String message, String effect) {
        doubt(origin, new About.OfFile(origin), subject, message, effect);
    }

    public void doubt(Origin origin, About about, Subject subject, String message, String effect) {
        finding(new Finding(Severity.DOUBT, origin, about, subject, message, effect));
    }

    /** Of a line of a file. */
    public void hint(Origin origin, Subject subject, String message, String effect) {
        finding(new Finding(Severity.HINT, origin, new About.OfFile(origin), subject, message, effect));
    }

    public void finding(Finding finding) {
        findings.add(finding);
    }

    public boolean anyComplaint() {
        return complaints.values().stream().anyMatch(ofFile -> !ofFile.isEmpty());
    }

    /** Complaints in the order in which they were made. */
    public List<Complaint> listed() {
        return complaints.values().stream().flatMap(List::stream).toList();
    }

    public List<Finding> findings() {
        return List.copyOf(findings);
    }

    public void refuseIfAnyComplaint() throws RefusedException {
        if (!anyComplaint()) {
            return;
        }
        List<Complaint> all = new ArrayList<>();
        complaints.forEach((file, ofFile) -> {
            ofFile.stream()
                    .sorted(Comparator.comparingLong(c -> c.origin().line()))
                    .forEach(all::add);
            int more = unlisted.getOrDefault(file, 0);
            if (more > 0) {
                all.add(new Complaint(new Origin(file, 0), "", more + " further complaints are not listed"));
            }
        });
        throw new RefusedException(all);
    }
}
