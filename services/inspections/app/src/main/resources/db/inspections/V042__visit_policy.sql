-- When bands are looked at, as versioned data: a version is never changed, a newer one follows it.
CREATE TABLE visit_policy (
    version             integer      NOT NULL PRIMARY KEY CHECK (version > 0),
    valid_from          date         NOT NULL,
    interval_days       integer      NOT NULL CHECK (interval_days BETWEEN 1 AND 14),
    load_from_percent   integer      NOT NULL CHECK (load_from_percent BETWEEN 1 AND 100),
    load_interval_days  integer      NOT NULL CHECK (load_interval_days BETWEEN 0 AND interval_days),
    full_from_percent   integer      NOT NULL CHECK (full_from_percent BETWEEN 1 AND 100),
    guard_interval_days integer      NOT NULL CHECK (guard_interval_days BETWEEN 0 AND interval_days),
    retry_interval_days integer      NOT NULL CHECK (retry_interval_days BETWEEN 0 AND interval_days),
    max_days_up         integer      NOT NULL CHECK (max_days_up BETWEEN 1 AND 366),
    late_after_hours    integer      NOT NULL CHECK (late_after_hours BETWEEN 1 AND 744),
    source              varchar(400) NOT NULL CHECK (source <> ''),
    reason              varchar(400) NOT NULL CHECK (reason <> ''),
    adopted_by          varchar(40)  NOT NULL,
    recorded_at         timestamptz  NOT NULL
);

INSERT INTO visit_policy VALUES (
    1, DATE '2000-01-01', 2, 50, 1, 90, 0, 1, 120, 24,
    'Common practice: every couple of days while wildlife can be caught; two weeks is the longest interval seen. '
        || 'A full band can fill within hours; liners of 465 cm2 lost catch after 50 to 60 moths '
        || '(Kuenen and Siegel 2016, California Agriculture 70:32-38). Days up: a season of four months.',
    'First version, to be replaced by the programme''s own.',
    'PROGRAMME', TIMESTAMPTZ '2000-01-01 00:00:00Z');
