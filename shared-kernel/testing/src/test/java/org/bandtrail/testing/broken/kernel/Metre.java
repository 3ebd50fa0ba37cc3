package org.bandtrail.testing.broken.kernel;

import org.springframework.stereotype.Component;

/** Knows more than the JDK, and holds fractions. */
@Component
public record Metre(double value) {}
