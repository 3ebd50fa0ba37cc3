-- Months of the books: which are closed, who answers for what, who asks to reopen. Months are months of UTC.
CREATE TABLE period_closing (
    month     date        NOT NULL PRIMARY KEY CHECK (extract(day FROM month) = 1),  -- first day of the closed month
    closed_at timestamptz NOT NULL,                 -- when it was closed
    closed_by varchar(40) NOT NULL,                 -- person
    checks    integer     NOT NULL CHECK (checks >= 0),   -- checks that passed
    signed    integer     NOT NULL CHECK (signed >= 0 AND signed <= checks)  -- of these, not clean but signed
);

CREATE TABLE period_signature (
    month       date        NOT NULL CHECK (extract(day FROM month) = 1),
    check_name  varchar(60) NOT NULL,
    open_things bigint      NOT NULL CHECK (open_things > 0),  -- how many things were open when signed
    fingerprint text        NOT NULL,               -- of exactly these things
    reason      text        NOT NULL,
    signed_by   varchar(40) NOT NULL,               -- person
    signed_at   timestamptz NOT NULL,
    PRIMARY KEY (month, check_name)
);

CREATE TABLE period_request (
    month    date        NOT NULL PRIMARY KEY CHECK (extract(day FROM month) = 1),  -- to be reopened
    reason   text        NOT NULL,
    asked_by varchar(40) NOT NULL,                  -- person
    asked_at timestamptz NOT NULL
);

CREATE TABLE period_history (
    position  bigint      NOT NULL PRIMARY KEY,     -- of the stored event, in the order of the store
    month     date        NOT NULL,
    what      varchar(40) NOT NULL,                 -- signed, closed, reopening asked, reopened, reopening dropped
    detail    text        NOT NULL,                 -- the check, the reason
    by_person varchar(40) NOT NULL,
    at        timestamptz NOT NULL
);
CREATE INDEX period_history_of_month ON period_history (month, position);
