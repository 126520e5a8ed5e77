package corewright.desktop.work;

/**
 * A clock of the cup in hand.
 *
 * @param leftS seconds left, negative when it is over
 * @param share of it that has run, at most 1
 */
public record Clock(String what, double leftS, double share) {
    static Clock of(String what, double wholeS, double goneS) {
        return new Clock(what, wholeS - goneS, Math.min(1, goneS / Math.max(1, wholeS)));
    }

    /** "4:40", "−0:12" when it is over. */
    public String minutes() {
        long whole = Math.round(Math.abs(leftS));
        return (leftS < 0 ? "−" : "") + whole / 60 + ":" + (whole % 60 < 10 ? "0" : "") + whole % 60;
    }
}
