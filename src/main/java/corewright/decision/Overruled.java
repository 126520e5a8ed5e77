package corewright.decision;

import org.jspecify.annotations.Nullable;

/**
 * A person decided otherwise than the rules.
 *
 * @param rules what the rules advise
 * @param by who answers for it, empty where nobody is named
 * @param reason as given, empty where none was
 * @param stop the stop sign that the decision goes past, null where there is none
 */
public record Overruled(
        Method rules, String by, String reason, @Nullable String stop) {}
