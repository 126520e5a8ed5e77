package corewright.desktop.state;

/**
 * Long work and how far it is.
 *
 * @param what empty where nothing is under way
 */
public record Busy(String what, double fraction) {
    static final Busy NOT = new Busy("", 0);
}
