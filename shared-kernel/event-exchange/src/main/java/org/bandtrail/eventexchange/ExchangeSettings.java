package org.bandtrail.eventexchange;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * What a service must be told to exchange events.
 *
 * @param serviceName its name among the services, for example supply-stock
 * @param serviceKey the key the services share, at least 16 characters
 * @param feeds the foreign services it reads, by name
 * @param readFeeds whether this process reads feeds; false for a process that only serves
 */
@ConfigurationProperties("bandtrail")
public record ExchangeSettings(
        String serviceName,
        String serviceKey,
        @DefaultValue Map<String, ForeignFeed> feeds,
        @DefaultValue("true") boolean readFeeds) {
    private static final int SHORTEST_KEY = 16;

    public ExchangeSettings {
        given("bandtrail.service-name", serviceName, 1);
        given("bandtrail.service-key", serviceKey, SHORTEST_KEY);
    }

    /** Where a foreign service is served, for example {@code http://127.0.0.1:8102}. */
    public record ForeignFeed(String url) {}

    /** How a service is named in envelopes. */
    public static String sourceOf(String serviceName) {
        return "/bandtrail/" + serviceName;
    }

    private static void given(String property, @Nullable String value, int shortest) {
        if (value == null || value.strip().length() < shortest) {
            throw new IllegalArgumentException(
                    "%s must be set, with at least %d characters.".formatted(property, shortest));
        }
    }
}
