-- The last running number of a supplier's reels and batches is found without reading all of them.
CREATE INDEX delivered_holding_number ON delivered_holding
    (supplier_id, (substring(id FROM '-([0-9]{1,9})$')::bigint) DESC NULLS LAST);
CREATE INDEX delivered_holding_waiting ON delivered_holding (delivery_id) WHERE state = 'set aside';
