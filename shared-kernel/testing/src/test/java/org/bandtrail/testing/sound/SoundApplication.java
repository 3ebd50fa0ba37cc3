package org.bandtrail.testing.sound;

import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Where the modules of the service in miniature begin. */
@SpringBootApplication
public final class SoundApplication {
    private SoundApplication() {}
}
