-- Wide reels cut into narrow ones. All lengths and widths in millimetres. That area in = area out is the widths' sum:
-- every strip is as long as the length that was slit.
CREATE TABLE slitting (
    slitting_id varchar(40) NOT NULL PRIMARY KEY,
    reel_id     varchar(40) NOT NULL,            -- the wide reel
    material    varchar(40) NOT NULL,
    length_mm   bigint      NOT NULL CHECK (length_mm > 0),
    width_mm    bigint      NOT NULL CHECK (width_mm > 0),
    trim_mm     bigint      NOT NULL CHECK (trim_mm >= 0),  -- width of the edge thrown away
    slit_at     timestamptz NOT NULL,
    by_person   varchar(40) NOT NULL
);
CREATE INDEX slitting_newest ON slitting (slit_at DESC, slitting_id DESC);
CREATE INDEX slitting_of_reel ON slitting (reel_id);

CREATE TABLE slitting_strip (
    slitting_id varchar(40) NOT NULL,
    strip       integer     NOT NULL,            -- 1, 2, 3 ... across the wide reel
    reel_id     varchar(40) NOT NULL UNIQUE,     -- the narrow reel
    material    varchar(40) NOT NULL,
    width_mm    bigint      NOT NULL CHECK (width_mm > 0),
    PRIMARY KEY (slitting_id, strip)
);
