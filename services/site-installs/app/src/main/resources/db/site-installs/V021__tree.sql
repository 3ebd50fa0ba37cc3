-- The register of trees, with the girth measured last.
CREATE TABLE tree (
    tree_id           varchar(40) NOT NULL PRIMARY KEY,
    site_id           varchar(40) NOT NULL,
    tag               varchar(40) NOT NULL,
    species           text        NOT NULL,                      -- empty if not known
    girth_mm          bigint      CHECK (girth_mm > 0),          -- null if never measured
    girth_measured_at timestamptz,
    registered_at     timestamptz NOT NULL,
    CHECK ((girth_mm IS NULL) = (girth_measured_at IS NULL))
);
CREATE INDEX tree_by_site ON tree (site_id, tree_id);

-- Everything that happened to a tree; a measurement is never overwritten.
CREATE TABLE tree_step (
    position          bigint      NOT NULL PRIMARY KEY,          -- of the event in the store
    tree_id           varchar(40) NOT NULL,
    what              varchar(40) NOT NULL,                      -- in words
    happened_at       timestamptz NOT NULL,
    recorded_at       timestamptz NOT NULL,
    by_person         varchar(40) NOT NULL,
    girth_mm          bigint      CHECK (girth_mm > 0),          -- null if nothing was measured
    note              text        NOT NULL                       -- as written, for example 39.5 cm diameter
);
CREATE INDEX tree_step_by_tree ON tree_step (tree_id, happened_at, position);
