-- What is where of every reel. Quantities are millimetres. The CHECK states the material law a second time:
-- what was received is at one of the places, no more and no less.
CREATE TABLE reel_balance (
    id                varchar(40)  NOT NULL PRIMARY KEY,   -- identity of the reel
    material          varchar(40),                         -- null until its receipt is in the books
    kind              varchar(10),                         -- TAPE, MESH or FASTENER; null until received
    bought            bigint       NOT NULL DEFAULT 0,      -- millimetres on the receipt
    cost_minor        bigint       NOT NULL DEFAULT 0,      -- cost of the receipt, minor units
    currency          varchar(3),                          -- ISO 4217
    received_at       timestamptz,
    received          bigint       NOT NULL,                -- millimetres from the supplier, receipt and found
    in_depot          bigint       NOT NULL,                -- millimetres
    with_crew         bigint       NOT NULL,                -- millimetres, negative: the field used more than the books knew
    on_tree           bigint       NOT NULL,                -- millimetres
    in_bag            bigint       NOT NULL,                -- millimetres
    disposed          bigint       NOT NULL,                -- millimetres
    written_off       bigint       NOT NULL,                -- millimetres
    missing           bigint       NOT NULL,                -- millimetres, negative: more came back than the books knew
    charged_minor     bigint       NOT NULL,                -- charged to sites, minor units
    written_off_minor bigint       NOT NULL,                -- written off, minor units
    last_holder       varchar(40),                         -- person who had it last
    last_moved_at     timestamptz  NOT NULL,
    position          bigint       NOT NULL,                -- last event applied
    CHECK (received = in_depot + with_crew + on_tree + in_bag + disposed + written_off + missing)
);
CREATE INDEX reel_balance_material ON reel_balance (material, id);

CREATE TABLE reel_place (
    id          varchar(40) NOT NULL,                      -- identity of the reel
    place_kind  varchar(12) NOT NULL,                      -- supplier, depot, crew, tree, bag, disposed, written-off, missing
    place_id    varchar(40) NOT NULL,                      -- identity of the place, empty for supplier and written-off
    quantity    bigint      NOT NULL,                      -- millimetres
    PRIMARY KEY (id, place_kind, place_id)
);
CREATE INDEX reel_place_there ON reel_place (place_kind, place_id) WHERE quantity <> 0;

CREATE TABLE reel_history (
    position    bigint      NOT NULL,                      -- of the event
    step        integer     NOT NULL,                      -- move within the event
    id          varchar(40) NOT NULL,
    what        varchar(40) NOT NULL,                      -- for example fitted
    note        text,                                      -- reason, fact or kit
    source      varchar(60),                               -- place
    target      varchar(60),                               -- place
    quantity    bigint      NOT NULL,                      -- millimetres
    account     varchar(60),                               -- who pays
    cost_minor  bigint      NOT NULL,                      -- minor units, negative if paid back
    by_person   varchar(40) NOT NULL,
    happened_at timestamptz NOT NULL,
    recorded_at timestamptz NOT NULL,
    PRIMARY KEY (position, step)
);
CREATE INDEX reel_history_of ON reel_history (id, position);
