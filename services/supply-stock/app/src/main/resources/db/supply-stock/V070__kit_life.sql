-- The life of each kit: reserved, released, handed out, signed. Whether it is settled stands in kit_settlement.
CREATE TABLE kit_life (
    kit_id         varchar(40) NOT NULL PRIMARY KEY,
    depot_id       varchar(40) NOT NULL,
    crew_id        varchar(40) NOT NULL,
    person_id      varchar(40) NOT NULL,                   -- who has it or is to have it
    began_at       timestamptz NOT NULL,                   -- reserved, or handed out at once
    reserved_at    timestamptz,
    reserved_by    varchar(40),
    until          timestamptz,                            -- when the reservation lapses
    released_at    timestamptz,
    release_reason text,
    handed_out_at  timestamptz,
    handed_out_by  varchar(40),
    signed_at      timestamptz,
    signed_by      varchar(40),                            -- always the person who has it
    rule           text                                    -- by which lengths followed from girths, in words
);
CREATE INDEX kit_life_newest ON kit_life (began_at DESC, kit_id DESC);
CREATE INDEX kit_life_reserved ON kit_life (began_at DESC, kit_id DESC)
    WHERE handed_out_at IS NULL AND released_at IS NULL;

CREATE TABLE kit_tree (
    kit_id    varchar(40) NOT NULL,
    step      integer     NOT NULL,                        -- in the order the crew walks, from 1
    tree_id   varchar(40) NOT NULL,
    girth_mm  bigint      CHECK (girth_mm > 0),            -- null if the list came with ready lengths
    bands     integer     NOT NULL CHECK (bands > 0),
    tape_mm   bigint      NOT NULL CHECK (tape_mm >= 0),   -- each piece
    mesh_mm   bigint      NOT NULL CHECK (mesh_mm >= 0),   -- each piece
    fasteners bigint      NOT NULL CHECK (fasteners >= 0), -- pieces for the whole tree
    PRIMARY KEY (kit_id, step)
);

CREATE TABLE kit_pick (
    kit_id   varchar(40) NOT NULL,
    step     integer     NOT NULL,                         -- in the order they were chosen, from 1
    id       varchar(40) NOT NULL,                         -- reel or batch
    material varchar(40) NOT NULL,
    kind     varchar(10) NOT NULL CHECK (kind IN ('TAPE', 'MESH', 'FASTENER')),
    place    varchar(100) NOT NULL,                        -- depot:<DepotId>/<bin> when it was chosen
    there    bigint      NOT NULL CHECK (there > 0),       -- millimetres or pieces that lay there
    quantity bigint      NOT NULL CHECK (quantity BETWEEN 1 AND there), -- millimetres or pieces the trees take
    PRIMARY KEY (kit_id, step)
);

CREATE TABLE kit_cut (
    kit_id  varchar(40) NOT NULL,
    pick    integer     NOT NULL,                          -- step of the pick
    step    integer     NOT NULL,                          -- in the order the crew walks
    tree_id varchar(40) NOT NULL,
    pieces  integer     NOT NULL CHECK (pieces > 0),
    each_mm bigint      NOT NULL CHECK (each_mm > 0),
    PRIMARY KEY (kit_id, pick, step)
);
