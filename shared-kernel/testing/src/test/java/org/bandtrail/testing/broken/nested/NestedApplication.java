package org.bandtrail.testing.broken.nested;

import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Where a module begins that is reached into from its neighbour. */
@SpringBootApplication
public final class NestedApplication {
    private NestedApplication() {}
}
