package corewright.drawing;

/**
 * A hole to drill: injection a disc 2.6, vent a ring 2.6 (0.40), on a 0.6 casing. Its number stands beside it, see
 * {@link HoleLabel}.
 */
record HoleMark(double x, double y, boolean vent) implements Mark {
    static final double DIAMETER = 2.6;
    private static final Pen RING = Pen.solid(0.40);

    @Override
    public Box box() {
        return Box.round(x, y, DIAMETER / 2);
    }

    @Override
    public void paint(Paper paper) {
        paper.fill(Paper.circle(x, y, DIAMETER + 1.2), Paper.WHITE);
        if (vent) {
            paper.draw(Paper.circle(x, y, DIAMETER - 0.40), RING);
        } else {
            paper.disc(x, y, DIAMETER);
        }
    }
}
