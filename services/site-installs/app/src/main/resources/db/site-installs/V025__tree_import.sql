-- Previews of inventory files: what was shown and may be stored.
CREATE TABLE tree_import (
    import_id     varchar(40) NOT NULL PRIMARY KEY,      -- made of the content of file and mapping
    previewed_by  varchar(40) NOT NULL,
    previewed_at  timestamptz NOT NULL,
    row_count     integer     NOT NULL,                  -- rows below the header that are not blank
    selected      integer     NOT NULL,                  -- rows that meet the conditions
    ready         integer     NOT NULL,                  -- rows that can be stored
    stored        integer,                               -- trees stored, null before
    CHECK (ready <= selected AND selected <= row_count)
);

-- The rows that can be stored, exactly as shown.
CREATE TABLE tree_import_row (
    import_id     varchar(40) NOT NULL REFERENCES tree_import ON DELETE CASCADE,
    row           integer     NOT NULL,                  -- as a spreadsheet numbers it
    tree_id       varchar(40) NOT NULL,
    site_id       varchar(40) NOT NULL,
    tag           varchar(40) NOT NULL,
    species       text        NOT NULL,
    girth_text    text        NOT NULL,                  -- as written, with its unit
    girth_basis   varchar(10) NOT NULL CHECK (girth_basis IN ('GIRTH', 'DIAMETER')),
    measured_on   date,
    PRIMARY KEY (import_id, row)
);

-- How far a storing import is; written beside its transaction so that people can watch it.
CREATE TABLE tree_import_progress (
    import_id     varchar(40) NOT NULL PRIMARY KEY,
    done          integer     NOT NULL,
    total         integer     NOT NULL,
    seen_at       timestamptz NOT NULL
);
