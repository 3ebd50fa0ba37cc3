-- The ground of a site, when one may be there, what can hurt there, and whether it is closed.
ALTER TABLE site
    ADD COLUMN boundary     jsonb,                              -- coordinates of a GeoJSON polygon, degrees WGS 84
    ADD COLUMN area_dm2     bigint CHECK (area_dm2 > 0),        -- geodesic, square decimetres, holes taken off
    ADD COLUMN perimeter_mm bigint CHECK (perimeter_mm > 0),    -- geodesic, of the outside, millimetres
    ADD COLUMN south_e7     integer,                            -- box around the boundary, degrees x 10^7
    ADD COLUMN west_e7      integer,
    ADD COLUMN north_e7     integer,
    ADD COLUMN east_e7      integer,
    ADD COLUMN hours        jsonb NOT NULL DEFAULT '{"weekly": [], "exceptions": []}',
    ADD COLUMN hazards      jsonb NOT NULL DEFAULT '[]',        -- kinds and notes
    ADD COLUMN closed_on    date,                               -- first day of no work, null while open
    ADD COLUMN closed_why   text NOT NULL DEFAULT '',
    ADD CHECK ((boundary IS NULL) = (area_dm2 IS NULL)),
    ADD CHECK ((boundary IS NULL) = (south_e7 IS NULL)),
    ADD CHECK (south_e7 <= north_e7 AND west_e7 <= east_e7);

-- Every change of a site, with the value it replaced.
CREATE TABLE site_step (
    position    bigint      NOT NULL PRIMARY KEY,               -- of the event in the store
    site_id     varchar(40) NOT NULL,
    what        varchar(40) NOT NULL,                           -- in words
    happened_at timestamptz NOT NULL,
    by_person   varchar(40) NOT NULL,
    was         text        NOT NULL,                           -- the old value in words, empty if there was none
    became      text        NOT NULL                            -- the new value in words
);
CREATE INDEX site_step_by_site ON site_step (site_id, happened_at, position);
