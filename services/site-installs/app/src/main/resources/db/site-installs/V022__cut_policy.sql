-- All versions of the cut-length policy, as published.
CREATE TABLE cut_policy (
    version                integer      NOT NULL PRIMARY KEY CHECK (version > 0),
    valid_from             date         NOT NULL,                -- first day on which bands are cut by it
    source                 text         NOT NULL CHECK (source <> ''),
    reason                 text         NOT NULL CHECK (reason <> ''),
    published_by           varchar(40)  NOT NULL,
    published_at           timestamptz  NOT NULL,
    tape_overlap_mm        bigint       NOT NULL CHECK (tape_overlap_mm >= 0),
    tape_tab_mm            bigint       NOT NULL CHECK (tape_tab_mm >= 0),       -- at each end
    tape_widest_mm         bigint       NOT NULL CHECK (tape_widest_mm > 0),
    mesh_extra_mm          bigint       NOT NULL CHECK (mesh_extra_mm > 0),
    mesh_least_stand_off_mm bigint      NOT NULL CHECK (mesh_least_stand_off_mm >= 0),
    mesh_widest_opening_mm bigint       NOT NULL CHECK (mesh_widest_opening_mm > 0),
    fastener_spacing_mm    bigint       NOT NULL CHECK (fastener_spacing_mm > 0), -- girth per pin
    fastener_minimum       bigint       NOT NULL CHECK (fastener_minimum > 0),    -- pieces
    height_usual_mm        bigint       NOT NULL,                -- above ground
    height_lowest_mm       bigint       NOT NULL,
    height_highest_mm      bigint       NOT NULL,
    girth_minimum_mm       bigint       NOT NULL CHECK (girth_minimum_mm > 0),
    girth_question_above_mm bigint      NOT NULL,
    girth_change_permille  integer      NOT NULL CHECK (girth_change_permille BETWEEN 1 AND 1000),
    remove_after_days      integer      NOT NULL CHECK (remove_after_days > 0),
    late_after_days        integer      NOT NULL CHECK (late_after_days > 0),
    CHECK (height_lowest_mm <= height_usual_mm AND height_usual_mm <= height_highest_mm),
    CHECK (girth_minimum_mm < girth_question_above_mm)
);
CREATE INDEX cut_policy_by_day ON cut_policy (valid_from, version);
