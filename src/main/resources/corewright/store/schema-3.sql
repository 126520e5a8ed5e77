-- Version 3: taps after cure.
CREATE TABLE cured_taps (
  fid INTEGER PRIMARY KEY NOT NULL,
  origin_file TEXT NOT NULL,
  origin_line INTEGER NOT NULL,
  id TEXT NOT NULL,
  geom POINT NOT NULL,
  face TEXT NOT NULL,
  sound TEXT,
  contact_us DOUBLE,
  side TEXT NOT NULL,
  position INTEGER NOT NULL
);
CREATE INDEX cured_taps_order ON cured_taps (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('cured_taps', 'features', 'Taps after cure', 'over filled places, once the mix is hard', -1);
INSERT INTO gpkg_geometry_columns VALUES ('cured_taps', 'geom', 'POINT', -1, 0, 0);

UPDATE survey_file SET value = 3 WHERE name = 'schema_version';
