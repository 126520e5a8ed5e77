/**
 * Finding a thing by what it is called.
 *
 * <p>In: what the plan shows. Out: a place, marked. {@link corewright.desktop.find.Finder} knows no window.
 */
@NullMarked
package corewright.desktop.find;

import org.jspecify.annotations.NullMarked;
