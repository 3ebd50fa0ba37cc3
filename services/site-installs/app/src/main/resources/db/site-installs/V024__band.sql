-- Every band as it stands. A band may be heard of from inspections before its fitting arrives; then what only the
-- fitting tells is null.
CREATE TABLE band (
    band_id         varchar(40) NOT NULL PRIMARY KEY,
    tree_id         varchar(40),
    site_id         varchar(40),
    crew_id         varchar(40),
    person_id       varchar(40),                         -- who fitted it
    state           varchar(4)  NOT NULL CHECK (state IN ('up', 'down')),
    fitted_at       timestamptz,                         -- last fitting
    taken_down_at   timestamptz,                         -- last teardown
    tape_reel       varchar(40),
    tape_mm         bigint      CHECK (tape_mm > 0),
    tape_since      timestamptz,
    mesh_reel       varchar(40),                         -- null: no guard, or not known
    mesh_mm         bigint      CHECK (mesh_mm > 0),
    mesh_since      timestamptz,
    fastener_batch  varchar(40),
    pieces          bigint      CHECK (pieces > 0),
    pieces_since    timestamptz,
    girth_mm        bigint      CHECK (girth_mm > 0),
    height_mm       bigint      CHECK (height_mm >= 0),
    must_remove_by  date,
    policy_version  integer,
    CHECK ((tape_reel IS NULL) = (tape_mm IS NULL)),
    CHECK ((mesh_reel IS NULL) = (mesh_mm IS NULL)),
    CHECK ((fastener_batch IS NULL) = (pieces IS NULL))
);
CREATE INDEX band_by_tree ON band (tree_id, state);
CREATE INDEX band_by_site ON band (site_id, band_id);

-- Everything that happened to a band.
CREATE TABLE band_step (
    position        bigint      NOT NULL PRIMARY KEY,    -- of the event in the store
    band_id         varchar(40) NOT NULL,
    what            varchar(40) NOT NULL,                -- in words
    happened_at     timestamptz NOT NULL,
    recorded_at     timestamptz NOT NULL,
    by_person       varchar(40) NOT NULL,
    note            text        NOT NULL
);
CREATE INDEX band_step_by_band ON band_step (band_id, happened_at, position);

-- What contradicted the books when a fitting arrived.
CREATE TABLE band_flag (
    position        bigint      NOT NULL,                -- of the fitting in the store
    ordinal         integer     NOT NULL,                -- order within the fitting
    band_id         varchar(40) NOT NULL,
    flag            varchar(40) NOT NULL,
    field           varchar(40) NOT NULL,
    message         text        NOT NULL,
    PRIMARY KEY (position, ordinal)
);
CREATE INDEX band_flag_by_band ON band_flag (band_id);
