-- The spend is read from the ledger; what added it up before is no longer needed. Two indexes for its reasons.
DROP TABLE spend;
DROP TABLE spend_holding;
CREATE INDEX ledger_line_of_account ON ledger_line (account, period, position, step) WHERE account IS NOT NULL;
CREATE INDEX ledger_line_not_received ON ledger_line (holding, id) WHERE currency = '';
