package corewright.drawing.placing;

/** For whom the labels speak. */
public enum MapWording {
    /** Trade words, areas, ranges, depths. */
    TRADE,
    /** Plain words, the least of figures. */
    OWNER
}
