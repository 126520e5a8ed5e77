/** Starts either shell: the command line or the window. */
@NullMarked
package corewright;

import org.jspecify.annotations.NullMarked;
