-- Pictures, re-encoded; no events, because they can show people and must be erasable.
CREATE TABLE photo (
    photo_id   varchar(40) NOT NULL PRIMARY KEY,               -- PH- and 32 digits of the SHA-256 of the JPEG
    jpeg       bytea,                                          -- null once erased
    width      integer     NOT NULL CHECK (width > 0),         -- pixels
    height     integer     NOT NULL CHECK (height > 0),        -- pixels
    stored_at  timestamptz NOT NULL,
    stored_by  varchar(40) NOT NULL,
    erased_at  timestamptz,                                    -- null while it is there
    erased_by  varchar(40),
    erased_why text,
    CHECK ((jpeg IS NULL) = (erased_at IS NOT NULL)),
    CHECK ((erased_at IS NULL) = (erased_by IS NULL) AND (erased_at IS NULL) = (erased_why IS NULL))
);
ALTER TABLE photo ALTER COLUMN jpeg SET STORAGE EXTERNAL;      -- a JPEG does not get smaller

-- What each picture shows.
CREATE TABLE photo_use (
    photo_id    varchar(40) NOT NULL REFERENCES photo,
    shows       varchar(10) NOT NULL CHECK (shows IN ('tree', 'band', 'site')),
    subject_id  varchar(40) NOT NULL,                          -- identity of that thing
    attached_at timestamptz NOT NULL,
    attached_by varchar(40) NOT NULL,
    PRIMARY KEY (photo_id, shows, subject_id)
);
CREATE INDEX photo_use_by_subject ON photo_use (shows, subject_id, attached_at DESC);
