-- For what a version holds, until when, and how bands and their guards are set up. Versions published before were of
-- the house, without an end, for one band under mesh.
ALTER TABLE cut_policy ADD COLUMN programme varchar(40);                  -- null: any
ALTER TABLE cut_policy ADD COLUMN pest varchar(40);                       -- EPPO code, null: any
ALTER TABLE cut_policy ADD COLUMN valid_until date;                       -- last day, null: no end
ALTER TABLE cut_policy ADD COLUMN bands_per_tree integer;                 -- on one trunk as planned
ALTER TABLE cut_policy ADD COLUMN band_width_mm bigint;                   -- usual width of the tape
ALTER TABLE cut_policy ADD COLUMN guard_type varchar(10);                 -- mesh, screen or none
ALTER TABLE cut_policy ADD COLUMN guard_wider_mm bigint;                  -- the guard beyond the tape, at least
ALTER TABLE cut_policy ADD COLUMN guard_seam_mm bigint;                   -- overlap of the guard's ends
ALTER TABLE cut_policy ADD COLUMN guard_closed_below boolean;             -- as well as above
UPDATE cut_policy SET bands_per_tree = 1, band_width_mm = tape_widest_mm, guard_type = 'mesh', guard_wider_mm = 1,
    guard_seam_mm = 0, guard_closed_below = true;
ALTER TABLE cut_policy
    ALTER COLUMN bands_per_tree SET NOT NULL, ALTER COLUMN band_width_mm SET NOT NULL,
    ALTER COLUMN guard_type SET NOT NULL, ALTER COLUMN guard_wider_mm SET NOT NULL,
    ALTER COLUMN guard_seam_mm SET NOT NULL, ALTER COLUMN guard_closed_below SET NOT NULL,
    ADD CHECK (bands_per_tree BETWEEN 1 AND 9), ADD CHECK (band_width_mm > 0),
    ADD CHECK (guard_type IN ('mesh', 'screen', 'none')), ADD CHECK (guard_wider_mm > 0), ADD CHECK (guard_seam_mm >= 0),
    ADD CHECK (valid_until IS NULL OR valid_until >= valid_from), ADD CHECK (programme IS NULL OR pest IS NOT NULL);
