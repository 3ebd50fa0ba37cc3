-- Places that are being counted, written in the transaction that opens or ends a count: no two of them overlap.
CREATE TABLE count_scope (
    count_id varchar(40) NOT NULL PRIMARY KEY,
    place    varchar(90) NOT NULL UNIQUE              -- depot:NORTH or depot:NORTH/A-03
);
INSERT INTO count_scope (count_id, place)
SELECT DISTINCT ON (place) count_id, place FROM stock_count WHERE stage IN ('COUNTING', 'REVIEW') ORDER BY place, opened_at;
