-- What the field services told about bands, so that cost can be put beside work done: how long a band hung, what it caught.
CREATE TABLE band_life (
    band_id       varchar(40) NOT NULL PRIMARY KEY,
    tree_id       varchar(40),                      -- null while only its end was heard of
    site_id       varchar(40),
    crew_id       varchar(40),
    person_id     varchar(40),                      -- who fitted it
    fitted_at     timestamptz,                      -- null while only its end was heard of
    taken_down_at timestamptz                       -- null while it hangs
);
CREATE INDEX band_life_of_site ON band_life (site_id, fitted_at);

CREATE TABLE band_catch (
    visit_id    varchar(40) NOT NULL PRIMARY KEY,   -- a visit that was read and counted
    band_id     varchar(40) NOT NULL,
    site_id     varchar(40),                        -- as inspections knew it; null where it did not, then the band's site counts
    visited_at  timestamptz NOT NULL,
    insects     bigint      NOT NULL CHECK (insects >= 0),  -- animals of all stages, egg masses left out
    lower_bound boolean     NOT NULL                -- the band was too full to catch on: at least so many
);
CREATE INDEX band_catch_of_time ON band_catch (visited_at);
CREATE INDEX band_catch_of_band ON band_catch (band_id);
