package corewright.assessment;

/** An assessment and what it leaves for the next one. */
public record Assessed(Assessment assessment, Earlier earlier) {}
