-- Who may give consent. Erasable: no event and no other table holds these texts.
CREATE TABLE consent_contact (
    contact_id varchar(40)  NOT NULL PRIMARY KEY,
    name       varchar(200) NOT NULL,                     -- empty once erased
    phone      varchar(200) NOT NULL,                     -- as dialled, empty if not known
    email      varchar(200) NOT NULL,
    address    varchar(200) NOT NULL,
    erased_at  timestamptz,                               -- null while the texts are kept
    CHECK (erased_at IS NULL OR (name = '' AND phone = '' AND email = '' AND address = ''))
);

-- What each consent says now.
CREATE TABLE consent (
    consent_id     varchar(40) NOT NULL PRIMARY KEY,
    site_id        varchar(40) NOT NULL,
    state          varchar(10) NOT NULL CHECK (state IN ('asked', 'given', 'declined', 'withdrawn')),
    activities     text[]      NOT NULL,                  -- what may be done: MEASURE, BANDS, TRAPS, SCRAPE, FELL
    pests          text[]      NOT NULL,                  -- EPPO codes; empty is any
    area           text        NOT NULL,                  -- in words; empty is the whole site
    contact_id     varchar(40) NOT NULL,
    asked_at       timestamptz,                           -- null if it was given unasked
    valid_from     date,                                  -- first day, null before it is given
    valid_until    date,                                  -- last day, null if it has no end
    withdrawn_from date,                                  -- first day on which it no longer holds
    note           text        NOT NULL,                  -- how it was given, or why not
    CHECK (valid_until IS NULL OR valid_until >= valid_from),
    CHECK ((state = 'given') <= (valid_from IS NOT NULL)),
    CHECK ((state = 'withdrawn') = (withdrawn_from IS NOT NULL))
);
CREATE INDEX consent_by_site ON consent (site_id, consent_id);
CREATE INDEX consent_by_end ON consent (valid_until, consent_id) WHERE state = 'given';

-- Everything that happened to a consent.
CREATE TABLE consent_step (
    position    bigint      NOT NULL PRIMARY KEY,         -- of the event in the store
    consent_id  varchar(40) NOT NULL,
    what        varchar(40) NOT NULL,                     -- in words
    happened_at timestamptz NOT NULL,
    by_person   varchar(40) NOT NULL,
    note        text        NOT NULL
);
CREATE INDEX consent_step_by_consent ON consent_step (consent_id, happened_at, position);

-- How many days before its end a consent is warned about. Never changed: a later row takes over from its day on.
CREATE TABLE consent_warning (
    since      date        NOT NULL PRIMARY KEY,
    days       integer     NOT NULL CHECK (days BETWEEN 1 AND 365),
    source     text        NOT NULL,
    reason     text        NOT NULL,
    entered_by varchar(40) NOT NULL
);
INSERT INTO consent_warning VALUES
    ('2000-01-01', 30, 'Our own choice, no source',
     'A letter, a reminder and an answer fit into a month.', 'SYSTEM');
