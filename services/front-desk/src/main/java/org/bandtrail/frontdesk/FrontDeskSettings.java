package org.bandtrail.frontdesk;

import java.time.ZoneId;
import org.springframework.boot.context.properties.ConfigurationProperties;

/**
 * What the front desk must be told from outside.
 *
 * @param serviceKey the secret shared by the services; sent to them, and asked of whoever creates people by HTTP
 * @param zone the time zone of the yards, in which dates are shown and entered
 */
@ConfigurationProperties("bandtrail")
public record FrontDeskSettings(String serviceKey, ZoneId zone) {}
