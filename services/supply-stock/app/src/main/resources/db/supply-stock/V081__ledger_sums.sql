-- Sums of the ledger, kept with every page. Places in the field and what is disposed are summed by kind ('tree:',
-- 'bag:', 'disposed:', 'slit:'); every other place stands for itself. '' stands where nothing is known or named.
CREATE TABLE ledger_trial (
    period            varchar(7)  NOT NULL,             -- month the lines post to
    material          varchar(40) NOT NULL,
    kind              varchar(10) NOT NULL,
    currency          varchar(3)  NOT NULL,
    place             varchar(92) NOT NULL,
    in_quantity       bigint      NOT NULL CHECK (in_quantity >= 0),   -- millimetres or pieces
    in_minor          bigint      NOT NULL,
    out_quantity      bigint      NOT NULL CHECK (out_quantity >= 0),
    out_minor         bigint      NOT NULL,
    adjusted_quantity bigint      NOT NULL,             -- in less out of lines that adjust
    adjusted_minor    bigint      NOT NULL,
    PRIMARY KEY (period, material, currency, place)
);

-- What accounts paid: the source of the spend.
CREATE TABLE ledger_account (
    period    varchar(7)  NOT NULL,
    account   varchar(60) NOT NULL,                     -- site:<site>, written-off or written-down
    site_id   varchar(40) NOT NULL,
    tree_id   varchar(40) NOT NULL,
    material  varchar(40) NOT NULL,
    kind      varchar(10) NOT NULL,                     -- TAPE, MESH, FASTENER, or '' until received
    currency  varchar(3)  NOT NULL,
    what      varchar(40) NOT NULL,                     -- fitted, scrapped, written off, invoice difference ...
    person_id varchar(40) NOT NULL,
    quantity  bigint      NOT NULL,                     -- millimetres or pieces; negative if more came back than went
    minor     bigint      NOT NULL,                     -- minor units; negative if more was paid back than paid
    PRIMARY KEY (period, account, tree_id, material, currency, what, person_id)
);
CREATE INDEX ledger_account_of_site ON ledger_account (account, period);

-- Sums of one day as it happened and one day as it was recorded, for reading any past moment.
CREATE TABLE ledger_day (
    side         varchar(7)  NOT NULL CHECK (side IN ('place', 'account')),
    slot         varchar(92) NOT NULL,                  -- the place or the account
    material     varchar(40) NOT NULL,
    kind         varchar(10) NOT NULL,
    currency     varchar(3)  NOT NULL,
    happened_day date        NOT NULL,
    recorded_day date        NOT NULL,
    quantity     bigint      NOT NULL,                  -- millimetres or pieces that came less those that went
    minor        bigint      NOT NULL,                  -- value that came less what went
    PRIMARY KEY (side, slot, material, currency, happened_day, recorded_day)
);
