-- The organisation's own accounts for ours, as they hold from a month on.
CREATE TABLE chart_version (
    from_month date        NOT NULL PRIMARY KEY CHECK (extract(day FROM from_month) = 1),  -- first day of the first month
    by_person  varchar(40) NOT NULL,
    at         timestamptz NOT NULL
);

CREATE TABLE chart_account (
    from_month date        NOT NULL,
    ours       varchar(60) NOT NULL,                -- stock, stock:TAPE, site, site:<SiteId>, written-off, written-down, slit, supplier
    number     varchar(40) NOT NULL,                -- in the organisation's books
    name       text        NOT NULL,
    PRIMARY KEY (from_month, ours)
);
