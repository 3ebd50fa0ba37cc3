-- Cut plans: which piece comes off which reel.
CREATE TABLE cut_plan (
    plan_id        varchar(40)  PRIMARY KEY,
    depot_id       varchar(40)  NOT NULL,                       -- whose reels are cut
    day            date         NOT NULL,                       -- on which the bands go up
    state          varchar(12)  NOT NULL CHECK (state IN ('drawn', 'agreed', 'handed over', 'dropped')),
    trees          integer      NOT NULL CHECK (trees > 0),     -- how many
    pieces         integer      NOT NULL CHECK (pieces >= 0),   -- how many are cut
    uncut          integer      NOT NULL CHECK (uncut >= 0),    -- how many the depot does not serve
    loss_mm        bigint       NOT NULL CHECK (loss_mm >= 0),  -- scrap and blade together, millimetres
    least_loss_mm  bigint       NOT NULL CHECK (least_loss_mm >= 0 AND least_loss_mm <= loss_mm),
    proven         boolean      NOT NULL,                       -- no plan loses less
    drawn_by       varchar(40)  NOT NULL,
    drawn_at       timestamptz  NOT NULL,
    moved_by       varchar(40),                                 -- who agreed, dropped or handed over last
    moved_at       timestamptz,
    kit_id         varchar(40),                                 -- with which it went out
    reason         text,                                        -- why it was dropped
    parts          jsonb        NOT NULL                        -- trees and materials as drawn; lengths in millimetres
);
CREATE INDEX cut_plan_of_day ON cut_plan (day DESC, plan_id DESC);

CREATE TABLE cut_plan_piece (
    plan_id       varchar(40)  NOT NULL REFERENCES cut_plan,
    material_code varchar(40)  NOT NULL,
    tree_id       varchar(40)  NOT NULL,
    position      integer      NOT NULL CHECK (position BETWEEN 1 AND 9), -- on the trunk, 1 is the lowest
    length_mm     bigint       NOT NULL CHECK (length_mm > 0),
    reel_id       varchar(40),                                  -- null if it is not cut
    PRIMARY KEY (plan_id, material_code, tree_id, position)
);
CREATE INDEX cut_plan_piece_of_tree ON cut_plan_piece (tree_id);

-- Not a read model: written in the transaction of the command, so that of two plans only one binds a reel.
CREATE TABLE cut_plan_bound_reel (
    reel_id varchar(40) PRIMARY KEY,
    plan_id varchar(40) NOT NULL
);
CREATE INDEX cut_plan_bound_reel_of_plan ON cut_plan_bound_reel (plan_id);
