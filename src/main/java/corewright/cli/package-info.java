/**
 * The command line: parse, call, print, return a code. Nothing is computed here.
 *
 * <p>Exit status: 0 done, 1 a defect of ours, 2 wrong use, 3 input refused.
 */
@NullMarked
package corewright.cli;

import org.jspecify.annotations.NullMarked;
