-- What came into and went out of each person's care, step by step, and the settlement of each kit that follows from it.
-- Quantities are millimetres of a reel, pieces of a batch. All tables belong to one projection.
CREATE TABLE custody_step (
    position    bigint      NOT NULL,                      -- of the event
    step        integer     NOT NULL,                      -- within the event
    person_id   varchar(40) NOT NULL,
    holding     varchar(5)  NOT NULL CHECK (holding IN ('reel', 'batch')),
    id          varchar(40) NOT NULL,                      -- reel or batch
    source      varchar(12) NOT NULL,                      -- handed-out, with-person, missing, fitted, returned, ...
    target      varchar(12) NOT NULL,
    quantity    bigint      NOT NULL CHECK (quantity > 0), -- millimetres or pieces
    place       varchar(100) NOT NULL,                     -- the other end of the move
    what        varchar(40) NOT NULL,                      -- for example fitted
    kit_id      varchar(40),                               -- on a handout: the kit
    measured    boolean     NOT NULL,                      -- what came back was measured or counted
    happened_at timestamptz NOT NULL,
    recorded_at timestamptz NOT NULL,
    PRIMARY KEY (position, step, person_id)
);
CREATE INDEX custody_step_of ON custody_step (holding, id, person_id, position);
CREATE INDEX custody_step_person ON custody_step (person_id, happened_at);
CREATE INDEX custody_step_kit ON custody_step (kit_id) WHERE kit_id IS NOT NULL;

CREATE TABLE custody_crew (
    crew_id     varchar(40)   NOT NULL,
    position    bigint        NOT NULL,
    people      varchar(40)[] NOT NULL,                    -- who is in it from then on
    happened_at timestamptz   NOT NULL,
    recorded_at timestamptz   NOT NULL,
    PRIMARY KEY (crew_id, position)
);

CREATE TABLE kit_line_settled (
    kit_id     varchar(40) NOT NULL,
    holding    varchar(5)  NOT NULL,
    id         varchar(40) NOT NULL,
    person_id  varchar(40) NOT NULL,
    handed_out bigint      NOT NULL,                       -- millimetres or pieces, as all that follow
    fitted     bigint      NOT NULL,                       -- less what was put back into use
    returned   bigint      NOT NULL,
    scrapped   bigint      NOT NULL,
    missing    bigint      NOT NULL,                       -- not yet settled
    settled    bigint      NOT NULL,                       -- missing that was written off; negative: found
    elsewhere  bigint      NOT NULL,                       -- to another person or a vehicle
    still_out  bigint      NOT NULL,
    PRIMARY KEY (kit_id, holding, id, person_id),
    CHECK (handed_out = fitted + returned + scrapped + missing + settled + elsewhere + still_out)
);
CREATE INDEX kit_line_settled_person ON kit_line_settled (person_id, kit_id);

CREATE TABLE kit_settlement (
    kit_id      varchar(40) NOT NULL PRIMARY KEY,
    lines_out   integer     NOT NULL CHECK (lines_out >= 0), -- reels and batches of which something is out
    settled_at  timestamptz,                               -- when nothing was out any more; null while something is
    reopened    integer     NOT NULL CHECK (reopened >= 0), -- facts that came after it was settled
    reopened_at timestamptz                                -- when the books learnt of the last one
);
