-- Two suppliers may print the same lot: a recall is of a supplier's lot.
ALTER TABLE recall ADD COLUMN supplier_id varchar(40); -- null: a recall of older days, of whichever supplier
