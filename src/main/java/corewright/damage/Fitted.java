package corewright.damage;

/**
 * A damage map and what was fitted on the way.
 *
 * @param parameters to be frozen while a person edits, see {@link Damage#fit(corewright.survey.Survey, Parameters)}
 */
public record Fitted(DamageMap map, Parameters parameters) {}
