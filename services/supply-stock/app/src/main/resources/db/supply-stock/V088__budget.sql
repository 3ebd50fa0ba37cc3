-- What may be spent on what, over which months.
CREATE TABLE budget (
    budget_id     varchar(40) NOT NULL PRIMARY KEY,
    name          text        NOT NULL,
    grant_id      varchar(40),                        -- null: whoever pays
    site_id       varchar(40),                        -- null: all sites
    kind          varchar(10) CHECK (kind IN ('TAPE', 'MESH', 'FASTENER')),  -- null: all kinds
    from_month    date        NOT NULL CHECK (extract(day FROM from_month) = 1),     -- first day of the first month
    through_month date        NOT NULL CHECK (through_month >= from_month),          -- first day of the last month
    amount_minor  bigint      NOT NULL CHECK (amount_minor > 0),                     -- minor units of the currency
    currency      varchar(3)  NOT NULL,               -- ISO 4217
    dropped       text                                -- why it no longer counts; null while it does
);

CREATE TABLE budget_history (
    position     bigint      NOT NULL PRIMARY KEY,    -- of the stored event, in the order of the store
    budget_id    varchar(40) NOT NULL,
    what         varchar(10) NOT NULL CHECK (what IN ('set', 'changed', 'dropped')),
    amount_minor bigint,                              -- minor units; null when dropped
    reason       text,                                -- null when set
    by_person    varchar(40) NOT NULL,
    at           timestamptz NOT NULL
);
CREATE INDEX budget_history_of_budget ON budget_history (budget_id, position);
