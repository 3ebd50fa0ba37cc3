package org.bandtrail.supplystock;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.bandtrail.testing.PostgresForTests;
import org.bandtrail.testing.TestDatabase;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.env.MapPropertySource;
import org.springframework.test.context.ContextConfiguration;

/** Runs a test against the whole service on a fresh database; tests with the same set-up share one start. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(
        classes = SupplyStockApplication.class,
        webEnvironment = WebEnvironment.RANDOM_PORT,
        properties = {
            "spring.config.name=supply-stock",
            "bandtrail.service-key=only-for-tests-0123",
            "bandtrail.read-feeds=false"
        })
@ContextConfiguration(initializers = OnPostgres.FreshDatabase.class)
public @interface OnPostgres {

    /** Points the service at a database of its own. */
    final class FreshDatabase implements ApplicationContextInitializer<ConfigurableApplicationContext> {
        @Override
        public void initialize(ConfigurableApplicationContext context) {
            TestDatabase database = PostgresForTests.freshDatabase("supply_stock");
            context.getEnvironment()
                    .getPropertySources()
                    .addFirst(new MapPropertySource(
                            "fresh-database",
                            java.util.Map.of(
                                    "spring.datasource.url", database.url(),
                                    "spring.datasource.username", database.user(),
                                    "spring.datasource.password", database.password())));
        }
    }
}
