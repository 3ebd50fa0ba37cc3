-- Sums that are kept page by page, so that the audit and the balances by place need not read millions of rows: what
-- moved along each stretch and what each account paid (from the moves), what the balances add up to (read back from the
-- balances), and what is at each place.
CREATE TABLE reel_flow (
    kind      varchar(10) NOT NULL,                        -- TAPE, MESH or UNKNOWN until received
    source    varchar(12) NOT NULL,                        -- kind of place
    target    varchar(12) NOT NULL,                        -- kind of place
    moves     bigint      NOT NULL,                        -- how many
    quantity  bigint      NOT NULL,                        -- millimetres
    PRIMARY KEY (kind, source, target)
);

CREATE TABLE reel_paid (
    currency   varchar(3)  NOT NULL,                       -- ISO 4217, empty until received
    account    varchar(12) NOT NULL,                       -- site, written-off, written-down or slit
    charges    bigint      NOT NULL,                       -- how many
    cost_minor bigint      NOT NULL,                       -- minor units
    PRIMARY KEY (currency, account)
);

CREATE TABLE reel_sum (
    kind               varchar(10) NOT NULL,               -- TAPE, MESH or UNKNOWN until received
    currency           varchar(3)  NOT NULL,               -- ISO 4217, empty until received
    holdings           bigint      NOT NULL,               -- how many reels
    received           bigint      NOT NULL,               -- millimetres, as all that follow down to missing
    set_aside          bigint      NOT NULL,
    in_depot           bigint      NOT NULL,
    in_transit         bigint      NOT NULL,
    in_vehicle         bigint      NOT NULL,
    with_crew          bigint      NOT NULL,
    on_tree            bigint      NOT NULL,
    in_bag             bigint      NOT NULL,
    disposed           bigint      NOT NULL,
    slit               bigint      NOT NULL,
    written_off        bigint      NOT NULL,
    missing            bigint      NOT NULL,
    cost_minor         bigint      NOT NULL,               -- minor units, as all that follow
    charged_minor      bigint      NOT NULL,
    written_off_minor  bigint      NOT NULL,
    written_down_minor bigint      NOT NULL,
    slit_minor         bigint      NOT NULL,
    PRIMARY KEY (kind, currency)
);

CREATE TABLE reel_at_place (
    place     varchar(100) COLLATE "C" NOT NULL,           -- text form, for example depot:NORTH/A-03
    kind      varchar(10)  NOT NULL,                       -- TAPE, MESH or UNKNOWN until received
    quantity  bigint       NOT NULL,                       -- millimetres
    PRIMARY KEY (place, kind)
);
CREATE INDEX reel_at_place_there ON reel_at_place (place, kind) INCLUDE (quantity) WHERE quantity <> 0;

CREATE TABLE batch_flow (
    kind      varchar(10) NOT NULL,                        -- FASTENER or UNKNOWN until received
    source    varchar(12) NOT NULL,                        -- kind of place
    target    varchar(12) NOT NULL,                        -- kind of place
    moves     bigint      NOT NULL,                        -- how many
    quantity  bigint      NOT NULL,                        -- pieces
    PRIMARY KEY (kind, source, target)
);

CREATE TABLE batch_paid (
    currency   varchar(3)  NOT NULL,                       -- ISO 4217, empty until received
    account    varchar(12) NOT NULL,                       -- site, written-off, written-down or slit
    charges    bigint      NOT NULL,                       -- how many
    cost_minor bigint      NOT NULL,                       -- minor units
    PRIMARY KEY (currency, account)
);

CREATE TABLE batch_sum (
    kind               varchar(10) NOT NULL,               -- FASTENER or UNKNOWN until received
    currency           varchar(3)  NOT NULL,               -- ISO 4217, empty until received
    holdings           bigint      NOT NULL,               -- how many batches
    received           bigint      NOT NULL,               -- pieces, as all that follow down to missing
    set_aside          bigint      NOT NULL,
    in_depot           bigint      NOT NULL,
    in_transit         bigint      NOT NULL,
    in_vehicle         bigint      NOT NULL,
    with_crew          bigint      NOT NULL,
    on_tree            bigint      NOT NULL,
    in_bag             bigint      NOT NULL,
    disposed           bigint      NOT NULL,
    slit               bigint      NOT NULL,
    written_off        bigint      NOT NULL,
    missing            bigint      NOT NULL,
    cost_minor         bigint      NOT NULL,               -- minor units, as all that follow
    charged_minor      bigint      NOT NULL,
    written_off_minor  bigint      NOT NULL,
    written_down_minor bigint      NOT NULL,
    slit_minor         bigint      NOT NULL,
    PRIMARY KEY (kind, currency)
);

CREATE TABLE batch_at_place (
    place     varchar(100) COLLATE "C" NOT NULL,           -- text form, for example depot:NORTH/A-03
    kind      varchar(10)  NOT NULL,                       -- FASTENER or UNKNOWN until received
    quantity  bigint       NOT NULL,                       -- pieces
    PRIMARY KEY (place, kind)
);
CREATE INDEX batch_at_place_there ON batch_at_place (place, kind) INCLUDE (quantity) WHERE quantity <> 0;

-- What is in the tables already is added up once.
INSERT INTO reel_flow
    SELECT coalesce(b.kind, 'UNKNOWN'), split_part(h.source, ':', 1), split_part(h.target, ':', 1), count(*), sum(h.quantity)
    FROM reel_history h JOIN reel_balance b ON b.id = h.id WHERE h.source IS NOT NULL GROUP BY 1, 2, 3;
INSERT INTO reel_paid
    SELECT coalesce(b.currency, ''), split_part(h.account, ':', 1), count(*), sum(h.cost_minor)
    FROM reel_history h JOIN reel_balance b ON b.id = h.id WHERE h.account IS NOT NULL GROUP BY 1, 2;
INSERT INTO reel_sum
    SELECT coalesce(kind, 'UNKNOWN'), coalesce(currency, ''), count(*), sum(received), sum(set_aside), sum(in_depot),
           sum(in_transit), sum(in_vehicle), sum(with_crew), sum(on_tree), sum(in_bag), sum(disposed), sum(slit),
           sum(written_off), sum(missing), sum(cost_minor), sum(charged_minor), sum(written_off_minor),
           sum(written_down_minor), sum(slit_minor)
    FROM reel_balance GROUP BY 1, 2;
INSERT INTO reel_at_place
    SELECT p.place_kind || ':' || p.place_id, coalesce(b.kind, 'UNKNOWN'), sum(p.quantity)
    FROM reel_place p JOIN reel_balance b ON b.id = p.id GROUP BY 1, 2;

INSERT INTO batch_flow
    SELECT coalesce(b.kind, 'UNKNOWN'), split_part(h.source, ':', 1), split_part(h.target, ':', 1), count(*), sum(h.quantity)
    FROM batch_history h JOIN batch_balance b ON b.id = h.id WHERE h.source IS NOT NULL GROUP BY 1, 2, 3;
INSERT INTO batch_paid
    SELECT coalesce(b.currency, ''), split_part(h.account, ':', 1), count(*), sum(h.cost_minor)
    FROM batch_history h JOIN batch_balance b ON b.id = h.id WHERE h.account IS NOT NULL GROUP BY 1, 2;
INSERT INTO batch_sum
    SELECT coalesce(kind, 'UNKNOWN'), coalesce(currency, ''), count(*), sum(received), sum(set_aside), sum(in_depot),
           sum(in_transit), sum(in_vehicle), sum(with_crew), sum(on_tree), sum(in_bag), sum(disposed), sum(slit),
           sum(written_off), sum(missing), sum(cost_minor), sum(charged_minor), sum(written_off_minor),
           sum(written_down_minor), sum(slit_minor)
    FROM batch_balance GROUP BY 1, 2;
INSERT INTO batch_at_place
    SELECT p.place_kind || ':' || p.place_id, coalesce(b.kind, 'UNKNOWN'), sum(p.quantity)
    FROM batch_place p JOIN batch_balance b ON b.id = p.id GROUP BY 1, 2;
