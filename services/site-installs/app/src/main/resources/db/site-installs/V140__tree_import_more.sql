-- What lists may tell or not: code, place, height of measuring, a note. Degrees are WGS 84, times 10^7.
ALTER TABLE tree_import_row
    ADD COLUMN species_code    varchar(7),                             -- EPPO, null if not told
    ADD COLUMN latitude_e7     integer CHECK (latitude_e7 BETWEEN -900000000 AND 900000000),
    ADD COLUMN longitude_e7    integer CHECK (longitude_e7 BETWEEN -1800000000 AND 1800000000),
    ADD COLUMN girth_height_mm bigint CHECK (girth_height_mm > 0),     -- above ground, null if not told
    ADD COLUMN note            text NOT NULL DEFAULT '',
    ADD CHECK ((latitude_e7 IS NULL) = (longitude_e7 IS NULL));
