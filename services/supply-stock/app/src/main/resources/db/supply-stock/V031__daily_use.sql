-- What was used per day, and which depot stood behind it. Quantities are millimetres of a reel, pieces of a batch.
-- Days are UTC days. All four tables belong to one projection, so that they are always at the same position.
CREATE TABLE use_holding (
    holding     varchar(5)  NOT NULL CHECK (holding IN ('reel', 'batch')),
    id          varchar(40) NOT NULL,              -- identity of the reel or batch
    material    varchar(40) NOT NULL,              -- what is on it, from its receipt
    kind        varchar(10) NOT NULL,              -- TAPE, MESH or FASTENER
    PRIMARY KEY (holding, id)
);

CREATE TABLE use_depot (
    holding     varchar(5)  NOT NULL,
    id          varchar(40) NOT NULL,
    day         date        NOT NULL,              -- on which the depot received it or handed it out
    depot_id    varchar(40) NOT NULL,
    handed_out  boolean     NOT NULL,              -- false if it was only received that day
    PRIMARY KEY (holding, id, day, depot_id)
);

CREATE TABLE use_of_day (
    holding     varchar(5)  NOT NULL,
    id          varchar(40) NOT NULL,
    day         date        NOT NULL,              -- on which it was fitted or spoilt
    quantity    bigint      NOT NULL CHECK (quantity > 0),
    PRIMARY KEY (holding, id, day)
);
CREATE INDEX use_of_day_by_day ON use_of_day (day);

CREATE TABLE use_stock (
    holding     varchar(5)  NOT NULL,
    id          varchar(40) NOT NULL,
    depot_id    varchar(40) NOT NULL,
    quantity    bigint      NOT NULL,              -- in the depot now
    PRIMARY KEY (holding, id, depot_id)
);
