package corewright.cli;

import corewright.sandwich.spec.Load;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Strengths;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What {@code PANEL.yaml} says: one sandwich panel, its loads, and what is asked of it.
 *
 * @param meshMm empty where it is to be chosen
 */
public record PanelFile(
        PanelSpec panel, List<Load> loads, Strengths strengths, OptionalDouble meshMm, List<Probe> probePoints) {
    public PanelFile {
        loads = List.copyOf(loads);
        probePoints = List.copyOf(probePoints);
    }

    /** A place to give deflections at, millimetres. */
    public record Probe(double x, double y) {}
}
