-- What people decided of two trees that look like one. Not a read model: written in the transaction of the command, one
-- line for each decision, never changed; the last one of a pair counts. The order of the two is by bytes.
CREATE TABLE tree_pair_decision (
    number      bigint      GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
    first_tree  varchar(40) COLLATE "C" NOT NULL,
    second_tree varchar(40) COLLATE "C" NOT NULL,
    decision    varchar(5)  NOT NULL CHECK (decision IN ('same', 'apart', 'open')), -- open: taken back
    kept_tree   varchar(40) COLLATE "C" CHECK (kept_tree IN (first_tree, second_tree)), -- null unless they are the same
    reason      text        NOT NULL CHECK (reason <> ''),
    by_person   varchar(40) NOT NULL,
    decided_at  timestamptz NOT NULL,
    CHECK (first_tree < second_tree),
    CHECK ((kept_tree IS NOT NULL) = (decision = 'same'))
);
CREATE INDEX tree_pair_decision_of_pair ON tree_pair_decision (first_tree, second_tree, number DESC);
CREATE INDEX tree_pair_decision_of_second ON tree_pair_decision (second_tree);
