package org.bandtrail.frontdesk;

import java.security.SecureRandom;
import java.time.Clock;
import java.util.UUID;
import org.bandtrail.frontdesk.wording.CommandIds;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The two things that differ at every run, time and chance, made in one place so that tests can replace them. */
@Configuration(proxyBeanMethods = false)
class FrontDeskWiring {
    private static final long VERSION_7 = 0x7000L;
    private static final long VARIANT = 0x8000_0000_0000_0000L;

    @Bean
    Clock clock() {
        return Clock.systemUTC();
    }

    /** UUID version 7 (RFC 9562, section 5.7): 48 bits of milliseconds, then 74 random bits. */
    @Bean
    CommandIds commandIds(Clock clock) {
        SecureRandom chance = new SecureRandom();
        return () -> {
            long most = clock.millis() << 16 | VERSION_7 | chance.nextInt(1 << 12);
            long least = VARIANT | chance.nextLong() >>> 2;
            return new UUID(most, least).toString();
        };
    }
}
