-- Version 10: the lift that a line of the log is of.
ALTER TABLE work_log ADD COLUMN lift INTEGER;

UPDATE survey_file SET value = 10 WHERE name = 'schema_version';
