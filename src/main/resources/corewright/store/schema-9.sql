-- Version 9: vents placed by hand; holes and vents taken away by hand.
ALTER TABLE moved_holes ADD COLUMN kind TEXT NOT NULL DEFAULT 'hole';

UPDATE survey_file SET value = 9 WHERE name = 'schema_version';
