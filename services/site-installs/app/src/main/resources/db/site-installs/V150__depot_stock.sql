-- What lies in the depots, heard from supply-stock and written with the inbox. A copy to plan with; the ledger is there.
CREATE TABLE depot_holding (
    holding       varchar(10)  NOT NULL CHECK (holding IN ('reel', 'batch')),
    id            varchar(40)  NOT NULL,
    material_code varchar(40),                                  -- null while only its moves were heard of
    kind          varchar(10)  CHECK (kind IN ('TAPE', 'MESH', 'FASTENER')),
    received      bigint       CHECK (received > 0),            -- millimetres of a reel, pieces of a batch
    received_at   timestamptz,
    cost_minor    bigint,                                       -- of all of it on receipt, smallest unit of the currency
    currency      varchar(3),                                   -- ISO 4217
    lot           varchar(120),
    expires_on    date,                                         -- last day the adhesive is good for, null if not told
    PRIMARY KEY (holding, id)
);
CREATE INDEX depot_holding_of_material ON depot_holding (material_code);

CREATE TABLE depot_place (
    holding   varchar(10) NOT NULL CHECK (holding IN ('reel', 'batch')),
    id        varchar(40) NOT NULL,
    depot_id  varchar(40) NOT NULL,
    bin       varchar(40) NOT NULL,                             -- empty if it lies loose or is set aside
    set_aside boolean     NOT NULL,                             -- there, but not to be used
    quantity  bigint      NOT NULL CHECK (quantity <> 0),       -- mm or pieces; below 0 if more was taken than was there
    PRIMARY KEY (holding, id, depot_id, bin, set_aside)
);
CREATE INDEX depot_place_of_depot ON depot_place (depot_id);

CREATE TABLE depot_reservation (
    holding  varchar(10) NOT NULL CHECK (holding IN ('reel', 'batch')),
    id       varchar(40) NOT NULL,
    kit_id   varchar(40) NOT NULL,
    quantity bigint      NOT NULL CHECK (quantity >= 0),        -- mm or pieces, 0 once it is free again
    until    timestamptz,                                       -- lapses at this moment
    sequence bigint      NOT NULL,                              -- of the word that counts; older words change nothing
    PRIMARY KEY (holding, id, kit_id),
    CHECK ((quantity = 0) OR (until IS NOT NULL))
);
