package corewright.drawing;

/**
 * A nozzle on a work card, its number beside its mouth, on the side away from the opening.
 *
 * @param diameter of the discs on this card
 */
record CardNozzle(NozzleMark nozzle, String number, double diameter) implements Mark {
    private static final double EM = 0.68;
    private static final double POINT = 25.4 / 72;
    private static final double GAP = 0.8;

    private Type type() {
        return new Type(Typeface.CONDENSED_BOLD, diameter * EM / POINT);
    }

    private double left() {
        double away = nozzle.head() / 2 + GAP;
        return nozzle.x2() >= nozzle.x1() ? nozzle.x2() + away : nozzle.x2() - away - type().width(number);
    }

    @Override
    public Box box() {
        Box mouth = nozzle.box();
        double right = Math.max(mouth.right(), left() + type().width(number));
        double x = Math.min(mouth.x(), left());
        return new Box(x, mouth.y(), right - x, mouth.height());
    }

    @Override
    public void paint(Paper paper) {
        nozzle.paint(paper);
        double foot = nozzle.y2() + type().capMm() / 2;
        paper.haloText(number, left(), foot, type(), Paper.Anchor.LEFT, 0.7);
    }
}
