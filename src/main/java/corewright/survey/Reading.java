package corewright.survey;

/** One observation at one place. */
public sealed interface Reading permits Moisture, Tap, Probe, Feeler, Plug, SurfaceTemperature {
    Origin origin();

    /** The surveyor's own name of it, or file:line where none was given. */
    String id();

    /** Where it was taken; for a feeler the place where the rod went in. */
    Spot spot();
}
