package corewright.damage;

/**
 * A damage map and what was fitted on the way.
 *
 * @param parameters to be frozen while a person edits, see {@link Damage#follow}
 * @param old whether volumes and suggested readings are those of an earlier state of the readings
 */
public record Fitted(DamageMap map, Parameters parameters, boolean old) {}
