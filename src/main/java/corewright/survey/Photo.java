package corewright.survey;

/** A photograph pinned to a place; {@code file} is a path inside the survey folder. */
public record Photo(Origin origin, String file, Spot spot, String caption) {}
