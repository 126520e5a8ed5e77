-- Tables of a survey file, version 0. OGC 12-128r18, annex C, has the first three as they stand here.
CREATE TABLE gpkg_spatial_ref_sys (
  srs_name TEXT NOT NULL,
  srs_id INTEGER NOT NULL PRIMARY KEY,
  organization TEXT NOT NULL,
  organization_coordsys_id INTEGER NOT NULL,
  definition TEXT NOT NULL,
  description TEXT
);
INSERT INTO gpkg_spatial_ref_sys VALUES
  ('Undefined Cartesian SRS', -1, 'NONE', -1, 'undefined', 'millimetres: x aft from the datum, y to starboard'),
  ('Undefined geographic SRS', 0, 'NONE', 0, 'undefined', 'required by the standard, not used'),
  ('WGS 84 geodetic', 4326, 'EPSG', 4326, 'GEOGCS["WGS 84",DATUM["WGS_1984",SPHEROID["WGS 84",6378137,298.257223563]],PRIMEM["Greenwich",0],UNIT["degree",0.0174532925199433],AUTHORITY["EPSG","4326"]]', 'required by the standard, not used');

CREATE TABLE gpkg_contents (
  table_name TEXT NOT NULL PRIMARY KEY,
  data_type TEXT NOT NULL,
  identifier TEXT UNIQUE,
  description TEXT DEFAULT '',
  last_change DATETIME NOT NULL DEFAULT (strftime('%Y-%m-%dT%H:%M:%fZ', 'now')),
  min_x DOUBLE,
  min_y DOUBLE,
  max_x DOUBLE,
  max_y DOUBLE,
  srs_id INTEGER,
  CONSTRAINT fk_gc_r_srs_id FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys (srs_id)
);

CREATE TABLE gpkg_geometry_columns (
  table_name TEXT NOT NULL,
  column_name TEXT NOT NULL,
  geometry_type_name TEXT NOT NULL,
  srs_id INTEGER NOT NULL,
  z TINYINT NOT NULL,
  m TINYINT NOT NULL,
  CONSTRAINT pk_geom_cols PRIMARY KEY (table_name, column_name),
  CONSTRAINT uk_gc_table_name UNIQUE (table_name),
  CONSTRAINT fk_gc_tn FOREIGN KEY (table_name) REFERENCES gpkg_contents (table_name),
  CONSTRAINT fk_gc_srs FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys (srs_id)
);

CREATE TABLE heading (
  fid INTEGER PRIMARY KEY NOT NULL,
  name TEXT NOT NULL,
  surveyed DATE NOT NULL,
  vessel TEXT NOT NULL,
  client TEXT NOT NULL,
  surveyor TEXT NOT NULL,
  weather TEXT NOT NULL,
  days_ashore INTEGER,
  notes TEXT NOT NULL,
  position INTEGER NOT NULL
);
CREATE INDEX heading_order ON heading (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('heading', 'attributes', 'Survey heading', 'what stands at the head of every page', NULL);

CREATE TABLE faces (
  fid INTEGER PRIMARY KEY NOT NULL,
  geom POLYGON NOT NULL,
  name TEXT NOT NULL,
  tilt_deg DOUBLE NOT NULL,
  uphill_deg DOUBLE NOT NULL,
  edge TEXT NOT NULL,
  laminate TEXT NOT NULL,
  position INTEGER NOT NULL
);
CREATE INDEX faces_order ON faces (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('faces', 'features', 'Faces', 'flattened surfaces, each in its own plane', -1);
INSERT INTO gpkg_geometry_columns VALUES ('faces', 'geom', 'POLYGON', -1, 0, 0);

CREATE TABLE plan_features (
  fid INTEGER PRIMARY KEY NOT NULL,
  geom GEOMETRY NOT NULL,
  face TEXT NOT NULL,
  kind TEXT NOT NULL,
  origin_file TEXT NOT NULL,
  origin_line INTEGER NOT NULL,
  name TEXT NOT NULL,
  edge TEXT,
  metal BOOLEAN,
  load_bearing BOOLEAN,
  keepout_mm DOUBLE,
  laminate TEXT,
  position INTEGER NOT NULL
);
CREATE INDEX plan_features_order ON plan_features (face, position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('plan_features', 'features', 'Plan features', 'openings, dividers, supports, fittings and what else is drawn on a face', -1);
INSERT INTO gpkg_geometry_columns VALUES ('plan_features', 'geom', 'GEOMETRY', -1, 0, 0);

CREATE TABLE meters (
  fid INTEGER PRIMARY KEY NOT NULL,
  name TEXT NOT NULL,
  kind TEXT NOT NULL,
  full_scale DOUBLE NOT NULL,
  dry DOUBLE,
  wet DOUBLE,
  position INTEGER NOT NULL
);
CREATE INDEX meters_order ON meters (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('meters', 'attributes', 'Meters', 'moisture meters and what their scales mean on this boat', NULL);

CREATE TABLE laminates (
  fid INTEGER PRIMARY KEY NOT NULL,
  name TEXT NOT NULL,
  outer_skin_mm DOUBLE NOT NULL,
  core_mm DOUBLE NOT NULL,
  inner_skin_mm DOUBLE NOT NULL,
  skin TEXT NOT NULL,
  core TEXT NOT NULL,
  measured BOOLEAN NOT NULL,
  position INTEGER NOT NULL
);
CREATE INDEX laminates_order ON laminates (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('laminates', 'attributes', 'Laminates', 'lay-ups', NULL);

CREATE TABLE skins (
  fid INTEGER PRIMARY KEY NOT NULL,
  name TEXT NOT NULL,
  modulus_mpa DOUBLE NOT NULL,
  poisson DOUBLE NOT NULL,
  strength_mpa DOUBLE NOT NULL,
  density_kg_m3 DOUBLE NOT NULL,
  source TEXT NOT NULL,
  position INTEGER NOT NULL
);
CREATE INDEX skins_order ON skins (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('skins', 'attributes', 'Skin materials', '', NULL);

CREATE TABLE cores (
  fid INTEGER PRIMARY KEY NOT NULL,
  name TEXT NOT NULL,
  density_kg_m3 DOUBLE NOT NULL,
  modulus_mpa DOUBLE NOT NULL,
  shear_mpa DOUBLE NOT NULL,
  crush_mpa DOUBLE NOT NULL,
  shear_strength_mpa DOUBLE NOT NULL,
  source TEXT NOT NULL,
  position INTEGER NOT NULL
);
CREATE INDEX cores_order ON cores (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('cores', 'attributes', 'Core materials', '', NULL);

CREATE TABLE resins (
  fid INTEGER PRIMARY KEY NOT NULL,
  name TEXT NOT NULL,
  hardener_per_resin DOUBLE NOT NULL,
  density_kg_m3 DOUBLE NOT NULL,
  expansion DOUBLE NOT NULL,
  pack DOUBLE NOT NULL,
  viscosity_pa_s DOUBLE NOT NULL,
  work_s DOUBLE NOT NULL,
  first_rise_s DOUBLE NOT NULL,
  rise_end_s DOUBLE NOT NULL,
  gel_s DOUBLE NOT NULL,
  hard_s DOUBLE NOT NULL,
  reference_c DOUBLE NOT NULL,
  structural BOOLEAN NOT NULL,
  source TEXT NOT NULL,
  position INTEGER NOT NULL
);
CREATE INDEX resins_order ON resins (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('resins', 'attributes', 'Mixes', 'two-part mixes', NULL);

CREATE TABLE moisture (
  fid INTEGER PRIMARY KEY NOT NULL,
  origin_file TEXT NOT NULL,
  origin_line INTEGER NOT NULL,
  id TEXT NOT NULL,
  geom POINT NOT NULL,
  face TEXT NOT NULL,
  value DOUBLE NOT NULL,
  off_scale BOOLEAN NOT NULL,
  meter TEXT NOT NULL,
  temperature_c DOUBLE,
  taken TEXT,
  reference BOOLEAN NOT NULL,
  side TEXT NOT NULL,
  note TEXT NOT NULL,
  position INTEGER NOT NULL
);
CREATE INDEX moisture_order ON moisture (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('moisture', 'features', 'Moisture readings', 'on the relative scale of each meter', -1);
INSERT INTO gpkg_geometry_columns VALUES ('moisture', 'geom', 'POINT', -1, 0, 0);

CREATE TABLE taps (
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
CREATE INDEX taps_order ON taps (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('taps', 'features', 'Taps', '', -1);
INSERT INTO gpkg_geometry_columns VALUES ('taps', 'geom', 'POINT', -1, 0, 0);

CREATE TABLE probes (
  fid INTEGER PRIMARY KEY NOT NULL,
  origin_file TEXT NOT NULL,
  origin_line INTEGER NOT NULL,
  id TEXT NOT NULL,
  geom POINT NOT NULL,
  face TEXT NOT NULL,
  void_depth_mm DOUBLE NOT NULL,
  core_state TEXT,
  core_moisture TEXT,
  position INTEGER NOT NULL
);
CREATE INDEX probes_order ON probes (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('probes', 'features', 'Probes', 'pilot holes', -1);
INSERT INTO gpkg_geometry_columns VALUES ('probes', 'geom', 'POINT', -1, 0, 0);

CREATE TABLE feelers (
  fid INTEGER PRIMARY KEY NOT NULL,
  origin_file TEXT NOT NULL,
  origin_line INTEGER NOT NULL,
  id TEXT NOT NULL,
  geom LINESTRING NOT NULL,
  face TEXT NOT NULL,
  "end" TEXT NOT NULL,
  void_depth_mm DOUBLE,
  position INTEGER NOT NULL
);
CREATE INDEX feelers_order ON feelers (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('feelers', 'features', 'Feelers', 'rods pushed in under the skin', -1);
INSERT INTO gpkg_geometry_columns VALUES ('feelers', 'geom', 'LINESTRING', -1, 0, 0);

CREATE TABLE plugs (
  fid INTEGER PRIMARY KEY NOT NULL,
  origin_file TEXT NOT NULL,
  origin_line INTEGER NOT NULL,
  id TEXT NOT NULL,
  geom POINT NOT NULL,
  face TEXT NOT NULL,
  moisture_percent DOUBLE NOT NULL,
  position INTEGER NOT NULL
);
CREATE INDEX plugs_order ON plugs (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('plugs', 'features', 'Plugs', 'oven-dried samples', -1);
INSERT INTO gpkg_geometry_columns VALUES ('plugs', 'geom', 'POINT', -1, 0, 0);

CREATE TABLE temperatures (
  fid INTEGER PRIMARY KEY NOT NULL,
  origin_file TEXT NOT NULL,
  origin_line INTEGER NOT NULL,
  id TEXT NOT NULL,
  geom POINT NOT NULL,
  face TEXT NOT NULL,
  after_s DOUBLE NOT NULL,
  value_c DOUBLE,
  warm BOOLEAN,
  position INTEGER NOT NULL
);
CREATE INDEX temperatures_order ON temperatures (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('temperatures', 'features', 'Surface temperatures', 'while a fill cures', -1);
INSERT INTO gpkg_geometry_columns VALUES ('temperatures', 'geom', 'POINT', -1, 0, 0);

CREATE TABLE work_log (
  fid INTEGER PRIMARY KEY NOT NULL,
  origin_file TEXT NOT NULL,
  origin_line INTEGER NOT NULL,
  hole TEXT NOT NULL,
  after_s DOUBLE NOT NULL,
  grams DOUBLE NOT NULL,
  ooze_at TEXT,
  position INTEGER NOT NULL
);
CREATE INDEX work_log_order ON work_log (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('work_log', 'attributes', 'Work log', 'what went into each hole', NULL);

CREATE TABLE photos (
  fid INTEGER PRIMARY KEY NOT NULL,
  origin_file TEXT NOT NULL,
  origin_line INTEGER NOT NULL,
  file TEXT NOT NULL,
  geom POINT NOT NULL,
  face TEXT NOT NULL,
  caption TEXT NOT NULL,
  position INTEGER NOT NULL
);
CREATE INDEX photos_order ON photos (position);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('photos', 'features', 'Photographs', 'places of photographs; their bytes are in pictures', -1);
INSERT INTO gpkg_geometry_columns VALUES ('photos', 'geom', 'POINT', -1, 0, 0);

CREATE TABLE settings (
  fid INTEGER PRIMARY KEY NOT NULL,
  section TEXT NOT NULL,
  name TEXT NOT NULL,
  value TEXT NOT NULL
);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('settings', 'attributes', 'Settings', 'rules, thresholds and assumptions, each in its own unit', NULL);

CREATE TABLE pictures (
  fid INTEGER PRIMARY KEY NOT NULL,
  file TEXT NOT NULL UNIQUE,
  content BLOB NOT NULL
);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('pictures', 'attributes', 'Pictures', 'the photographs themselves', NULL);

CREATE TABLE edits (
  fid INTEGER PRIMARY KEY NOT NULL,
  edit TEXT NOT NULL,
  inverse TEXT NOT NULL
);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('edits', 'attributes', 'Edits', 'every change made, with what takes it back', NULL);

CREATE TABLE survey_file (
  fid INTEGER PRIMARY KEY NOT NULL,
  name TEXT NOT NULL UNIQUE,
  value INTEGER NOT NULL
);
INSERT INTO gpkg_contents (table_name, data_type, identifier, description, srs_id)
  VALUES ('survey_file', 'attributes', 'Survey file', 'version of the tables; edits in effect', NULL);
INSERT INTO survey_file (name, value) VALUES ('schema_version', 0), ('undo_cursor', 0);
