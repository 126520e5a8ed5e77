/**
 * Where marks, names, labels and readings stand so that nothing lies on anything else.
 *
 * <p><b>In:</b> {@link corewright.drawing.placing.MapSpec}, what is to be shown at which scale. <b>Out:</b> {@link
 * corewright.drawing.placing.MapLayout}, every mark with its place.
 *
 * <p><b>Steps.</b> (1) marks, whose places are given; (2) names of features; (3) labels of regions with leaders that never cross; (4) the
 * readings there is room for.
 */
@NullMarked
package corewright.drawing.placing;

import org.jspecify.annotations.NullMarked;
