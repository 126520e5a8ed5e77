package corewright.decision;

/**
 * A rule that held for a region.
 *
 * @param name of the rule
 * @param effect what followed, such as {@code recore} or {@code not inject}, parted by commas
 * @param sentence why
 * @param source where the rule comes from, or its mark
 */
public record FiredRule(String name, String effect, String sentence, String source) {}
