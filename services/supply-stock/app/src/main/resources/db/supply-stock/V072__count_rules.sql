-- How stock is counted. Rows are never changed; the newest holds.
CREATE TABLE count_rules (
    position                 bigint      NOT NULL PRIMARY KEY,                              -- of the event that set it
    tolerance_mm             bigint      NOT NULL CHECK (tolerance_mm >= 0),                -- millimetres
    tolerance_pieces         bigint      NOT NULL CHECK (tolerance_pieces >= 0),            -- pieces
    tolerance_permille       integer     NOT NULL CHECK (tolerance_permille BETWEEN 0 AND 1000), -- of the book figure
    second_person_from_minor bigint      NOT NULL CHECK (second_person_from_minor >= 0),    -- minor units of the stock's currency
    basis                    varchar(10) NOT NULL CHECK (basis IN ('USED', 'LYING')),
    share_a                  integer     NOT NULL CHECK (share_a BETWEEN 1 AND 1000),       -- per mille of the value
    share_b                  integer     NOT NULL CHECK (share_b BETWEEN share_a AND 1000), -- per mille, A's included
    days_a                   integer     NOT NULL CHECK (days_a > 0),                       -- days between two counts
    days_b                   integer     NOT NULL CHECK (days_b >= days_a),                 -- days
    days_c                   integer     NOT NULL CHECK (days_c >= days_b),                 -- days
    source                   text        NOT NULL,
    reason                   text        NOT NULL,
    by_person                varchar(40) NOT NULL,
    set_at                   timestamptz NOT NULL
);

-- Holds until somebody sets rules. One row, the same units.
CREATE TABLE count_rules_default (
    tolerance_mm             bigint      NOT NULL,  -- millimetres
    tolerance_pieces         bigint      NOT NULL,  -- pieces
    tolerance_permille       integer     NOT NULL,  -- of the book figure
    second_person_from_minor bigint      NOT NULL,  -- minor units of the stock's currency
    basis                    varchar(10) NOT NULL,
    share_a                  integer     NOT NULL,  -- per mille of the value
    share_b                  integer     NOT NULL,  -- per mille, A's included
    days_a                   integer     NOT NULL,  -- days between two counts
    days_b                   integer     NOT NULL,  -- days
    days_c                   integer     NOT NULL,  -- days
    source                   text        NOT NULL,
    reason                   text        NOT NULL
);
INSERT INTO count_rules_default VALUES (100, 5, 5, 5000, 'USED', 800, 950, 30, 91, 365, 'common practice, no source',
    'a few items make up most of the value, so they are counted each month, the next each quarter, the rest once a year');
