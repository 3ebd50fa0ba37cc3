-- Open questions between books and field that wait until a day. One row for each question that ever waited.
CREATE TABLE waiting_question (
    material   varchar(5)  NOT NULL CHECK (material IN ('reel', 'batch')),
    id         varchar(40) NOT NULL,                        -- identity of the reel or batch
    place      varchar(90) NOT NULL,                        -- where it does not add up
    quantity   bigint      NOT NULL,                        -- balance when it was set to wait, millimetres or pieces
    until      date        NOT NULL,                        -- waits before this day
    reason     text        NOT NULL,
    by_person  varchar(40) NOT NULL,
    PRIMARY KEY (material, id, place)
);
