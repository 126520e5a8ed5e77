/**
 * Drawing the plan by hand, over a picture laid under it.
 */
@NullMarked
package corewright.desktop.sketch;

import org.jspecify.annotations.NullMarked;
