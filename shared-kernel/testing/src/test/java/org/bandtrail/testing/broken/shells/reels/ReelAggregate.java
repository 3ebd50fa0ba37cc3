package org.bandtrail.testing.broken.shells.reels;

/** A shell that everybody can call. */
public class ReelAggregate {}
