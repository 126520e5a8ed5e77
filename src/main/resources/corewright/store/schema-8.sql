-- Version 8: rules set aside and limits set by hand, with who and why.
CREATE TABLE rule_overrides (
  fid INTEGER PRIMARY KEY NOT NULL,
  rule TEXT NOT NULL,
  who TEXT NOT NULL,
  reason TEXT NOT NULL,
  position INTEGER NOT NULL
);
CREATE INDEX rule_overrides_order ON rule_overrides (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('rule_overrides', 'attributes', 'Rules set aside by hand', 'and limits set by hand, with who and why', NULL);

UPDATE survey_file SET value = 8 WHERE name = 'schema_version';
