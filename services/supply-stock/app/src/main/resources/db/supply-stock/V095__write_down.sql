-- Stock written down to what it is still worth.
CREATE TABLE write_down (
    position     bigint      NOT NULL PRIMARY KEY,                        -- of the event
    holding      varchar(5)  NOT NULL CHECK (holding IN ('reel', 'batch')),
    id           varchar(40) NOT NULL,
    amount_minor bigint      NOT NULL CHECK (amount_minor > 0),           -- minor units
    currency     varchar(3)  NOT NULL,                                    -- ISO 4217
    reason       text        NOT NULL,
    by_person    varchar(40) NOT NULL,
    happened_at  timestamptz NOT NULL
);
CREATE INDEX write_down_holding ON write_down (holding, id);
