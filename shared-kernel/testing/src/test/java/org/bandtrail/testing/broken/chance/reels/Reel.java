package org.bandtrail.testing.broken.chance.reels;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.Supplier;

/** Makes time, identities and chance in all the ways it can. */
public final class Reel {
    private Reel() {}

    static List<Object> made() {
        Supplier<UUID> reference = UUID::randomUUID;
        return List.of(
                Instant.now(),
                LocalDate.now(ZoneOffset.UTC),
                Clock.systemUTC(),
                reference.get(),
                System.currentTimeMillis(),
                Math.random(),
                new Date(),
                new Random(7),
                ThreadLocalRandom.current());
    }

    static List<Object> given(Clock clock) {
        return List.of(Instant.now(clock), LocalDate.now(clock), System.nanoTime(), UUID.fromString("0-0-0-0-0"));
    }
}
