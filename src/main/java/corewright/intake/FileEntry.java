package corewright.intake;

import corewright.survey.Side;

/**
 * One file named under {@code files}.
 *
 * @param at where it is named
 * @param face of every reading without a face of its own, empty where the survey has one
 * @param meter of every reading without a meter of its own, empty where the survey has one
 */
record FileEntry(Kind kind, YamlValue at, String file, String face, String meter, Side side) {}
