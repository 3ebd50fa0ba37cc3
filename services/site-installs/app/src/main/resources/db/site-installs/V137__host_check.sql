-- Every host check that was made; the one that happened last counts.
CREATE TABLE host_check (
    position           bigint      NOT NULL PRIMARY KEY,          -- of the event in the store
    tree_id            varchar(40) NOT NULL,
    pest               varchar(7)  NOT NULL,                      -- EPPO code
    key_version        integer     NOT NULL CHECK (key_version > 0),
    outcome            varchar(10) NOT NULL CHECK (outcome IN ('HOST', 'NOT_HOST', 'UNSURE')),
    species_code       varchar(7),                                -- the kind that fits best, null if none does
    confidence_percent integer     NOT NULL CHECK (confidence_percent BETWEEN 0 AND 100),
    answers            text        NOT NULL,                      -- question=answer, parted by blanks
    by_person          varchar(40) NOT NULL,
    happened_at        timestamptz NOT NULL,
    recorded_at        timestamptz NOT NULL
);
CREATE INDEX host_check_by_tree ON host_check (tree_id, happened_at DESC, position DESC);
