package org.bandtrail.testing.broken.neighbour.bands;

/** A band. */
public record Band(String bandId) {}
