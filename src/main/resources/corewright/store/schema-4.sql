-- Version 4: notes of the import say what they are about.
ALTER TABLE import_notes ADD COLUMN about TEXT NOT NULL DEFAULT 'file';
UPDATE import_notes SET about = 'place' WHERE geom IS NOT NULL;
UPDATE import_notes SET about = CASE
    WHEN EXISTS (SELECT 1 FROM taps r WHERE r.id = import_notes.id
      AND r.origin_file = import_notes.origin_file AND r.origin_line = import_notes.origin_line) THEN 'tap'
    WHEN EXISTS (SELECT 1 FROM probes r WHERE r.id = import_notes.id
      AND r.origin_file = import_notes.origin_file AND r.origin_line = import_notes.origin_line) THEN 'probe'
    WHEN EXISTS (SELECT 1 FROM feelers r WHERE r.id = import_notes.id
      AND r.origin_file = import_notes.origin_file AND r.origin_line = import_notes.origin_line) THEN 'feeler'
    WHEN EXISTS (SELECT 1 FROM plugs r WHERE r.id = import_notes.id
      AND r.origin_file = import_notes.origin_file AND r.origin_line = import_notes.origin_line) THEN 'plug'
    ELSE 'moisture' END
  WHERE id <> '' AND geom IS NOT NULL;
UPDATE import_notes SET subject = replace(subject, ' ', '-');

UPDATE survey_file SET value = 4 WHERE name = 'schema_version';
