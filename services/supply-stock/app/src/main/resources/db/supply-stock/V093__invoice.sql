-- Invoices and credit notes as they are kept. Sums of credit notes are negative.
CREATE TABLE invoice (
    invoice_id     varchar(40) NOT NULL PRIMARY KEY,
    supplier_id    varchar(40) NOT NULL,
    kind           varchar(12) NOT NULL CHECK (kind IN ('INVOICE', 'CREDIT_NOTE')),
    number         text        NOT NULL,                        -- the supplier's own
    issued_on      date        NOT NULL,
    due_on         date,                                        -- last day to pay
    currency       varchar(3)  NOT NULL,                        -- ISO 4217
    credits        text,                                        -- number of the invoice it takes back
    order_text     text,                                        -- the order it names, as written
    tax_minor      bigint      NOT NULL,                        -- minor units
    payable_minor  bigint      NOT NULL,                        -- minor units
    held_because   text,                                        -- why the whole invoice is held
    first_by       varchar(40),                                 -- who approved and waits for a second person
    approved_minor bigint      NOT NULL DEFAULT 0,              -- minor units approved for payment
    spread_minor   bigint      NOT NULL DEFAULT 0,              -- minor units of charges spread over goods
    withdrawn      text,                                        -- why it was taken back
    state          varchar(16) NOT NULL DEFAULT 'waiting' CHECK (state IN
        ('waiting', 'held', 'approved once', 'part approved', 'approved', 'withdrawn')),
    source         text        NOT NULL,
    by_person      varchar(40) NOT NULL,
    registered_at  timestamptz NOT NULL
);
CREATE INDEX invoice_newest ON invoice (registered_at DESC, invoice_id DESC);
CREATE INDEX invoice_number ON invoice (supplier_id, number);

CREATE TABLE invoice_line (
    invoice_id     varchar(40) NOT NULL,
    position       integer     NOT NULL CHECK (position > 0),   -- in the document
    line           varchar(40) NOT NULL,                        -- the supplier's own
    item           text        NOT NULL,
    sellers_item   text,
    quantity       text        NOT NULL,                        -- decimal as written, in unit
    unit           varchar(10) NOT NULL,                        -- UN/CEFACT Recommendation 20, or 21 after X
    price          text        NOT NULL,                        -- decimal as written, major units for per_quantity
    per_quantity   text        NOT NULL,                        -- decimal as written, in unit
    amount_minor   bigint      NOT NULL,                        -- minor units as written
    net_minor      bigint      NOT NULL,                        -- minor units after the document's allowances
    line_use       varchar(10) NOT NULL CHECK (line_use IN ('GOODS', 'FREIGHT', 'DUTY', 'OTHER')),
    purchase_id    varchar(40),
    purchase_line  integer,
    link_quantity  bigint,                                      -- millimetres or pieces it bills
    standing       varchar(10) NOT NULL DEFAULT 'OPEN' CHECK (standing IN
        ('OPEN', 'HELD', 'SETTLED', 'APPROVED', 'NOT_PAID')),
    reason         text,                                        -- why held, or how settled
    pay_quantity   bigint,                                      -- millimetres or pieces paid, if fewer than billed
    pay_net_minor  bigint,                                      -- minor units paid for them before tax
    PRIMARY KEY (invoice_id, position)
);
CREATE INDEX invoice_line_purchase ON invoice_line (purchase_id, purchase_line);

CREATE TABLE invoice_charge (
    invoice_id   varchar(40) NOT NULL,
    number       integer     NOT NULL CHECK (number > 0),
    reason       text        NOT NULL,
    amount_minor bigint      NOT NULL,                          -- minor units
    PRIMARY KEY (invoice_id, number)
);

CREATE TABLE invoice_history (
    position   bigint      NOT NULL PRIMARY KEY,                -- of the event
    invoice_id varchar(40) NOT NULL,
    what       text        NOT NULL,
    note       text,
    by_person  varchar(40) NOT NULL,
    at         timestamptz NOT NULL
);
CREATE INDEX invoice_history_invoice ON invoice_history (invoice_id, position);
