-- How much an invoice may differ from order and delivery. Rows are never changed; the newest holds.
CREATE TABLE tolerance (
    position                 bigint      NOT NULL PRIMARY KEY,        -- of the event that set it
    quantity_permille        bigint      NOT NULL CHECK (quantity_permille BETWEEN 0 AND 1000),
        -- of what was received
    length_mm                bigint      NOT NULL CHECK (length_mm >= 0), -- millimetres
    pieces                   bigint      NOT NULL CHECK (pieces >= 0),    -- pieces
    price_permille           bigint      NOT NULL CHECK (price_permille BETWEEN 0 AND 1000),
        -- of the amount by the order
    price_minor              bigint      NOT NULL CHECK (price_minor >= 0), -- minor units of the invoice
    second_person_from_minor bigint      NOT NULL CHECK (second_person_from_minor >= 0), -- minor units of the invoice
    source                   text        NOT NULL,
    reason                   text        NOT NULL,
    by_person                varchar(40) NOT NULL,
    set_at                   timestamptz NOT NULL
);

-- Holds until somebody sets a policy. One row, the same units.
CREATE TABLE tolerance_default (
    quantity_permille        bigint NOT NULL,  -- of what was received
    length_mm                bigint NOT NULL,  -- millimetres
    pieces                   bigint NOT NULL,  -- pieces
    price_permille           bigint NOT NULL,  -- of the amount by the order
    price_minor              bigint NOT NULL,  -- minor units of the invoice
    second_person_from_minor bigint NOT NULL,  -- minor units of the invoice
    source                   text   NOT NULL,
    reason                   text   NOT NULL
);
INSERT INTO tolerance_default VALUES (5, 100, 5, 20, 500, 100000,
    'common practice, no source', 'small enough that nobody loses, large enough that a rounded price is not a dispute');
