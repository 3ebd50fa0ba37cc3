-- The tables of the event store. Axon writes domain_event_entry and token_entry; the columns and their types are ours.

CREATE SEQUENCE domain_event_global_index;

CREATE TABLE domain_event_entry (
    global_index         bigint        NOT NULL DEFAULT nextval('domain_event_global_index') PRIMARY KEY, -- position, see append_order
    event_identifier     uuid          NOT NULL,            -- names the event for ever; checked unique by the outbox
    aggregate_identifier varchar(64)   NOT NULL,            -- for example R-0001
    sequence_number      bigint        NOT NULL,            -- 0, 1, 2 ... in the aggregate
    type                 varchar(40)   NOT NULL,            -- aggregate type, for example reel
    payload_type         varchar(80)   NOT NULL,            -- stored name, for example reel.length-fitted; never a class name
    payload_revision     varchar(8)    NOT NULL,            -- revision of the stored form, for example 1
    payload              bytea         NOT NULL,            -- JSON in UTF-8: convert_from(payload, 'UTF8')
    meta_data            bytea         NOT NULL,            -- JSON in UTF-8
    time_stamp           varchar(40)   NOT NULL,            -- when it was appended, ISO 8601, UTC
    CONSTRAINT one_event_per_step UNIQUE (aggregate_identifier, sequence_number)
);

-- Positions of readers, with a claim so that of several replicas one reads.
CREATE TABLE token_entry (
    processor_name       varchar(120)  NOT NULL,
    segment              integer       NOT NULL,
    token                bytea,
    token_type           varchar(255),
    timestamp            varchar(40),
    owner                varchar(120),
    PRIMARY KEY (processor_name, segment)
);

-- Numbers are given out before commit, so a reader that remembers one number could miss a slower writer. Every writer
-- therefore holds the log's lock, shared, from before its first number until its end. A reader that sees a gap asks
-- once for the lock, exclusive: when it has it, all writers of smaller numbers have ended and the gap is real.
CREATE FUNCTION hold_append_order() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    PERFORM pg_advisory_xact_lock_shared(hashtext(TG_TABLE_NAME)::bigint);
    RETURN NULL;
END $$;

CREATE TRIGGER append_order BEFORE INSERT ON domain_event_entry
    FOR EACH STATEMENT EXECUTE FUNCTION hold_append_order();

-- A client-made id and what was answered: the same request sent twice does its work once.
CREATE TABLE command_receipt (
    command_id           uuid          NOT NULL PRIMARY KEY, -- UUIDv7 made by the client
    fingerprint          bytea         NOT NULL,             -- SHA-256 of the content
    answer               jsonb,                              -- null only inside the transaction that does the work
    recorded_at          timestamptz   NOT NULL
);
