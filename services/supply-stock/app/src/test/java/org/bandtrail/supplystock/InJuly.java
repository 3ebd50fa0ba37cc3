package org.bandtrail.supplystock;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.time.Clock;
import org.bandtrail.testing.FixedClock;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.context.annotation.Primary;

/**
 * Runs a test in July 2026 and on a database that only such tests share: closing a month there moves nobody else's
 * facts. Each test class uses sites and names of its own.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@OnPostgres
@Import(InJuly.ClockOfJuly.class)
public @interface InJuly {

    /** Puts the clock of the service at noon on 10 July 2026. */
    @TestConfiguration(proxyBeanMethods = false)
    class ClockOfJuly {
        @Bean
        @Primary
        Clock july() {
            return FixedClock.at("2026-07-10T12:00:00Z");
        }
    }
}
