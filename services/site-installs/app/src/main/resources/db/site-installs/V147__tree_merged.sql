-- A tree that turned out to be the same trunk as another points to it; its own rows stay.
ALTER TABLE tree
    ADD COLUMN merged_into varchar(40) CHECK (merged_into <> tree_id), -- null while it stands for itself
    ADD COLUMN merged_at   timestamptz,                                -- when the books learnt it
    ADD CHECK ((merged_into IS NULL) = (merged_at IS NULL));
CREATE INDEX tree_by_merged_into ON tree (merged_into) WHERE merged_into IS NOT NULL;
