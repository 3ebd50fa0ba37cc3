-- Pieces of guard mesh that are used again, as they stand. The books of material know reels only.
CREATE TABLE mesh_piece (
    piece_id        varchar(40) NOT NULL PRIMARY KEY,
    reel_id         varchar(40) NOT NULL,                -- it was cut from
    length_mm       bigint      NOT NULL CHECK (length_mm > 0),
    length_since    timestamptz NOT NULL,                -- when that was measured or told
    wear            varchar(8)  CHECK (wear IN ('GOOD', 'WORN', 'SCRAP')), -- null: nobody looked yet
    wear_since      timestamptz,
    band_id         varchar(40),                         -- it hangs on, null if it is free
    place           varchar(90),                         -- who or what has it, null while it hangs
    since           timestamptz NOT NULL,                -- there
    CHECK ((band_id IS NULL) <> (place IS NULL)),
    CHECK ((wear IS NULL) = (wear_since IS NULL))
);
CREATE INDEX mesh_piece_by_band ON mesh_piece (band_id);
CREATE INDEX mesh_piece_by_place ON mesh_piece (place, piece_id);

-- Everything that happened to a piece.
CREATE TABLE mesh_piece_step (
    position        bigint      NOT NULL PRIMARY KEY,    -- of the event in the store
    piece_id        varchar(40) NOT NULL,
    what            varchar(40) NOT NULL,                -- in words
    happened_at     timestamptz NOT NULL,
    recorded_at     timestamptz NOT NULL,
    by_person       varchar(40) NOT NULL,
    band_id         varchar(40),                         -- null: about none
    note            text        NOT NULL
);
CREATE INDEX mesh_piece_step_by_piece ON mesh_piece_step (piece_id, happened_at, position);
