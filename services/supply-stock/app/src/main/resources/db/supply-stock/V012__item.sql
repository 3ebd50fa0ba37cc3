-- The register of supply items, with how each is supplied.
CREATE TABLE item (
    material               varchar(40) NOT NULL PRIMARY KEY,
    kind                   varchar(10) NOT NULL CHECK (kind IN ('TAPE', 'MESH', 'FASTENER')),
    name                   text        NOT NULL,
    width_mm               bigint      CHECK (width_mm > 0),
    opening_mm             bigint      CHECK (opening_mm > 0),       -- widest gap in the mesh
    reel_length_mm         bigint      CHECK (reel_length_mm > 0),   -- usual length of a new reel
    pack_size              bigint      CHECK (pack_size > 0),        -- pieces
    unit_cost_minor        bigint      NOT NULL,                     -- usual cost of a reel or pack, minor units
    currency               varchar(3)  NOT NULL,                     -- ISO 4217
    lead_time_days         integer     NOT NULL CHECK (lead_time_days >= 0),
    lead_time_sd_days      integer     NOT NULL CHECK (lead_time_sd_days >= 0),
    service_level_permille integer     NOT NULL CHECK (service_level_permille BETWEEN 500 AND 999)
);
