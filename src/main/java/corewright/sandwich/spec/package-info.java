/**
 * What a sandwich panel is: outline, edges, skins, core, patches and loads. Records only.
 *
 * <p><b>Units.</b> Millimetre, newton, megapascal.
 */
@NullMarked
package corewright.sandwich.spec;

import org.jspecify.annotations.NullMarked;
