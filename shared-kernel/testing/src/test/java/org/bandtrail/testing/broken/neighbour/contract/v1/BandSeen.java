package org.bandtrail.testing.broken.neighbour.contract.v1;

/** A band was seen. */
public record BandSeen(String bandId, long girthMm) {}
