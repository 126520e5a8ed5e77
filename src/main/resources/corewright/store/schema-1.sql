-- Version 1: what people decide against the program, and what was odd about imported files.
CREATE TABLE method_overrides (
  fid INTEGER PRIMARY KEY NOT NULL,
  geom POINT NOT NULL,
  face TEXT NOT NULL,
  method TEXT NOT NULL,
  reason TEXT NOT NULL,
  position INTEGER NOT NULL
);
CREATE INDEX method_overrides_order ON method_overrides (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('method_overrides', 'features', 'Methods chosen by hand', 'for the region that contains the place', -1);
INSERT INTO gpkg_geometry_columns VALUES ('method_overrides', 'geom', 'POINT', -1, 0, 0);

CREATE TABLE reading_overrides (
  fid INTEGER PRIMARY KEY NOT NULL,
  kind TEXT NOT NULL,
  id TEXT NOT NULL,
  geom POINT NOT NULL,
  face TEXT NOT NULL,
  trust TEXT NOT NULL,
  reason TEXT NOT NULL,
  position INTEGER NOT NULL
);
CREATE INDEX reading_overrides_order ON reading_overrides (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('reading_overrides', 'features', 'Readings judged by hand', '', -1);
INSERT INTO gpkg_geometry_columns VALUES ('reading_overrides', 'geom', 'POINT', -1, 0, 0);

CREATE TABLE moved_holes (
  fid INTEGER PRIMARY KEY NOT NULL,
  geom LINESTRING NOT NULL,
  face TEXT NOT NULL,
  position INTEGER NOT NULL
);
CREATE INDEX moved_holes_order ON moved_holes (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('moved_holes', 'features', 'Holes moved by hand', 'from where the plan had put them to where they go', -1);
INSERT INTO gpkg_geometry_columns VALUES ('moved_holes', 'geom', 'LINESTRING', -1, 0, 0);

CREATE TABLE import_notes (
  fid INTEGER PRIMARY KEY NOT NULL,
  severity TEXT NOT NULL,
  origin_file TEXT NOT NULL,
  origin_line INTEGER NOT NULL,
  id TEXT NOT NULL,
  geom POINT,
  face TEXT,
  subject TEXT NOT NULL,
  message TEXT NOT NULL,
  effect TEXT NOT NULL,
  position INTEGER NOT NULL
);
CREATE INDEX import_notes_order ON import_notes (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('import_notes', 'features', 'Notes of the import', 'what was odd about the files that the survey was read from', -1);
INSERT INTO gpkg_geometry_columns VALUES ('import_notes', 'geom', 'POINT', -1, 0, 0);

UPDATE survey_file SET value = 1 WHERE name = 'schema_version';
