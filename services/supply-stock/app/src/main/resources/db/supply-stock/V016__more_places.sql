-- Set aside, vehicles, in transit and slitting join the places of the trail; a bin is written behind its depot, as
-- NORTH/A-03. The cost can change after the receipt. Quantities: millimetres of a reel, pieces of a batch.
ALTER TABLE reel_place ALTER COLUMN place_id TYPE varchar(81);
ALTER TABLE batch_place ALTER COLUMN place_id TYPE varchar(81);
ALTER TABLE reel_history ALTER COLUMN source TYPE varchar(100), ALTER COLUMN target TYPE varchar(100);
ALTER TABLE batch_history ALTER COLUMN source TYPE varchar(100), ALTER COLUMN target TYPE varchar(100);

ALTER TABLE reel_balance
    ADD COLUMN set_aside          bigint NOT NULL DEFAULT 0,   -- millimetres at a depot, not to be used
    ADD COLUMN in_vehicle         bigint NOT NULL DEFAULT 0,   -- millimetres
    ADD COLUMN in_transit         bigint NOT NULL DEFAULT 0,   -- millimetres
    ADD COLUMN slit               bigint NOT NULL DEFAULT 0,   -- millimetres cut into narrower reels; negative: made from a wider one
    ADD COLUMN written_down_minor bigint NOT NULL DEFAULT 0,   -- value that stock lost unused, minor units
    ADD COLUMN slit_minor         bigint NOT NULL DEFAULT 0;   -- cost that went into narrower reels, minor units
ALTER TABLE reel_balance DROP CONSTRAINT reel_balance_check;
ALTER TABLE reel_balance ADD CONSTRAINT reel_balance_law CHECK (received = in_depot + with_crew + on_tree + in_bag
    + disposed + written_off + missing + set_aside + in_vehicle + in_transit + slit);

ALTER TABLE batch_balance
    ADD COLUMN set_aside          bigint NOT NULL DEFAULT 0,   -- pieces at a depot, not to be used
    ADD COLUMN in_vehicle         bigint NOT NULL DEFAULT 0,   -- pieces
    ADD COLUMN in_transit         bigint NOT NULL DEFAULT 0,   -- pieces
    ADD COLUMN slit               bigint NOT NULL DEFAULT 0,   -- always 0: only reels are slit
    ADD COLUMN written_down_minor bigint NOT NULL DEFAULT 0,   -- value that stock lost unused, minor units
    ADD COLUMN slit_minor         bigint NOT NULL DEFAULT 0;   -- always 0
ALTER TABLE batch_balance DROP CONSTRAINT batch_balance_check;
ALTER TABLE batch_balance ADD CONSTRAINT batch_balance_law CHECK (received = in_depot + with_crew + on_tree + in_bag
    + disposed + written_off + missing + set_aside + in_vehicle + in_transit + slit);

CREATE INDEX reel_place_in_depot ON reel_place (place_kind, split_part(place_id, '/', 1)) WHERE quantity <> 0;
CREATE INDEX batch_place_in_depot ON batch_place (place_kind, split_part(place_id, '/', 1)) WHERE quantity <> 0;
