-- What is reserved for which kit now. A hold whose time is over counts no longer, even while its row stands.
CREATE TABLE hold (
    held     varchar(46) NOT NULL,                         -- reel:<ReelId> or batch:<BatchId>
    kit_id   varchar(40) NOT NULL,
    quantity bigint      NOT NULL CHECK (quantity > 0),    -- millimetres of a reel, pieces of a batch
    until    timestamptz NOT NULL,                         -- lapses at this moment
    PRIMARY KEY (held, kit_id)
);
CREATE INDEX hold_of_kit ON hold (kit_id);
