-- Which trees get their bands on which day, as planned now.
CREATE TABLE work_plan (
    plan_id        varchar(40) NOT NULL PRIMARY KEY,
    state          varchar(10) NOT NULL CHECK (state IN ('drafted', 'agreed', 'changed', 'done', 'called off')),
    day            date        NOT NULL,                   -- first day of work
    last_day       date        NOT NULL CHECK (last_day >= day),
    crew_id        varchar(40) NOT NULL,
    depot_id       varchar(40) NOT NULL,
    pest           varchar(10),                            -- EPPO code, null if not said
    tape_code      varchar(40) NOT NULL,
    mesh_code      varchar(40),                            -- null if no guard is planned
    fastener_code  varchar(40),
    policy_version integer     NOT NULL,                   -- of the cut lengths
    put_up_from    date,                                   -- as the lead says, null if not said
    put_up_until   date,
    note           text        NOT NULL,
    trees          integer     NOT NULL CHECK (trees > 0), -- count
    bands          integer     NOT NULL CHECK (bands >= trees),
    changed_at     timestamptz NOT NULL,                   -- of the last event
    changed_by     varchar(40) NOT NULL
);
CREATE INDEX work_plan_by_day ON work_plan (day, plan_id);

CREATE TABLE work_plan_tree (
    plan_id   varchar(40) NOT NULL,
    step      integer     NOT NULL CHECK (step > 0),       -- 1, 2, 3 in the order of the walk
    tree_id   varchar(40) NOT NULL,
    site_id   varchar(40) NOT NULL,
    girth_mm  bigint      NOT NULL CHECK (girth_mm > 0),   -- millimetres it was reckoned with
    bands     integer     NOT NULL CHECK (bands > 0),
    tape_mm   bigint      NOT NULL CHECK (tape_mm > 0),    -- millimetres of each piece
    mesh_mm   bigint      NOT NULL CHECK (mesh_mm >= 0),   -- millimetres of each piece, 0 if no guard is planned
    fasteners bigint      NOT NULL CHECK (fasteners >= 0), -- pieces for the tree
    PRIMARY KEY (plan_id, step)
);
CREATE INDEX work_plan_tree_of_tree ON work_plan_tree (tree_id);

CREATE TABLE work_plan_need (
    plan_id       varchar(40) NOT NULL,
    material_code varchar(40) NOT NULL,
    kind          varchar(10) NOT NULL CHECK (kind IN ('TAPE', 'MESH', 'FASTENER')),
    quantity      bigint      NOT NULL CHECK (quantity > 0),    -- millimetres, or pieces of fasteners
    longest_mm    bigint      NOT NULL CHECK (longest_mm >= 0), -- longest piece, 0 for fasteners
    pieces        bigint      NOT NULL CHECK (pieces > 0),      -- count
    PRIMARY KEY (plan_id, material_code)
);

CREATE TABLE work_plan_step (
    position    bigint      NOT NULL PRIMARY KEY,          -- of the event in the store
    plan_id     varchar(40) NOT NULL,
    what        varchar(40) NOT NULL,                      -- in words
    happened_at timestamptz NOT NULL,
    by_person   varchar(40) NOT NULL,
    note        text        NOT NULL
);
CREATE INDEX work_plan_step_of_plan ON work_plan_step (plan_id, position);
