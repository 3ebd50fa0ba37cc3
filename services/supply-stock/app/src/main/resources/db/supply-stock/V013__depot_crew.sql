-- Registers of depots and crews. People stand here by pseudonymous identity only.
CREATE TABLE depot (
    depot_id varchar(40) NOT NULL PRIMARY KEY,
    name     text        NOT NULL
);

CREATE TABLE crew (
    crew_id  varchar(40)   NOT NULL PRIMARY KEY,
    name     text          NOT NULL,
    depot_id varchar(40)   NOT NULL,                        -- where it starts from
    people   varchar(40)[] NOT NULL                         -- person identities
);
