-- What is where of every batch. Quantities are pieces. The CHECK states the material law a second time:
-- what was received is at one of the places, no more and no less.
CREATE TABLE batch_balance (
    id                varchar(40)  NOT NULL PRIMARY KEY,   -- identity of the batch
    material          varchar(40),                         -- null until its receipt is in the books
    kind              varchar(10),                         -- TAPE, MESH or FASTENER; null until received
    bought            bigint       NOT NULL DEFAULT 0,      -- pieces on the receipt
    cost_minor        bigint       NOT NULL DEFAULT 0,      -- cost of the receipt, minor units
    currency          varchar(3),                          -- ISO 4217
    received_at       timestamptz,
    received          bigint       NOT NULL,                -- pieces from the supplier, receipt and found
    in_depot          bigint       NOT NULL,                -- pieces
    with_crew         bigint       NOT NULL,                -- pieces, negative: the field used more than the books knew
    on_tree           bigint       NOT NULL,                -- pieces
    in_bag            bigint       NOT NULL,                -- pieces
    disposed          bigint       NOT NULL,                -- pieces
    written_off       bigint       NOT NULL,                -- pieces
    missing           bigint       NOT NULL,                -- pieces, negative: more came back than the books knew
    charged_minor     bigint       NOT NULL,                -- charged to sites, minor units
    written_off_minor bigint       NOT NULL,                -- written off, minor units
    last_holder       varchar(40),                         -- person who had it last
    last_moved_at     timestamptz  NOT NULL,
    position          bigint       NOT NULL,                -- last event applied
    CHECK (received = in_depot + with_crew + on_tree + in_bag + disposed + written_off + missing)
);
CREATE INDEX batch_balance_material ON batch_balance (material, id);

CREATE TABLE batch_place (
    id          varchar(40) NOT NULL,                      -- identity of the batch
    place_kind  varchar(12) NOT NULL,                      -- supplier, depot, crew, tree, bag, disposed, written-off, missing
    place_id    varchar(40) NOT NULL,                      -- identity of the place, empty for supplier and written-off
    quantity    bigint      NOT NULL,                      -- pieces
    PRIMARY KEY (id, place_kind, place_id)
);
CREATE INDEX batch_place_there ON batch_place (place_kind, place_id) WHERE quantity <> 0;

CREATE TABLE batch_history (
    position    bigint      NOT NULL,                      -- of the event
    step        integer     NOT NULL,                      -- move within the event
    id          varchar(40) NOT NULL,
    what        varchar(40) NOT NULL,                      -- for example fitted
    note        text,                                      -- reason, fact or kit
    source      varchar(60),                               -- place
    target      varchar(60),                               -- place
    quantity    bigint      NOT NULL,                      -- pieces
    account     varchar(60),                               -- who pays
    cost_minor  bigint      NOT NULL,                      -- minor units, negative if paid back
    by_person   varchar(40) NOT NULL,
    happened_at timestamptz NOT NULL,
    recorded_at timestamptz NOT NULL,
    PRIMARY KEY (position, step)
);
CREATE INDEX batch_history_of ON batch_history (id, position);
