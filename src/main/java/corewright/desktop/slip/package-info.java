/**
 * The slip at the right: what is touched, in a sentence, a range, four facts, the decision and the open findings.
 *
 * <p>Words are made of records alone ({@link corewright.desktop.slip.SlipWords}); {@link corewright.desktop.slip.SlipView} only places
 * them.
 */
@NullMarked
package corewright.desktop.slip;

import org.jspecify.annotations.NullMarked;
