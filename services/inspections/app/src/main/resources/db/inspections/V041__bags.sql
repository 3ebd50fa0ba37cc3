-- Waste bags and the loads they left with. Rows are only added, so a page of events applied twice changes nothing.

CREATE TABLE bag_move (
    event_id     uuid          NOT NULL,
    line         integer       NOT NULL,        -- 0, 1, 2 ... within the event
    bag_id       varchar(40)   NOT NULL,
    load_id      varchar(40),                   -- null: into the bag or out of it again
    kind         varchar(8)    NOT NULL CHECK (kind IN ('TAPE', 'MESH', 'FASTENER')),
    material_id  varchar(40)   NOT NULL,        -- reel or batch
    quantity     bigint        NOT NULL CHECK (quantity > 0), -- millimetres of tape and mesh, pieces of fasteners
    source       varchar(60)   NOT NULL,
    target       varchar(60)   NOT NULL CHECK (target <> source),
    recorded_at  timestamptz   NOT NULL,
    PRIMARY KEY (event_id, line)
);
CREATE INDEX bag_move_by_bag ON bag_move (bag_id);

CREATE TABLE bag_departure (
    load_id      varchar(40)   NOT NULL,
    bag_id       varchar(40)   NOT NULL,
    carrier      varchar(80)   NOT NULL,        -- code of who took it, never a person's name
    flags        varchar(30)[] NOT NULL,
    told_by      varchar(40)   NOT NULL,
    happened_at  timestamptz   NOT NULL,
    recorded_at  timestamptz   NOT NULL,
    PRIMARY KEY (load_id, bag_id)
);
CREATE INDEX bag_departure_by_bag ON bag_departure (bag_id, happened_at DESC);
CREATE INDEX bag_move_by_target ON bag_move (target);
CREATE INDEX bag_move_by_source ON bag_move (source);
