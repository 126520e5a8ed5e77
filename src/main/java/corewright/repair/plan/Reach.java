package corewright.repair.plan;

/**
 * How far the mix is relied on to get from a hole.
 *
 * @param governedBy what limits it, a few words
 */
public record Reach(double mm, String governedBy) {}
