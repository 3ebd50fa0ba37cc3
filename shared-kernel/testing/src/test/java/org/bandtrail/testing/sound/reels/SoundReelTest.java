package org.bandtrail.testing.sound.reels;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;

/** A test under a name the build runs. */
class SoundReelTest {
    @Test
    void a_reel_that_comes_in_has_its_length() {
        ReelAggregate shell = new ReelAggregate();
        shell.reel()
                .decide(new ReelCommand.Receive(7, Instant.EPOCH))
                .forEach(event -> shell.on((ReelEvent.Received) event));

        assertThat(shell.reel()).isEqualTo(new Reel(7));
    }
}
