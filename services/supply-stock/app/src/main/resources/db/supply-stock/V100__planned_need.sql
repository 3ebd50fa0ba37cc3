-- What work plans need, heard from site-installs and written with the inbox. The newest word of each plan counts.
CREATE TABLE need_plan (
    plan_id  varchar(40) NOT NULL PRIMARY KEY,
    sequence bigint      NOT NULL                          -- of the word that counts; older ones change nothing
);

CREATE TABLE planned_need (
    plan_id    varchar(40) NOT NULL REFERENCES need_plan,
    material   varchar(40) NOT NULL,
    kind       varchar(10) NOT NULL CHECK (kind IN ('TAPE', 'MESH', 'FASTENER')),
    depot_id   varchar(40) NOT NULL,
    day        date        NOT NULL,                       -- first day of the work
    last_day   date        NOT NULL CHECK (last_day >= day),
    quantity   bigint      NOT NULL CHECK (quantity > 0),  -- millimetres without waste, or pieces
    longest_mm bigint      NOT NULL CHECK (longest_mm >= 0), -- longest piece, 0 for fasteners
    PRIMARY KEY (plan_id, material, depot_id)
);
CREATE INDEX planned_need_there ON planned_need (material, depot_id, day);
