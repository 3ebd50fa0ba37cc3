-- Who carried out what together. What is still out follows from reel_place and batch_place.
CREATE TABLE kit (
    kit_id        varchar(40) NOT NULL PRIMARY KEY,
    depot_id      varchar(40) NOT NULL,
    crew_id       varchar(40) NOT NULL,
    person_id     varchar(40) NOT NULL,                    -- who has custody
    handed_out_at timestamptz NOT NULL,
    by_person     varchar(40) NOT NULL                     -- who handed it out
);
CREATE INDEX kit_newest ON kit (handed_out_at DESC, kit_id DESC);

CREATE TABLE kit_line (
    kit_id   varchar(40) NOT NULL,
    id       varchar(40) NOT NULL,                         -- reel or batch
    material varchar(40) NOT NULL,
    kind     varchar(10) NOT NULL,                         -- TAPE, MESH or FASTENER
    quantity bigint      NOT NULL CHECK (quantity > 0),    -- millimetres of a reel, pieces of a batch
    PRIMARY KEY (kit_id, id)
);
