-- Names and phones live here and nowhere else, in rows that can be erased. Events and services know only person_id.
CREATE TABLE person (
    person_id     text        PRIMARY KEY CHECK (person_id ~ '^[A-Z0-9][A-Z0-9-]{0,39}$'),
    display_name  text        NOT NULL CHECK (length(display_name) BETWEEN 1 AND 80),
    phone         text        CHECK (length(phone) <= 40),
    username      text        UNIQUE CHECK (username ~ '^[a-z0-9.-]{1,40}$'),  -- NULL: cannot sign in
    password_hash text,                                                       -- bcrypt with its own salt
    units         text        NOT NULL DEFAULT 'SI' CHECK (units IN ('SI', 'US')),
    theme         text        NOT NULL DEFAULT 'auto' CHECK (theme IN ('auto', 'day', 'dark')),
    erased        boolean     NOT NULL DEFAULT false,
    CHECK ((username IS NULL) = (password_hash IS NULL))
);

-- What a person may do. One person can have several roles.
CREATE TABLE person_role (
    person_id text NOT NULL REFERENCES person ON DELETE CASCADE,
    role      text NOT NULL CHECK (role IN ('DEPOT', 'CREW', 'FINANCE', 'LEAD')),
    PRIMARY KEY (person_id, role)
);
