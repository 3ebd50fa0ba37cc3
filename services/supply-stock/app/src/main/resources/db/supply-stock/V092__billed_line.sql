-- Lines of approved invoices as they were billed against lines of purchases. Credits are negative.
CREATE TABLE billed_line (
    position         bigint      NOT NULL,                       -- of the event
    invoice_id       varchar(40) NOT NULL,
    invoice_line     varchar(40) NOT NULL,
    purchase_id      varchar(40) NOT NULL,
    line             integer     NOT NULL,                       -- of the purchase
    quantity         bigint      NOT NULL,                       -- millimetres or pieces
    net_minor        bigint      NOT NULL,                       -- minor units, what is paid for it before tax
    at_receipt_minor bigint      NOT NULL,                       -- minor units, what the same goods cost when received
    currency         varchar(3)  NOT NULL,                       -- ISO 4217
    verdict          text        NOT NULL,                       -- matches, price differs ...
    accepted_because text,                                       -- why a price that differs was accepted
    by_person        varchar(40) NOT NULL,
    billed_at        timestamptz NOT NULL,
    PRIMARY KEY (position, invoice_line)
);
CREATE INDEX billed_line_purchase ON billed_line (purchase_id, line);
CREATE INDEX billed_line_invoice ON billed_line (invoice_id);
