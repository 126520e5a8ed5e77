/**
 * What the survey's people settled beside the readings: thresholds, drilling, resins, costs, crew, climate, the reader's
 * terms. Records only, each with its defaults.
 *
 * <p><b>Units.</b> Millimetre, gram, second, degree Celsius.
 */
@NullMarked
package corewright.survey.settings;

import org.jspecify.annotations.NullMarked;
