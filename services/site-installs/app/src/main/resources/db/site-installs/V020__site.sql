-- The register of sites.
CREATE TABLE site (
    site_id       varchar(40)  NOT NULL PRIMARY KEY,
    name          varchar(120) NOT NULL,
    latitude_e7   integer      CHECK (latitude_e7 BETWEEN -900000000 AND 900000000),     -- WGS 84, degrees x 10^7
    longitude_e7  integer      CHECK (longitude_e7 BETWEEN -1800000000 AND 1800000000),  -- WGS 84, degrees x 10^7
    access_notes  text         NOT NULL,
    registered_at timestamptz  NOT NULL,
    CHECK ((latitude_e7 IS NULL) = (longitude_e7 IS NULL))
);
