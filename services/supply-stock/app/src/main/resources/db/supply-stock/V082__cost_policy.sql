-- How fasteners are valued, year by year. The last row of a year holds, until a later year begins another.
CREATE TABLE cost_policy (
    position  bigint      NOT NULL PRIMARY KEY,         -- of the stored event
    year      integer     NOT NULL,                     -- calendar year of UTC in which it begins
    method    varchar(20) NOT NULL CHECK (method IN ('OLDEST_FIRST', 'MOVING_AVERAGE')),
    reason    text        NOT NULL,
    by_person varchar(40) NOT NULL,
    set_at    timestamptz NOT NULL
);

-- The same as the ledger knows it, at the ledger's own position.
CREATE TABLE ledger_method (
    year   integer     NOT NULL PRIMARY KEY,
    method varchar(20) NOT NULL CHECK (method IN ('OLDEST_FIRST', 'MOVING_AVERAGE'))
);

COMMENT ON COLUMN ledger_line.account IS
    'site:<site>, written-off or written-down; what went into strips stays value at slit:';
