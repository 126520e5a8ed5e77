/**
 * Photographs pinned to places of the plan.
 */
@NullMarked
package corewright.desktop.photos;

import org.jspecify.annotations.NullMarked;
