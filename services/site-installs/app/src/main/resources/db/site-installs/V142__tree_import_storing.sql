-- A large import is stored by pages, each in a transaction of its own, so that nobody waits for its end and a stop in
-- the middle goes on where it was.
ALTER TABLE tree_import
    ADD COLUMN storing_by varchar(40),                       -- who said so, null before
    ADD COLUMN storing_at timestamptz,                       -- when, null before
    ADD COLUMN done_row   integer NOT NULL DEFAULT 0,        -- the last row that was dealt with
    ADD COLUMN done       integer NOT NULL DEFAULT 0,        -- trees stored so far
    ADD COLUMN left_out   text[]  NOT NULL DEFAULT '{}',     -- trees somebody else registered while it was stored
    ADD CHECK ((storing_by IS NULL) = (storing_at IS NULL));
CREATE INDEX tree_import_unfinished ON tree_import (storing_at) WHERE storing_at IS NOT NULL AND stored IS NULL;
DROP TABLE tree_import_progress;
