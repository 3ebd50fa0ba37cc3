-- Where a tree stands, what it is by code, and at which height it was measured. Degrees are WGS 84, times 10^7.
ALTER TABLE tree
    ADD COLUMN species_code    varchar(7),                             -- EPPO, null if not known
    ADD COLUMN latitude_e7     integer CHECK (latitude_e7 BETWEEN -900000000 AND 900000000),
    ADD COLUMN longitude_e7    integer CHECK (longitude_e7 BETWEEN -1800000000 AND 1800000000),
    ADD COLUMN girth_height_mm bigint CHECK (girth_height_mm > 0),     -- above ground, null if nobody told
    ADD COLUMN note            text NOT NULL DEFAULT '',               -- of whoever registered it
    ADD CHECK ((latitude_e7 IS NULL) = (longitude_e7 IS NULL)),
    ADD CHECK (girth_height_mm IS NULL OR girth_mm IS NOT NULL);
CREATE INDEX tree_by_place ON tree (latitude_e7, longitude_e7) WHERE latitude_e7 IS NOT NULL;

ALTER TABLE tree_step
    ADD COLUMN girth_height_mm bigint CHECK (girth_height_mm > 0),     -- above ground, null if nobody told
    ADD COLUMN band_id         varchar(40);                            -- the band that was being fitted, null if none
