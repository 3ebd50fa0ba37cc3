-- Lots that were taken out of use, and what each recall set aside.
CREATE TABLE recall (
    recall_id   varchar(40) NOT NULL PRIMARY KEY,
    lot         varchar(60) NOT NULL,                      -- the maker's lot, upper case
    reason      text        NOT NULL,
    by_person   varchar(40) NOT NULL,
    started_at  timestamptz NOT NULL,
    lifted_at   timestamptz,                               -- null while it is open
    lifted_by   varchar(40),
    lift_reason text,
    CHECK ((lifted_at IS NULL) = (lifted_by IS NULL))
);
CREATE INDEX recall_newest ON recall (started_at DESC, recall_id DESC);
CREATE INDEX recall_open ON recall (lot) WHERE lifted_at IS NULL;

CREATE TABLE recall_aside (
    recall_id   varchar(40) NOT NULL,
    position    bigint      NOT NULL,                      -- of the event that told it
    holding     varchar(5)  NOT NULL CHECK (holding IN ('reel', 'batch')),
    id          varchar(40) NOT NULL,                      -- identity of the reel or batch
    depot_id    varchar(40) NOT NULL,
    quantity    bigint      NOT NULL CHECK (quantity > 0), -- millimetres or pieces
    PRIMARY KEY (recall_id, position, holding, id, depot_id)
);
