-- Marked shelf places of the depots. What lies in one is in reel_place and batch_place.
CREATE TABLE bin (
    bin_id   varchar(81) NOT NULL PRIMARY KEY,   -- depot and mark, NORTH/A-03
    depot_id varchar(40) NOT NULL,
    words    text        NOT NULL                -- what it is for, may be empty
);
CREATE INDEX bin_of_depot ON bin (depot_id, bin_id);
