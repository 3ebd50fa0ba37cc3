-- Bands that must come off are asked for on many pages, by day.
CREATE INDEX band_by_removal ON band (must_remove_by, band_id) WHERE state = 'up';
CREATE INDEX band_by_device ON band (device, band_id);
