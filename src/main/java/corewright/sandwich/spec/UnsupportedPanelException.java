package corewright.sandwich.spec;

/** A panel that cannot be calculated: nothing holds it, or nothing of it is left after meshing. */
public final class UnsupportedPanelException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public UnsupportedPanelException(String message) {
        super(message);
    }
}
