-- Bands as inspections knows them, from its own events. Rows are only added or brought to a later time, so a page of
-- events applied twice changes nothing.

CREATE TABLE watched_band (
    band_id        varchar(40)  NOT NULL PRIMARY KEY,
    tree_id        varchar(40),                 -- null while no fitting is known
    site_id        varchar(40),                 -- null while no fitting is known
    fitted_at      timestamptz,                 -- latest fitting; null while none is known
    down_at        timestamptz,                 -- latest teardown; the band is down if this is not before fitted_at
    CHECK ((tree_id IS NULL) = (site_id IS NULL) AND (tree_id IS NULL) = (fitted_at IS NULL))
);
CREATE INDEX watched_band_site ON watched_band (site_id, band_id);

CREATE TABLE band_visit (
    band_id            varchar(40)  NOT NULL,
    visit_id           varchar(40)  NOT NULL,
    crew_id            varchar(40),
    person_id          varchar(40)  NOT NULL,   -- who looked
    told_by            varchar(40)  NOT NULL,   -- who was signed in
    answer             varchar(12)  NOT NULL CHECK (answer IN ('READ', 'NOT_FOUND', 'NOT_READ', 'BAND_MISSING')),
    saturation_percent integer      CHECK (saturation_percent BETWEEN 0 AND 100), -- null: not judged
    lower_bound        boolean      NOT NULL,   -- the band was full: the true catch is at least the count
    catches            jsonb        NOT NULL,   -- insects by life stage
    catch_total        bigint       NOT NULL CHECK (catch_total >= 0), -- insects, all stages
    guard              varchar(10)  CHECK (guard IN ('SOUND', 'TOUCHING', 'GAP', 'MISSING')), -- null: not looked at
    bycatch            jsonb,                   -- the record of another animal; null: question not answered
    bycatch_seen       boolean      NOT NULL,
    bycatch_open       boolean      NOT NULL,   -- as told on the visit; an outcome told later closes it
    flags              varchar(30)[] NOT NULL,
    happened_at        timestamptz  NOT NULL,
    recorded_at        timestamptz  NOT NULL,
    PRIMARY KEY (band_id, visit_id)
);
CREATE INDEX band_visit_by_time ON band_visit (band_id, happened_at DESC);
CREATE INDEX band_visit_bycatch ON band_visit (happened_at DESC, band_id, visit_id) WHERE bycatch_seen;

CREATE TABLE bycatch_outcome (
    band_id      varchar(40)   NOT NULL,
    visit_id     varchar(40)   NOT NULL,        -- which may not be known yet
    outcome      varchar(400)  NOT NULL,
    handed_to    varchar(80),                   -- code or licence number, never a name
    handed_at    timestamptz,
    told_by      varchar(40)   NOT NULL,
    recorded_at  timestamptz   NOT NULL,
    PRIMARY KEY (band_id, visit_id)
);

-- Which kinds of material a fact renewed or took off, one row per fact and kind.
CREATE TABLE band_renewal (
    band_id      varchar(40)   NOT NULL,
    fact_id      varchar(40)   NOT NULL,        -- visit
    kind         varchar(8)    NOT NULL CHECK (kind IN ('TAPE', 'MESH', 'FASTENER')),
    happened_at  timestamptz   NOT NULL,
    PRIMARY KEY (band_id, fact_id, kind)
);

CREATE TABLE band_move (
    event_id     uuid          NOT NULL,
    line         integer       NOT NULL,        -- 0, 1, 2 ... within the event
    band_id      varchar(40)   NOT NULL,
    fact_id      varchar(200)  NOT NULL,        -- the fitting, visit or teardown it belongs to
    kind         varchar(8)    NOT NULL CHECK (kind IN ('TAPE', 'MESH', 'FASTENER')),
    material_id  varchar(40)   NOT NULL,        -- reel or batch
    quantity     bigint        NOT NULL CHECK (quantity > 0), -- millimetres of tape and mesh, pieces of fasteners
    source       varchar(60)   NOT NULL,        -- crew:, tree:, bag:
    target       varchar(60)   NOT NULL CHECK (target <> source),
    happened_at  timestamptz   NOT NULL,
    recorded_at  timestamptz   NOT NULL,
    PRIMARY KEY (event_id, line)
);
CREATE INDEX band_move_by_band ON band_move (band_id);
