package org.bandtrail.testing.broken.words.util;

/** Says nothing with half of its name. */
public record ReelHelper(String value) {}
