-- Version 9: vents placed by hand; holes and vents taken away by hand; who chose a method.
ALTER TABLE moved_holes ADD COLUMN kind TEXT NOT NULL DEFAULT 'hole';
ALTER TABLE method_overrides ADD COLUMN who TEXT NOT NULL DEFAULT '';

UPDATE survey_file SET value = 9 WHERE name = 'schema_version';
