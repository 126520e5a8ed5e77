/**
 * While the work goes on: the day's schedule, the log, warmth of the skin, taps after cure, second shots.
 */
@NullMarked
package corewright.repair.work;

import org.jspecify.annotations.NullMarked;
