-- Version 2: loads the deck is to carry.
CREATE TABLE loads (
  fid INTEGER PRIMARY KEY NOT NULL,
  load_case TEXT NOT NULL,
  face TEXT NOT NULL,
  geom GEOMETRY NOT NULL,
  force_n DOUBLE NOT NULL,
  pressure_kpa DOUBLE NOT NULL,
  moment_xnmm DOUBLE NOT NULL,
  moment_ynmm DOUBLE NOT NULL,
  position INTEGER NOT NULL
);
CREATE INDEX loads_order ON loads (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('loads', 'features', 'Loads', 'what the deck is to carry; loads of one case act together', -1);
INSERT INTO gpkg_geometry_columns VALUES ('loads', 'geom', 'GEOMETRY', -1, 0, 0);

UPDATE survey_file SET value = 2 WHERE name = 'schema_version';
