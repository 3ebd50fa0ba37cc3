-- How services tell each other what happened: what this one publishes (outbox), what it heard (inbox) and how far it
-- has read each foreign feed. All of it is written in the transaction of the private events it belongs to.

CREATE SEQUENCE outbox_position;

CREATE TABLE outbox (
    position     bigint       NOT NULL DEFAULT nextval('outbox_position') PRIMARY KEY, -- order of the feed
    event_id     uuid         NOT NULL UNIQUE,   -- derived from the private event, so that publishing twice is refused
    type         varchar(80)  NOT NULL CHECK (type ~ '^[a-z][a-z-]*\.[a-z][a-z-]*\.v[1-9][0-9]*$'),
    subject      varchar(80)  NOT NULL CHECK (subject ~ '^[a-z][a-z-]*/[A-Z0-9][A-Z0-9-]*$'), -- for example reel/R-0001
    happened_at  timestamptz  NOT NULL,          -- when it happened in the world, UTC
    data         json         NOT NULL,          -- the contract record as it was written, field order kept
    appended_at  timestamptz  NOT NULL DEFAULT now()
);

-- Order of the feed: see hold_append_order() in V001 and decision 0003.
CREATE TRIGGER append_order BEFORE INSERT ON outbox
    FOR EACH STATEMENT EXECUTE FUNCTION hold_append_order();

CREATE TABLE feed_position (
    source           varchar(80)  NOT NULL PRIMARY KEY,          -- for example /bandtrail/site-installs
    position         bigint       NOT NULL DEFAULT 0 CHECK (position >= 0), -- last position dealt with, 0 = none yet
    head             bigint       NOT NULL DEFAULT 0,            -- highest position the publisher has told us of
    applied          bigint       NOT NULL DEFAULT 0,            -- events handed to a handler, count
    skipped          bigint       NOT NULL DEFAULT 0,            -- events of a type nobody here knows, count
    repeated         bigint       NOT NULL DEFAULT 0,            -- events that came again and changed nothing, count
    read_at          timestamptz,                                -- last time the publisher answered
    claimed_by       varchar(120),                               -- the one replica that reads this feed
    claimed_until    timestamptz,
    retrying_since   timestamptz,                                -- a passing failure, tried again by itself
    retrying_why     text,
    stopped_at       timestamptz,                                -- a failure that needs a person: nothing moves on
    stopped_why      text,
    stopped_event_id varchar(200),
    stopped_position bigint,
    resumed_at       timestamptz,
    resumed_by       varchar(40),
    CHECK ((stopped_at IS NULL) = (stopped_why IS NULL)),
    CHECK ((retrying_since IS NULL) = (retrying_why IS NULL))
);

-- Event types that were skipped because no handler knows them: skipped, but never silently.
CREATE TABLE feed_skipped_type (
    source           varchar(80)  NOT NULL REFERENCES feed_position,
    type             varchar(200) NOT NULL,
    skipped          bigint       NOT NULL CHECK (skipped > 0),  -- count
    first_position   bigint       NOT NULL,
    last_position    bigint       NOT NULL,
    PRIMARY KEY (source, type)
);

-- Each heard event once, in the transaction of what was done with it. The position alone keeps an event from being
-- handled twice as long as it only moves on; the inbox covers re-reading from an earlier position and transports that
-- repeat. Rows at or below a position to which nobody will go back may be deleted: Inbox.prune.
CREATE TABLE inbox (
    source           varchar(80)  NOT NULL,
    event_id         varchar(200) NOT NULL,
    position         bigint       NOT NULL,
    type             varchar(200) NOT NULL,
    handled_at       timestamptz  NOT NULL DEFAULT now(),
    PRIMARY KEY (source, event_id)
);
CREATE INDEX inbox_by_position ON inbox (source, position);
