/**
 * The invented boat <i>Brindlewisp</i>: what is wrong with her, what a surveyor would have read, and the files under {@code
 * demo-data/quillwort} that say so.
 *
 * <p><b>Steps.</b> (1) {@link corewright.demo.Truth} says of every place whether the core is wet, the skin loose and how
 * deep the empty space is; (2) {@link corewright.demo.Walk} reads it as a surveyor does, with scatter and honest
 * mistakes, from one seed; (3) {@link corewright.demo.DemoFiles} writes the survey folder and the page that tells the
 * truth. Nothing here was measured on a boat.
 */
@NullMarked
package corewright.demo;

import org.jspecify.annotations.NullMarked;
