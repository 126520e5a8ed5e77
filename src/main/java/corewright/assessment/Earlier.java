package corewright.assessment;

import corewright.damage.Parameters;
import corewright.reuse.Memory;

/**
 * What an assessment leaves for the next one.
 *
 * @param parameters fitted last, for a map that follows
 * @param memory results of the last whole assessment, by their inputs
 */
public record Earlier(Parameters parameters, Memory memory) {
    /** Nothing was assessed. */
    public static final Earlier NONE = new Earlier(Parameters.NONE, new Memory());

    /** The same with what was fitted since. */
    public Earlier with(Parameters since) {
        return new Earlier(since, memory);
    }
}
