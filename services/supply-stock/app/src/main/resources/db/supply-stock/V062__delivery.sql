-- What arrived, counted and measured.
CREATE TABLE delivery (
    delivery_id   varchar(40) NOT NULL PRIMARY KEY,
    supplier_id   varchar(40) NOT NULL,
    purchase_id   varchar(40),                                    -- null: it came without an order
    depot_id      varchar(40) NOT NULL,
    delivery_note text        NOT NULL,                           -- the supplier's paper, may be empty
    delivered_at  timestamptz NOT NULL,
    by_person     varchar(40) NOT NULL                            -- who received it
);
CREATE INDEX delivery_newest ON delivery (delivered_at DESC, delivery_id DESC);
CREATE INDEX delivery_purchase ON delivery (purchase_id);

CREATE TABLE delivery_line (
    delivery_id   varchar(40) NOT NULL,
    line          integer     NOT NULL CHECK (line > 0),
    purchase_line integer,                                        -- line of the order it fulfils, null: none
    material      varchar(40) NOT NULL,
    kind          varchar(10) NOT NULL CHECK (kind IN ('TAPE', 'MESH', 'FASTENER')),
    units         bigint      NOT NULL CHECK (units >= 0),        -- order units counted; 0 where the unit is a length
    quantity      bigint      NOT NULL CHECK (quantity > 0),      -- millimetres measured or pieces counted
    cost_minor    bigint      NOT NULL CHECK (cost_minor >= 0),   -- minor units, by the order's price or as given
    currency      varchar(3)  NOT NULL,                           -- ISO 4217
    PRIMARY KEY (delivery_id, line)
);

CREATE TABLE delivery_finding (
    delivery_id varchar(40) NOT NULL,
    number      integer     NOT NULL,
    line        integer     NOT NULL,
    id          varchar(40) NOT NULL,                             -- reel or batch, empty: the whole line
    what        varchar(20) NOT NULL,                             -- SHORT, OVER, DAMAGED, WRONG_ITEM, WRONG_WIDTH, EXPIRED ...
    expected    text        NOT NULL,
    found       text        NOT NULL,
    PRIMARY KEY (delivery_id, number)
);

-- Every reel and batch with what its label says: others look up lot and expiry here.
CREATE TABLE delivered_holding (
    holding       varchar(5)  NOT NULL CHECK (holding IN ('reel', 'batch')),
    id            varchar(40) NOT NULL,
    delivery_id   varchar(40) NOT NULL,
    line          integer     NOT NULL,
    supplier_id   varchar(40) NOT NULL,
    purchase_id   varchar(40),
    purchase_line integer,
    depot_id      varchar(40) NOT NULL,
    material      varchar(40) NOT NULL,
    kind          varchar(10) NOT NULL,
    quantity      bigint      NOT NULL CHECK (quantity > 0),      -- millimetres or pieces on arrival
    width_mm      bigint      CHECK (width_mm > 0),               -- as measured, null for fasteners or if nobody measured
    lot           varchar(60),                                    -- the maker's lot, upper case, null: none stated
    expires_on    date,                                           -- last day the adhesive is good for, null: none stated
    condition     varchar(20) NOT NULL CHECK (condition IN ('SOUND', 'WRAPPING_TORN', 'DAMAGED')),
    state         varchar(10) NOT NULL CHECK (state IN ('set aside', 'accepted', 'sent back')),
    cost_minor    bigint      NOT NULL CHECK (cost_minor >= 0),   -- minor units
    currency      varchar(3)  NOT NULL,                           -- ISO 4217
    delivered_on  date        NOT NULL,                           -- UTC day
    PRIMARY KEY (holding, id)
);
CREATE INDEX delivered_holding_lot ON delivered_holding (lot, holding, id);
CREATE INDEX delivered_holding_delivery ON delivered_holding (delivery_id);
CREATE INDEX delivered_holding_supplier ON delivered_holding (supplier_id, id);
