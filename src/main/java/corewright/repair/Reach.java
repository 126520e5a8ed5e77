package corewright.repair;

/**
 * How far the mix is relied on to get from a hole.
 *
 * @param governedBy what limits it, a few words
 */
record Reach(double mm, String governedBy) {}
