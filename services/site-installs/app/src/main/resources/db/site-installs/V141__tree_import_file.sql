-- Uploaded files, for a day, while somebody says what their columns mean.
CREATE TABLE tree_import_file (
    file_id     varchar(40) NOT NULL PRIMARY KEY,      -- made of the content
    content     bytea       NOT NULL,                  -- as uploaded
    uploaded_by varchar(40) NOT NULL,
    uploaded_at timestamptz NOT NULL
);
