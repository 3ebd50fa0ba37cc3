package org.bandtrail.local;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;

/** What the journey needs before anybody opens a page: items, a depot, a crew, a site, and people who sign in. */
final class JourneyPlace implements AutoCloseable {
    private final House house;
    private final HttpClient http = HttpClient.newHttpClient();
    private int commands;

    JourneyPlace(House house) {
        this.house = house;
    }

    void set() throws IOException, InterruptedException {
        URI stock = house.at(Service.SUPPLY_STOCK);
        item(stock, "TAPE-127", "TAPE", "Band tape", "\"width\":\"127 mm\",\"reelLength\":\"50 m\"");
        item(
                stock,
                "MESH-305",
                "MESH",
                "Guard mesh",
                "\"width\":\"305 mm\",\"opening\":\"12 mm\",\"reelLength\":\"30 m\"");
        item(stock, "PIN", "FASTENER", "Push pins", "\"packSize\":100");
        post(stock, "/depots", "\"depotId\":\"D-1\",\"name\":\"River yard\"");
        post(stock, "/crews", "\"crewId\":\"C-1\",\"name\":\"Heron\",\"depotId\":\"D-1\",\"people\":[\"P-01\"]");
        post(house.at(Service.SITE_INSTALLS), "/sites", "\"siteId\":\"S-MILL\",\"name\":\"Mill pond woods\"");
        person("P-01", "Avel Tarnwick", "CREW", "avel");
        person("P-02", "Brisa Lowmarsh", "DEPOT", "brisa");
        person("P-03", "Corin Ashgate", "LEAD", "corin");
        person("P-04", "Delma Fenwright", "FINANCE", "delma");
    }

    private void item(URI stock, String code, String kind, String name, String measures)
            throws IOException, InterruptedException {
        post(
                stock,
                "/items",
                "\"materialCode\":\"%s\",\"kind\":\"%s\",\"name\":\"%s\",%s,"
                        .concat("\"unitCost\":{\"minor\":4000,\"currency\":\"USD\"}")
                        .formatted(code, kind, name, measures));
    }

    private void person(String id, String name, String role, String username) throws IOException, InterruptedException {
        post(
                house.at(Service.FRONT_DESK),
                "/api/people",
                "\"personId\":\"%s\",\"name\":\"%s\",\"roles\":[\"%s\"],\"username\":\"%s\",\"password\":\"%s\""
                        .formatted(id, name, role, username, password(username)));
    }

    static String password(String username) {
        return "only-for-the-journey-" + username;
    }

    private void post(URI service, String path, String fields) throws IOException, InterruptedException {
        commands++;
        String body = "{\"commandId\":\"01900000-0000-7000-8000-%012d\",%s}".formatted(commands, fields);
        HttpResponse<String> answer = http.send(
                HttpRequest.newBuilder(service.resolve(path))
                        .header("Authorization", "Bearer " + house.serviceKey())
                        .header("Bandtrail-Person", "P-03")
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() / 100 != 2) {
            throw new AssertionError(path + " answered " + answer.statusCode() + ": " + answer.body());
        }
    }

    @Override
    public void close() {
        http.close();
    }
}
