package corewright.drawing.plates;

import corewright.drawing.kit.Paper;

/** Draws one sample with its middle at (x, y). */
interface LegendSample {
    void paint(Paper paper, double x, double y);
}
