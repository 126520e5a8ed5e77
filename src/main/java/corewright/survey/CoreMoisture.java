package corewright.survey;

/** The water found with rotted or missing core. */
public enum CoreMoisture {
    DRY,
    DAMP,
    WET
}
