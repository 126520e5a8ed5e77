/**
 * The command line: parse, call, print, return a code. Nothing is computed here.
 *
 * <p>A survey is read by {@code intake}. What only an expert command reads is read here, with the parts of {@code intake}:
 * a panel file ({@code PanelReader}), a table of numbers ({@code NumberTable}), an ESRI ASCII grid ({@code GridReader}).
 *
 * <p>Exit status: 0 done, 1 a defect of ours, 2 wrong use, 3 input refused.
 */
@NullMarked
package corewright.cli;

import org.jspecify.annotations.NullMarked;
