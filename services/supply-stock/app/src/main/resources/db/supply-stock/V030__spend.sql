-- What was spent, where. One row per reel or batch, and one per reel or batch, account and tree. Cost in minor units.
CREATE TABLE spend_holding (
    holding     varchar(5)  NOT NULL CHECK (holding IN ('reel', 'batch')),
    id          varchar(40) NOT NULL,              -- identity of the reel or batch
    material    varchar(40),                       -- null until its receipt is in the books
    kind        varchar(10),                       -- TAPE, MESH or FASTENER; null until received
    currency    varchar(3),                        -- ISO 4217; null until received
    bought      bigint      NOT NULL,              -- millimetres of a reel, pieces of a batch, 0 until received
    cost_minor  bigint      NOT NULL CHECK (cost_minor >= 0),
    used        bigint      NOT NULL,              -- millimetres or pieces that left stock, by the moves and not by the charges
    PRIMARY KEY (holding, id),
    CHECK ((currency IS NULL) = (bought = 0))
);

CREATE TABLE spend (
    holding     varchar(5)  NOT NULL,
    id          varchar(40) NOT NULL,
    account     varchar(60) NOT NULL,              -- site:<SiteId> or written-off
    tree_id     varchar(40) NOT NULL,              -- empty where no tree is named: spoilt on the job, or charged at a late receipt
    quantity    bigint      NOT NULL,              -- millimetres or pieces; negative if more came back than went
    cost_minor  bigint      NOT NULL,              -- negative if more was paid back than charged
    PRIMARY KEY (holding, id, account, tree_id)
);
CREATE INDEX spend_of_account ON spend (account, tree_id);
