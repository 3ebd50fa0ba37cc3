-- The ledger: every move and every charge with its value, and the sums that are read from it. Quantities are
-- millimetres of a reel and pieces of a batch; values are minor units of the currency. '' stands where nothing is
-- known or named. Days and months are those of UTC. All tables with the prefix ledger belong to one projection and
-- are at one position.
CREATE TABLE ledger_line (
    position         bigint      NOT NULL,              -- of the stored event
    step             integer     NOT NULL,              -- 0, 1, 2 ... within the event
    holding          varchar(5)  NOT NULL CHECK (holding IN ('reel', 'batch')),
    id               varchar(40) NOT NULL,              -- of the reel or batch
    material         varchar(40) NOT NULL,              -- item, '' until its receipt is in the books
    kind             varchar(10) NOT NULL,              -- TAPE, MESH, FASTENER, or '' until received
    currency         varchar(3)  NOT NULL,              -- ISO 4217, '' until received
    what             varchar(40) NOT NULL,              -- the trade's word, such as fitted
    adjusts          boolean     NOT NULL,              -- whether the trial shows it as an adjustment
    note             text,                              -- reason, fact or kit
    source           varchar(92),                       -- place it left; null if only an account is touched
    target           varchar(92),                       -- place it came to
    quantity         bigint      NOT NULL CHECK (quantity >= 0),  -- 0 where only value moves
    out_minor        bigint      NOT NULL,              -- value that left the source
    in_minor         bigint      NOT NULL,              -- value that came to the target
    account          varchar(60),                       -- site:<site>, written-off or written-down
    account_quantity bigint      NOT NULL,              -- mm or pieces the account used; negative if they came back
    account_minor    bigint      NOT NULL,              -- value the account paid; negative if it was paid back
    site_id          varchar(40) NOT NULL,              -- of the account, or ''
    tree_id          varchar(40) NOT NULL,              -- it went to or came from, or ''
    person_id        varchar(40) NOT NULL,              -- in whose custody it was, else who reported it
    by_person        varchar(40) NOT NULL,              -- who reported it
    happened_at      timestamptz NOT NULL,
    recorded_at      timestamptz NOT NULL,
    period           varchar(7)  NOT NULL CHECK (period ~ '^\d{4}-\d\d$'),  -- month it posts to
    PRIMARY KEY (position, step),
    CHECK (out_minor = in_minor + account_minor),
    CHECK (account IS NOT NULL OR account_quantity = 0 AND account_minor = 0)
);
CREATE INDEX ledger_line_of_holding ON ledger_line (holding, id, position, step);
CREATE INDEX ledger_line_of_period ON ledger_line (period, material, position, step);
CREATE INDEX ledger_line_happened ON ledger_line (happened_at);
CREATE INDEX ledger_line_recorded ON ledger_line (recorded_at);

-- Where the projection stands; one row.
CREATE TABLE ledger_state (
    one            boolean NOT NULL PRIMARY KEY CHECK (one),
    position       bigint  NOT NULL,                    -- last stored event that is in the ledger
    closed_through varchar(7)                           -- last closed month, null if none is
);

-- What is known of a reel or batch from its receipt.
CREATE TABLE ledger_holding (
    holding   varchar(5)  NOT NULL CHECK (holding IN ('reel', 'batch')),
    id        varchar(40) NOT NULL,
    material  varchar(40) NOT NULL,
    kind      varchar(10) NOT NULL,
    currency  varchar(3)  NOT NULL,
    origin    varchar(92) NOT NULL,                     -- supplier: or slit:<slitting>
    PRIMARY KEY (holding, id)
);

-- What is where now. Values lie on reels and on the pool of a fastener, never on a single batch.
CREATE TABLE ledger_place (
    holding     varchar(5)  NOT NULL CHECK (holding IN ('reel', 'batch', 'pool')),
    id          varchar(44) NOT NULL,                   -- reel or batch; of a pool the item, a blank and the currency
    place       varchar(92) NOT NULL,
    stock       boolean     NOT NULL,                   -- whether what is here still is stock
    quantity    bigint      NOT NULL,                   -- negative where the field was ahead of the books
    value_minor bigint      NOT NULL,
    PRIMARY KEY (holding, id, place)
);

-- A fastener's pool: layers in the order they came, and who has paid for what was used.
CREATE TABLE ledger_layer (
    material      varchar(40) NOT NULL,
    currency      varchar(3)  NOT NULL,
    seq           integer     NOT NULL,                 -- 0 is drawn first
    batch         varchar(40) NOT NULL,                 -- '' for a layer of mixed pieces
    left_quantity bigint      NOT NULL CHECK (left_quantity >= 0),  -- pieces; 0 where only value waits for pieces
    left_minor    bigint      NOT NULL,
    PRIMARY KEY (material, currency, seq)
);
CREATE TABLE ledger_payer (
    material varchar(40) NOT NULL,
    currency varchar(3)  NOT NULL,
    account  varchar(60) NOT NULL,
    quantity bigint      NOT NULL,                      -- pieces used
    minor    bigint      NOT NULL,                      -- paid
    PRIMARY KEY (material, currency, account)
);
