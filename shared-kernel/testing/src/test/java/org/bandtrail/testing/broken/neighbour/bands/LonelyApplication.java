package org.bandtrail.testing.broken.neighbour.bands;

import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Has no package below it. */
@SpringBootApplication
public final class LonelyApplication {
    private LonelyApplication() {}
}
