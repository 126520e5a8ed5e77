/**
 * How the map came about: variogram, cross-validation, standard errors, in words and charts.
 */
@NullMarked
package corewright.desktop.insight;

import org.jspecify.annotations.NullMarked;
