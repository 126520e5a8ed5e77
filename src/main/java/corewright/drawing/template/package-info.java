/**
 * The full-size template inside its frames: which sheets a job takes, and what lies on each of them. Paper millimetres are survey
 * millimetres.
 */
@NullMarked
package corewright.drawing.template;

import org.jspecify.annotations.NullMarked;
