-- Version 7: the repair plan as issued, a table a kind of thing; the work log as it is written at the boat.
CREATE TABLE repair_plan (
  fid INTEGER PRIMARY KEY NOT NULL,
  revision INTEGER NOT NULL,
  surveyed DATE NOT NULL,
  mark TEXT NOT NULL,
  moisture INTEGER NOT NULL,
  taps INTEGER NOT NULL,
  probes INTEGER NOT NULL,
  feelers INTEGER NOT NULL,
  plugs INTEGER NOT NULL,
  position INTEGER NOT NULL
);
CREATE INDEX repair_plan_order ON repair_plan (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('repair_plan', 'attributes', 'Repair plan', 'the revision that was issued, and what it rests on', NULL);

CREATE TABLE planned_regions (
  fid INTEGER PRIMARY KEY NOT NULL,
  name TEXT NOT NULL,
  geom POINT NOT NULL,
  face TEXT NOT NULL,
  method TEXT NOT NULL,
  standing TEXT NOT NULL,
  position INTEGER NOT NULL
);
CREATE INDEX planned_regions_order ON planned_regions (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('planned_regions', 'features', 'Regions of the repair plan', 'names that stay', -1);
INSERT INTO gpkg_geometry_columns VALUES ('planned_regions', 'geom', 'POINT', -1, 0, 0);

CREATE TABLE planned_holes (
  fid INTEGER PRIMARY KEY NOT NULL,
  name TEXT NOT NULL,
  region TEXT NOT NULL,
  geom POINT NOT NULL,
  face TEXT NOT NULL,
  kind TEXT NOT NULL,
  diameter_mm DOUBLE NOT NULL,
  stop_mm DOUBLE NOT NULL,
  grams DOUBLE NOT NULL,
  standing TEXT NOT NULL,
  access TEXT NOT NULL,
  push_mm DOUBLE NOT NULL,
  position INTEGER NOT NULL
);
CREATE INDEX planned_holes_order ON planned_holes (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('planned_holes', 'features', 'Holes of the repair plan', 'a name means one place for good', -1);
INSERT INTO gpkg_geometry_columns VALUES ('planned_holes', 'geom', 'POINT', -1, 0, 0);

CREATE TABLE planned_cuts (
  fid INTEGER PRIMARY KEY NOT NULL,
  region TEXT NOT NULL,
  face TEXT NOT NULL,
  geom GEOMETRY NOT NULL,
  position INTEGER NOT NULL
);
CREATE INDEX planned_cuts_order ON planned_cuts (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('planned_cuts', 'features', 'Cuts of the repair plan', 'through the outer skin', -1);
INSERT INTO gpkg_geometry_columns VALUES ('planned_cuts', 'geom', 'GEOMETRY', -1, 0, 0);

CREATE TABLE planned_cups (
  fid INTEGER PRIMARY KEY NOT NULL,
  cup INTEGER NOT NULL,
  region TEXT NOT NULL,
  holes TEXT NOT NULL,
  part_ag DOUBLE NOT NULL,
  part_bg DOUBLE NOT NULL,
  position INTEGER NOT NULL
);
CREATE INDEX planned_cups_order ON planned_cups (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('planned_cups', 'attributes', 'Cups of the repair plan', 'grams of resin and of hardener', NULL);

CREATE TABLE planned_purchases (
  fid INTEGER PRIMARY KEY NOT NULL,
  item TEXT NOT NULL,
  plan DOUBLE NOT NULL,
  buy DOUBLE NOT NULL,
  unit TEXT NOT NULL,
  position INTEGER NOT NULL
);
CREATE INDEX planned_purchases_order ON planned_purchases (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('planned_purchases', 'attributes', 'Buying list of the repair plan', 'as issued', NULL);

ALTER TABLE work_log ADD COLUMN cup INTEGER;
ALTER TABLE work_log ADD COLUMN vent_shown TEXT;
ALTER TABLE work_log ADD COLUMN depth_felt_mm DOUBLE;
ALTER TABLE work_log ADD COLUMN leak TEXT NOT NULL DEFAULT '';
ALTER TABLE work_log ADD COLUMN stopped TEXT NOT NULL DEFAULT '';
ALTER TABLE work_log ADD COLUMN note TEXT NOT NULL DEFAULT '';
ALTER TABLE work_log ADD COLUMN who TEXT NOT NULL DEFAULT '';
ALTER TABLE work_log ADD COLUMN resin_lot TEXT NOT NULL DEFAULT '';
ALTER TABLE work_log ADD COLUMN card_revision INTEGER;

UPDATE survey_file SET value = 7 WHERE name = 'schema_version';
