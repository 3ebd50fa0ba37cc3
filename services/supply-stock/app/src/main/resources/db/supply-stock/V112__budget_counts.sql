-- What a budget counts as spent. Budgets set before this could be said counted what sites were charged.
ALTER TABLE budget ADD COLUMN counts varchar(16) NOT NULL DEFAULT 'CHARGED'
    CHECK (counts IN ('CHARGED', 'CHARGED_AND_LOST'));
