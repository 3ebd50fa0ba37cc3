package org.bandtrail.local;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.List;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Lets people in: creates them at the front desk, through the same door as any program that holds the shared key. */
final class Reception {

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final int PASSWORD_LENGTH = 10;

    private final House house;

    Reception(House house) {
        this.house = house;
    }

    /**
     * The password of everybody the launcher creates. Each data folder has its own, so that knowing Bandtrail is not
     * enough to sign in at somebody's installation.
     *
     * @return ten hexadecimal digits, the same for the life of the data folder
     */
    String password() {
        return house.folder().secret("first-password").substring(0, PASSWORD_LENGTH);
    }

    /**
     * Creates people, or sets those that exist back to what is given.
     *
     * @param people who may sign in
     * @throws CannotStart if the front desk refuses
     */
    void letIn(List<DemoPerson> people) {
        try (HttpClient http =
                HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(10)).build()) {
            for (DemoPerson person : people) {
                letIn(http, person);
            }
        } catch (IOException e) {
            throw new CannotStart("The front desk does not answer: " + e, e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CannotStart("Stopped while people were being created.", e);
        }
    }

    private void letIn(HttpClient http, DemoPerson person) throws IOException, InterruptedException {
        ObjectNode body = JSON.createObjectNode()
                .put("personId", person.personId())
                .put("name", person.name())
                .put("username", person.username())
                .put("password", password());
        body.putArray("roles").add(person.role());
        HttpRequest request = HttpRequest.newBuilder(
                        house.at(Service.FRONT_DESK).resolve("/api/people"))
                .timeout(Duration.ofSeconds(30))
                .header("Authorization", "Bearer " + house.serviceKey())
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body.toString()))
                .build();
        HttpResponse<String> answer = http.send(request, HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() / 100 != 2) {
            throw new CannotStart("The front desk does not let " + person.username() + " in: " + answer.statusCode()
                    + " " + answer.body());
        }
    }
}
