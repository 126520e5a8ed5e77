package corewright.stiffness;

/** What is not known of a panel after its repair; each has a range of its own. */
public enum Doubt {
    /** How far the damage reaches: of the face's damaged area, one case in ten below, one above. */
    AREA,
    /** How deep the empty space is: of a region's volume, one case in ten below, one above. */
    DEPTH,
    /** How far the mix rises, over what its sheet says. */
    EXPANSION,
    /** What the cured foam has of the modulus by its density. */
    FOAM,
    /** What wet sound core has kept of its moduli. */
    WATER;

    /** Common practice until a cured sample is tested. */
    public static final double FOAM_LOW = 0.5;

    public static final double FOAM_HIGH = 0.7;

    /** A mix meant for foam of 240 kg/m3 that comes out at 300 or at 200: the usual products lie so far apart. Practice. */
    public static final double EXPANSION_LOW = 0.8;

    public static final double EXPANSION_HIGH = 1.2;

    /** Of wet sound wood; common practice, see {@link Softening}. */
    public static final double WATER_LOW = 0.6;

    public static final double WATER_HIGH = 0.8;
}
