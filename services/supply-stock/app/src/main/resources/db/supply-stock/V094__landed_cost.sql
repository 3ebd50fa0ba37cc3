-- Freight and duty, spread over reels and batches.
CREATE TABLE landed_cost (
    landed_cost_id     varchar(40) NOT NULL PRIMARY KEY,
    what               varchar(10) NOT NULL CHECK (what IN ('FREIGHT', 'DUTY')),
    amount_minor       bigint      NOT NULL CHECK (amount_minor > 0),     -- minor units
    currency           varchar(3)  NOT NULL,                              -- ISO 4217
    basis              varchar(10) NOT NULL CHECK (basis IN ('VALUE', 'LENGTH', 'COUNT')),
    deliveries         text        NOT NULL,                              -- identities, for people
    invoice_id         varchar(40),                                       -- whose charge it is
    reference          text        NOT NULL,
    by_person          varchar(40) NOT NULL,
    spread_at          timestamptz NOT NULL,
    taken_back_because text
);
CREATE INDEX landed_cost_newest ON landed_cost (spread_at DESC, landed_cost_id DESC);

CREATE TABLE landed_share (
    landed_cost_id varchar(40) NOT NULL,
    holding        varchar(5)  NOT NULL CHECK (holding IN ('reel', 'batch')),
    id             varchar(40) NOT NULL,
    delivery_id    varchar(40) NOT NULL,
    line           integer     NOT NULL,                                  -- of the delivery
    amount_minor   bigint      NOT NULL,                                  -- minor units
    PRIMARY KEY (landed_cost_id, holding, id)
);
