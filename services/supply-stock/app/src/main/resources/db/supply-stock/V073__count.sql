-- Physical counts of depots and bins. What is booked stands in the events; these rows are for people.
CREATE TABLE stock_count (
    count_id     varchar(40) NOT NULL PRIMARY KEY,
    place        varchar(90) NOT NULL,                       -- depot:NORTH or depot:NORTH/A-03
    stage        varchar(10) NOT NULL CHECK (stage IN ('COUNTING', 'REVIEW', 'APPROVED', 'CANCELLED')),
    round        integer     NOT NULL CHECK (round >= 1),    -- 1 is the first count
    second_person_from_minor bigint NOT NULL,                -- minor units; rules under which it was opened
    opened_by    varchar(40) NOT NULL,
    opened_at    timestamptz NOT NULL,
    closed_by    varchar(40),                                -- who approved or cancelled
    closed_at    timestamptz,
    cancelled_because text
);
CREATE INDEX stock_count_newest ON stock_count (opened_at DESC, count_id DESC);
CREATE INDEX stock_count_open ON stock_count (place) WHERE stage IN ('COUNTING', 'REVIEW');

CREATE TABLE stock_count_line (
    count_id    varchar(40) NOT NULL,
    holding     varchar(5)  NOT NULL CHECK (holding IN ('reel', 'batch')),
    id          varchar(40) NOT NULL,                        -- identity of the reel or batch
    place       varchar(90) NOT NULL,                        -- depot or bin
    material    varchar(40),                                 -- null while its receipt is not in the books
    kind        varchar(10),                                 -- TAPE, MESH or FASTENER
    on_sheet    boolean     NOT NULL,                        -- false: found, and not expected
    book        bigint      NOT NULL,                        -- frozen figure, millimetres of a reel, pieces of a batch
    bought      bigint      NOT NULL,                        -- millimetres or pieces on the receipt
    cost_minor  bigint      NOT NULL,                        -- of the receipt, minor units
    currency    varchar(3),                                  -- ISO 4217
    elsewhere   varchar(90),                                 -- where the books have what was found here
    counted     bigint      CHECK (counted >= 0),            -- last figure, millimetres or pieces, null until counted
    counted_in  integer,                                     -- round of the last figure
    counted_by  varchar(40)[] NOT NULL DEFAULT '{}',         -- who counted it, round by round
    to_recount  boolean     NOT NULL DEFAULT false,          -- has to be counted again in this round
    reason      text,                                        -- why it differs
    PRIMARY KEY (count_id, holding, id, place)
);
CREATE INDEX stock_count_line_of ON stock_count_line (place, material, count_id);
