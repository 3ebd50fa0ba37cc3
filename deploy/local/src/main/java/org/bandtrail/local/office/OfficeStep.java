package org.bandtrail.local.office;

import java.nio.file.Path;
import java.time.Instant;
import org.bandtrail.local.doors.CommandIds;
import org.bandtrail.local.doors.SeasonStopped;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * One line of a file of the office: one request.
 *
 * @param origin file and line, for messages
 * @param at the moment at which it reaches the books
 * @param by who does it, a pseudonymous identity
 * @param does what it is, in a few words for a person
 * @param put whether it changes a setting (PUT) instead of adding something (POST)
 * @param atSiteInstalls whether it goes to site-installs ({@code "door": "site-installs"}) instead of supply-stock
 * @param path where it goes there
 * @param body what is sent, with its command identity
 */
record OfficeStep(
        String origin,
        Instant at,
        String by,
        String does,
        boolean put,
        boolean atSiteInstalls,
        String path,
        ObjectNode body) {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    /**
     * Reads a line.
     *
     * @throws SeasonStopped naming file, line and what is missing
     */
    static OfficeStep read(Path file, int number, String line) {
        String origin = file.getFileName() + " line " + number;
        try {
            JsonNode step = JSON.readTree(line);
            boolean put = step.has("put");
            String path = text(step, put ? "put" : "post", origin);
            Instant at = Instant.parse(text(step, "at", origin));
            if (!(step.path("body") instanceof ObjectNode body)) {
                throw new SeasonStopped(origin + " has no body. Say what is sent.");
            }
            // The identity follows from the content, so that a line written above does not change those below.
            body.put("commandId", CommandIds.of("office", path + " " + body, at).toString());
            return new OfficeStep(
                    origin,
                    at,
                    text(step, "by", origin),
                    text(step, "does", origin),
                    put,
                    siteInstalls(step, origin),
                    path,
                    body);
        } catch (JacksonException unreadable) {
            throw new SeasonStopped(origin + " is not a line of JSON: " + unreadable.getOriginalMessage(), unreadable);
        }
    }

    private static boolean siteInstalls(JsonNode step, String origin) {
        String door = step.path("door").asString("supply-stock");
        if (!door.equals("supply-stock") && !door.equals("site-installs")) {
            throw new SeasonStopped(
                    "%s goes to [%s]. The office knows supply-stock and site-installs.".formatted(origin, door));
        }
        return door.equals("site-installs");
    }

    private static String text(JsonNode step, String name, String origin) {
        return step.path(name)
                .asStringOpt()
                .orElseThrow(() -> new SeasonStopped("%s has no [%s].".formatted(origin, name)));
    }
}
