-- A tree that was felled, has fallen, died or was not found stays in the register and says so.
ALTER TABLE tree
    ADD COLUMN gone_at  timestamptz,                                   -- null while it stands
    ADD COLUMN gone_how varchar(20),                                   -- in words, null while it stands
    ADD CHECK ((gone_at IS NULL) = (gone_how IS NULL));
