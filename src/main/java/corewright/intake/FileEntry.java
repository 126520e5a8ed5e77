package corewright.intake;

import corewright.intake.text.Kind;
import corewright.intake.yaml.YamlValue;
import corewright.survey.Side;
import org.jspecify.annotations.Nullable;

/**
 * One file named under {@code files}.
 *
 * @param at where it is named
 * @param face of every reading without a face of its own, empty where the survey has one
 * @param meter of every reading without a meter of its own, empty where the survey has one
 * @param drawing of a plan that is a DXF or SVG file, else null
 */
record FileEntry(
        Kind kind,
        YamlValue at,
        String file,
        String face,
        String meter,
        Side side,
        @Nullable DrawingEntry drawing) {}
