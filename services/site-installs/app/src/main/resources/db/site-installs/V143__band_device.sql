-- Which device hangs and how it was fitted. Null before the fitting is heard of; bands fitted before devices were told
-- apart are sticky bands at the lowest place.
ALTER TABLE band ADD COLUMN device varchar(40);              -- code of the kind
ALTER TABLE band ADD COLUMN trunk_position integer CHECK (trunk_position BETWEEN 1 AND 9); -- 1 is the lowest
ALTER TABLE band ADD COLUMN deviation text;                  -- why the crew departed from the plan
ALTER TABLE band ADD COLUMN photos text;                     -- identities, separated by a blank
ALTER TABLE band ADD COLUMN seam_mm bigint CHECK (seam_mm >= 0); -- overlap of the guard's ends
ALTER TABLE band ADD COLUMN guard_closed_below boolean;      -- null: nobody said
ALTER TABLE band ADD COLUMN programme varchar(80);           -- null: nobody said
ALTER TABLE band ADD COLUMN pest varchar(40);                -- EPPO code, null: nobody said
ALTER TABLE band ADD COLUMN also_used text;                  -- reel:<id>=<mm> and batch:<id>=<pieces>
UPDATE band SET device = 'sticky-band', trunk_position = 1, photos = '', also_used = '' WHERE crew_id IS NOT NULL;
ALTER TABLE band ADD CHECK ((crew_id IS NULL) = (device IS NULL));
