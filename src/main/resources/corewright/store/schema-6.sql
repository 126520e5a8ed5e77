-- Version 6: coamings along the edges of openings; strengths of mixes, 0 where not known.
ALTER TABLE plan_features ADD COLUMN coaming_height_mm DOUBLE;
ALTER TABLE plan_features ADD COLUMN coaming_thickness_mm DOUBLE;
ALTER TABLE plan_features ADD COLUMN coaming_skin TEXT;
ALTER TABLE resins ADD COLUMN shear_strength_mpa DOUBLE NOT NULL DEFAULT 0;
ALTER TABLE resins ADD COLUMN crush_mpa DOUBLE NOT NULL DEFAULT 0;
ALTER TABLE resins ADD COLUMN bond_shear_mpa DOUBLE NOT NULL DEFAULT 0;
ALTER TABLE resins ADD COLUMN bond_peel_mpa DOUBLE NOT NULL DEFAULT 0;

UPDATE survey_file SET value = 6 WHERE name = 'schema_version';
