package corewright.survey;

/** How a tap on the skin sounds, from bonded to loose. */
public enum Sound {
    SOUND,
    DULL,
    HOLLOW
}
