-- Grants and who pays for which site. The word grant belongs to SQL, hence the longer table names.
CREATE TABLE funding_grant (
    grant_id     varchar(40) NOT NULL PRIMARY KEY,
    name         text        NOT NULL,
    amount_minor bigint      NOT NULL CHECK (amount_minor > 0),   -- minor units of the currency
    currency     varchar(3)  NOT NULL,                            -- ISO 4217
    good_from    date        NOT NULL,                            -- first day
    good_until   date        NOT NULL CHECK (good_until >= good_from)  -- last day
);

CREATE TABLE funding_grant_history (
    position  bigint      NOT NULL PRIMARY KEY,     -- of the stored event, in the order of the store
    grant_id     varchar(40) NOT NULL,
    name         text        NOT NULL,
    amount_minor bigint      NOT NULL,              -- minor units
    currency     varchar(3)  NOT NULL,              -- ISO 4217
    good_from    date        NOT NULL,
    good_until   date        NOT NULL,
    reason       text,                              -- null for the registration
    by_person    varchar(40) NOT NULL,
    at           timestamptz NOT NULL
);
CREATE INDEX funding_grant_history_of_grant ON funding_grant_history (grant_id, position);

-- One row for each time shares were set, also when from then on no grant pays.
CREATE TABLE site_share_version (
    site_id    varchar(40) NOT NULL,
    from_month date        NOT NULL CHECK (extract(day FROM from_month) = 1),  -- first day of the first month
    by_person  varchar(40) NOT NULL,
    at         timestamptz NOT NULL,
    PRIMARY KEY (site_id, from_month)
);

CREATE TABLE site_share (
    site_id    varchar(40) NOT NULL,
    from_month date        NOT NULL,
    grant_id   varchar(40) NOT NULL,
    permille   integer     NOT NULL CHECK (permille BETWEEN 1 AND 1000),  -- thousandths; those of one version add up to 1000
    PRIMARY KEY (site_id, from_month, grant_id)
);
