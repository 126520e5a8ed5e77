/** Scored benchmarks on decks whose truth is known; see trial-decks/README.md among the test resources. */
@NullMarked
package corewright.bench;

import org.jspecify.annotations.NullMarked;
