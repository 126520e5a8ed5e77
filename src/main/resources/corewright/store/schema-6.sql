-- Version 6: coamings along the edges of openings.
ALTER TABLE plan_features ADD COLUMN coaming_height_mm DOUBLE;
ALTER TABLE plan_features ADD COLUMN coaming_thickness_mm DOUBLE;
ALTER TABLE plan_features ADD COLUMN coaming_skin TEXT;

UPDATE survey_file SET value = 6 WHERE name = 'schema_version';
