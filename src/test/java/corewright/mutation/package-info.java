/** Damages valid inputs in every way a file can be damaged, and judges what the readers make of them. */
@NullMarked
package corewright.mutation;

import org.jspecify.annotations.NullMarked;
