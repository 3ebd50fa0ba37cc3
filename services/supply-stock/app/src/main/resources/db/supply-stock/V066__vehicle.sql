-- Vehicles that carry stock.
CREATE TABLE vehicle (
    vehicle_id varchar(40) NOT NULL PRIMARY KEY,
    name       text        NOT NULL,
    depot_id   varchar(40) NOT NULL              -- where it belongs
);
