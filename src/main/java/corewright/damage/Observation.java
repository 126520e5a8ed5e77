package corewright.damage;

import corewright.field.Site;
import corewright.survey.Reading;
import corewright.survey.Spot;

/** What one reading says of one hidden field, and where. */
record Observation(Spot spot, Site site, Reading reading) {}
