-- Reels heard of from supply-stock. Written with the inbox, never from our own events; the ledger is there, not here.
CREATE TABLE known_reel (
    reel_id       varchar(40) NOT NULL PRIMARY KEY,
    material_code varchar(40) NOT NULL,
    kind          varchar(10) NOT NULL CHECK (kind IN ('TAPE', 'MESH', 'FASTENER')),
    width_mm      bigint      NOT NULL CHECK (width_mm >= 0),  -- 0 if not told
    opening_mm    bigint      CHECK (opening_mm > 0)           -- widest gap of a mesh, null if not told
);
