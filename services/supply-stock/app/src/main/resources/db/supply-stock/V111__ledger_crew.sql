-- Spend of a crew is what its people used while they were in it: the ledger knows who was in which crew when, and which
-- crew a use counts for. What is in the ledger is written again from the first event, once, at the next start.
CREATE TABLE ledger_crew (
    person_id varchar(40) NOT NULL,
    crew_id   varchar(40) NOT NULL,
    from_at   timestamptz NOT NULL,
    until_at  timestamptz,                          -- null while the person is in the crew
    PRIMARY KEY (person_id, crew_id, from_at),
    CHECK (until_at >= from_at)
);
TRUNCATE ledger_line, ledger_state, ledger_holding, ledger_place, ledger_layer, ledger_payer, ledger_method, ledger_trial,
    ledger_account, ledger_day;
ALTER TABLE ledger_line ADD COLUMN crew_id varchar(40) NOT NULL;    -- it counts for, or ''
ALTER TABLE ledger_account ADD COLUMN crew_id varchar(40) NOT NULL; -- it counts for, or ''
ALTER TABLE ledger_account DROP CONSTRAINT ledger_account_pkey,
    ADD PRIMARY KEY (period, account, tree_id, material, currency, what, person_id, crew_id);
DO $$
BEGIN
    IF to_regclass('token_entry') IS NOT NULL THEN
        DELETE FROM token_entry WHERE processor_name = 'ledger';
    END IF;
END $$;
