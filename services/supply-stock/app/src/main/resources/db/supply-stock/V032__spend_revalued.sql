-- A whole delivery can go back to the supplier: then nothing of a known currency is bought. Where the cost changed
-- after the receipt, it no longer lies evenly on all that was bought.
ALTER TABLE spend_holding DROP CONSTRAINT spend_holding_check;
ALTER TABLE spend_holding ADD COLUMN revalued boolean NOT NULL DEFAULT false;
