package org.bandtrail.testing.broken.unmarked;

/** Lives in a package without a package-info. */
public record Reel(String value) {}
