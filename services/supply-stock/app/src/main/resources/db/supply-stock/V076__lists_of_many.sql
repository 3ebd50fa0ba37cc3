-- Lists of hundreds of thousands of reels: each place's reels lie in order of identity, what was once at a place is kept
-- apart from what is there, and a part of an identity is found without reading every row. The extension comes with
-- PostgreSQL and is trusted: the owner of a database may create it.
CREATE EXTENSION IF NOT EXISTS pg_trgm;

DROP INDEX reel_place_there;
DROP INDEX reel_place_in_depot;
CREATE INDEX reel_place_there ON reel_place (place_kind, place_id, id) WHERE quantity <> 0;
CREATE INDEX reel_place_gone ON reel_place (place_kind, place_id, id) WHERE quantity = 0;
CREATE INDEX reel_place_in_depot ON reel_place (place_kind, split_part(place_id, '/', 1), id) WHERE quantity <> 0;
CREATE INDEX reel_place_disagrees ON reel_place (id) WHERE quantity < 0 AND place_kind NOT IN ('supplier', 'slit');
CREATE INDEX reel_balance_search ON reel_balance USING gin (id gin_trgm_ops, material gin_trgm_ops);

DROP INDEX batch_place_there;
DROP INDEX batch_place_in_depot;
CREATE INDEX batch_place_there ON batch_place (place_kind, place_id, id) WHERE quantity <> 0;
CREATE INDEX batch_place_gone ON batch_place (place_kind, place_id, id) WHERE quantity = 0;
CREATE INDEX batch_place_in_depot ON batch_place (place_kind, split_part(place_id, '/', 1), id) WHERE quantity <> 0;
CREATE INDEX batch_place_disagrees ON batch_place (id) WHERE quantity < 0 AND place_kind NOT IN ('supplier', 'slit');
CREATE INDEX batch_balance_search ON batch_balance USING gin (id gin_trgm_ops, material gin_trgm_ops);
