package org.bandtrail.eventexchange;

import java.time.Instant;
import tools.jackson.databind.JsonNode;

/**
 * One published event with the attributes of CloudEvents 1.0.2 that Bandtrail uses. {@code specversion} is always
 * {@code 1.0} and {@code datacontenttype} always {@code application/json}, so neither is kept. CloudEvents leaves
 * subject and time optional; here both are required, since order is promised per subject and every fact has a time.
 *
 * @param id unique within the source, 1 to 200 characters; source and id together make an event recognisable
 * @param source the publishing service, for example {@code /bandtrail/site-installs}
 * @param type published name with its version, for example {@code site-installs.band-fitted.v1}
 * @param subject what it is about, for example {@code band/B-0001}
 * @param time when it happened in the world
 * @param data the contract record as JSON
 */
public record Envelope(String id, String source, String type, String subject, Instant time, JsonNode data) {
    private static final int LONGEST = 200;

    public Envelope {
        present("id", id);
        present("source", source);
        present("type", type);
        present("subject", subject);
    }

    /**
     * Reads the data as a contract record.
     *
     * @throws UnreadableEvent naming the field and the value if the data does not fit the record
     */
    public <T> T dataAs(Class<T> contractType) {
        return ContractJson.read(data, contractType);
    }

    private static void present(String attribute, String value) {
        if (value.isBlank() || value.length() > LONGEST) {
            throw new UnreadableEvent("%s [%s] must have 1 to %d characters.".formatted(attribute, value, LONGEST));
        }
    }
}
