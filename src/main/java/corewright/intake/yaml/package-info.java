/**
 * YAML into values that know their line, and into blocks that complain of every key they do not know.
 */
@NullMarked
package corewright.intake.yaml;

import org.jspecify.annotations.NullMarked;
