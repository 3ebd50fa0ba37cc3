-- A plan can be for any kind of device and for a programme; not every device has a part of tape.
ALTER TABLE work_plan ADD COLUMN programme varchar(40);                                -- code, null if not said
ALTER TABLE work_plan ADD COLUMN device varchar(40) NOT NULL DEFAULT 'sticky-band';    -- code of the kind
ALTER TABLE work_plan ADD COLUMN other_code varchar(40);                               -- ties, funnels; null if none
ALTER TABLE work_plan ALTER COLUMN tape_code DROP NOT NULL;
ALTER TABLE work_plan ADD CHECK (tape_code IS NOT NULL OR mesh_code IS NOT NULL);
ALTER TABLE work_plan_tree DROP CONSTRAINT work_plan_tree_tape_mm_check;
ALTER TABLE work_plan_tree ADD CHECK (tape_mm >= 0 AND tape_mm + mesh_mm > 0);         -- millimetres of each piece
ALTER TABLE work_plan_tree ADD COLUMN others bigint NOT NULL DEFAULT 0 CHECK (others >= 0); -- pieces for the tree
