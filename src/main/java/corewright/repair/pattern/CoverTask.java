package corewright.repair.pattern;

/**
 * What is to be covered, and from where.
 *
 * @param holeReachMm by flat index, the reach of a hole at the cell
 * @param reachMm at the region's middle gap, for the lattices
 */
@SuppressWarnings("ArrayRecordComponent") // within one computation, never compared
public record CoverTask(Cavity cavity, DrillPlaces places, double[] holeReachMm, double reachMm, Travel travel) {}
