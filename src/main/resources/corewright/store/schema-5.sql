-- Version 5: how a laminate's core was cut, and how far in its edge is solid.
ALTER TABLE laminates ADD COLUMN core_form TEXT NOT NULL DEFAULT 'plain';
ALTER TABLE laminates ADD COLUMN solid_edge_mm DOUBLE NOT NULL DEFAULT 0;

UPDATE survey_file SET value = 5 WHERE name = 'schema_version';
