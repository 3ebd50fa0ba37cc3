package org.bandtrail.local.doors;

import java.net.URI;
import java.net.http.HttpClient;
import java.time.Duration;
import java.util.List;

/** The front doors of the services, opened with one key. */
public record Doors(FrontDoor supplyStock, FrontDoor siteInstalls, FrontDoor inspections, FrontDoor frontDesk) {
    private static final Duration CONNECT_PATIENCE = Duration.ofSeconds(10);

    /** Doors at these addresses; nothing is asked yet. */
    public static Doors at(URI supplyStock, URI siteInstalls, URI inspections, URI frontDesk, String serviceKey) {
        HttpClient client = HttpClient.newBuilder()
                .version(HttpClient.Version.HTTP_1_1)
                .connectTimeout(CONNECT_PATIENCE)
                .build();
        return new Doors(
                new FrontDoor("supply-stock", supplyStock, serviceKey, client),
                new FrontDoor("site-installs", siteInstalls, serviceKey, client),
                new FrontDoor("inspections", inspections, serviceKey, client),
                new FrontDoor("front-desk", frontDesk, serviceKey, client));
    }

    /** All four. */
    public List<FrontDoor> all() {
        return List.of(supplyStock, siteInstalls, inspections, frontDesk);
    }
}
