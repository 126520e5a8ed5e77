package corewright.sandwich;

/** A panel that cannot be calculated: nothing holds it, or nothing of it is left after meshing. */
public final class UnsupportedPanelException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    UnsupportedPanelException(String message) {
        super(message);
    }
}
