-- Who the programme buys from, and at what quoted prices.
CREATE TABLE supplier (
    supplier_id varchar(40) NOT NULL PRIMARY KEY,
    name        text        NOT NULL
);

-- One quote: one item in one order unit for a span of days.
CREATE TABLE supplier_quote (
    supplier_id    varchar(40) NOT NULL,
    quote          integer     NOT NULL CHECK (quote > 0),        -- 1, 2, 3 ... with this supplier
    material       varchar(40) NOT NULL,
    kind           varchar(10) NOT NULL CHECK (kind IN ('TAPE', 'MESH', 'FASTENER')),
    unit           varchar(10) NOT NULL,                          -- METRE, YARD, FOOT, PIECE, REEL, PACK or BOX
    content        bigint      NOT NULL CHECK (content > 0),      -- of one unit: micrometres of tape and mesh, pieces of fasteners
    pack_units     bigint      NOT NULL CHECK (pack_units > 0),   -- order units; only multiples are sold
    minimum_units  bigint      NOT NULL CHECK (minimum_units > 0),-- order units
    lead_time_days integer     NOT NULL CHECK (lead_time_days >= 0),
    valid_from     date        NOT NULL,
    valid_until    date        CHECK (valid_until >= valid_from), -- last day, null: until further notice
    currency       varchar(3)  NOT NULL,                          -- ISO 4217
    reference      text        NOT NULL,                          -- the supplier's own number, may be empty
    withdrawn      boolean     NOT NULL DEFAULT false,
    PRIMARY KEY (supplier_id, quote)
);
CREATE INDEX supplier_quote_material ON supplier_quote (material, supplier_id, quote);

CREATE TABLE supplier_price_break (
    supplier_id varchar(40) NOT NULL,
    quote       integer     NOT NULL,
    from_units  bigint      NOT NULL CHECK (from_units > 0),      -- order units from which the price holds
    unit_price  bigint      NOT NULL CHECK (unit_price > 0),      -- minor units for one order unit
    PRIMARY KEY (supplier_id, quote, from_units)
);
