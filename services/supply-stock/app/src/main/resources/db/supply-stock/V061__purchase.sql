-- What was ordered, and what of it has come.
CREATE TABLE purchase (
    purchase_id varchar(40) NOT NULL PRIMARY KEY,
    supplier_id varchar(40) NOT NULL,
    depot_id    varchar(40) NOT NULL,                             -- where it should be delivered
    state       varchar(16) NOT NULL
        CHECK (state IN ('ordered', 'partly received', 'received', 'closed', 'cancelled')),
    currency    varchar(3)  NOT NULL,                             -- ISO 4217
    expected_on date        NOT NULL,
    ordered_at  timestamptz NOT NULL,
    by_person   varchar(40) NOT NULL,
    reason      text                                              -- why it was closed, cancelled or put off
);
CREATE INDEX purchase_newest ON purchase (ordered_at DESC, purchase_id DESC);
CREATE INDEX purchase_supplier ON purchase (supplier_id, purchase_id);

CREATE TABLE purchase_line (
    purchase_id    varchar(40) NOT NULL,
    line           integer     NOT NULL CHECK (line > 0),
    material       varchar(40) NOT NULL,
    kind           varchar(10) NOT NULL CHECK (kind IN ('TAPE', 'MESH', 'FASTENER')),
    unit           varchar(10) NOT NULL,                          -- METRE, YARD, FOOT, PIECE, REEL, PACK or BOX
    content        bigint      NOT NULL CHECK (content > 0),      -- of one unit: micrometres of tape and mesh, pieces of fasteners
    units          bigint      NOT NULL CHECK (units > 0),        -- order units ordered
    ordered        bigint      NOT NULL CHECK (ordered >= 0),     -- the same in millimetres or pieces
    unit_price     bigint      NOT NULL CHECK (unit_price >= 0),  -- minor units for one order unit
    quote          integer,                                       -- quote it was priced from, null: by hand
    site_id        varchar(40),                                   -- site it is meant for, if any
    grant_ref      varchar(40),                                   -- grant that is to pay, if any
    received_units bigint      NOT NULL DEFAULT 0,                -- order units counted on arrival, less those sent back
    received       bigint      NOT NULL DEFAULT 0,                -- millimetres or pieces measured on arrival, less those sent back
    remaining      bigint      NOT NULL CHECK (remaining >= 0),   -- millimetres or pieces still to come; 0 once closed or cancelled
    committed      bigint      NOT NULL CHECK (committed >= 0),   -- price of the remaining, minor units
    PRIMARY KEY (purchase_id, line)
);
CREATE INDEX purchase_line_to_come ON purchase_line (material) WHERE remaining > 0;
