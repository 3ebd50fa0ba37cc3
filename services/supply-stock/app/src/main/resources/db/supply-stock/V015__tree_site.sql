-- Which tree stands on which site, as the facts told.
CREATE TABLE tree_site (
    tree_id varchar(40) NOT NULL PRIMARY KEY,
    site_id varchar(40) NOT NULL
);
CREATE INDEX tree_site_of ON tree_site (site_id);
