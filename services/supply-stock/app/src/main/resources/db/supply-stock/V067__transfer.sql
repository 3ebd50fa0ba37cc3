-- Transfers between depots and vehicles, confirmed at both ends.
CREATE TABLE transfer (
    transfer_id varchar(40)  NOT NULL PRIMARY KEY,
    source      varchar(100) NOT NULL,           -- place in text form
    target      varchar(100) NOT NULL,           -- place in text form
    carrier     varchar(40)  NOT NULL,           -- person who carries it
    state       varchar(12)  NOT NULL CHECK (state IN ('on-its-way', 'arrived', 'called-off')),
    sent_at     timestamptz  NOT NULL,
    sent_by     varchar(40)  NOT NULL,
    ended_at    timestamptz,                     -- arrived or called off; null while on its way
    ended_by    varchar(40),
    reason      text,                            -- why it was called off
    CHECK ((state = 'on-its-way') = (ended_at IS NULL))
);
CREATE INDEX transfer_newest ON transfer (sent_at DESC, transfer_id DESC);

CREATE TABLE transfer_line (
    transfer_id varchar(40) NOT NULL,
    holding     varchar(5)  NOT NULL CHECK (holding IN ('reel', 'batch')),
    id          varchar(40) NOT NULL,            -- reel or batch
    sent        bigint      NOT NULL CHECK (sent > 0),     -- millimetres or pieces
    arrived     bigint      CHECK (arrived >= 0),          -- millimetres or pieces, null until confirmed
    PRIMARY KEY (transfer_id, holding, id)
);
