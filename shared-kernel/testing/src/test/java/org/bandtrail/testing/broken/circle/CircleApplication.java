package org.bandtrail.testing.broken.circle;

import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Where two modules begin that know each other. */
@SpringBootApplication
public final class CircleApplication {
    private CircleApplication() {}
}
