package org.bandtrail.eventexchange;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The JSON event format and JSON batch format of CloudEvents 1.0.2 (cloudevents/formats/json-format.md). Two extension
 * attributes carry the place in the feed: {@code sequence} as the specification's extension of that name describes it
 * (padded, so that text order is number order), and {@code follows}, ours, the sequence of the event before.
 */
final class EnvelopeJson {
    /** Media type of one event. */
    static final String ONE = "application/cloudevents+json";
    /** Media type of a page of events. */
    static final String BATCH = "application/cloudevents-batch+json";

    private static final String SPEC_VERSION = "1.0";
    private static final String DATA_CONTENT_TYPE = "application/json";

    private EnvelopeJson() {}

    /** Writes one event without a place. */
    static ObjectNode write(Envelope envelope) {
        ObjectNode json = ContractJson.mapper().createObjectNode();
        json.put("specversion", SPEC_VERSION);
        json.put("id", envelope.id());
        json.put("source", envelope.source());
        json.put("type", envelope.type());
        json.put("subject", envelope.subject());
        json.put("time", envelope.time().toString());
        json.put("datacontenttype", DATA_CONTENT_TYPE);
        json.set("data", envelope.data());
        return json;
    }

    /** Writes a page in the batch format. */
    static byte[] writeBatch(List<Arrival.Readable> page) {
        ArrayNode batch = ContractJson.mapper().createArrayNode();
        for (Arrival.Readable arrival : page) {
            batch.add(write(arrival.envelope())
                    .put("sequence", padded(arrival.position()))
                    .put("follows", padded(arrival.follows())));
        }
        return ContractJson.mapper().writeValueAsBytes(batch);
    }

    /**
     * Reads a page in the batch format. An event that is not readable keeps its place, so that those before it are
     * dealt with.
     *
     * @throws UnreadableEvent if it is not an array of events with a place each
     */
    static List<Arrival> readBatch(byte[] body) {
        JsonNode batch;
        try {
            batch = ContractJson.mapper().readTree(body);
        } catch (JacksonException misfit) {
            throw new UnreadableEvent("The page is not JSON: " + misfit.getOriginalMessage(), misfit);
        }
        if (!batch.isArray()) {
            throw new UnreadableEvent("The page is not a JSON array.");
        }
        List<Arrival> arrivals = new ArrayList<>();
        for (JsonNode event : batch) {
            arrivals.add(arrival(event));
        }
        return arrivals;
    }

    /**
     * Reads one event. Extension attributes it does not know are ignored.
     *
     * @throws UnreadableEvent naming the attribute and the value
     */
    static Envelope read(JsonNode event) {
        if (!event.isObject()) {
            throw new UnreadableEvent("An event must be a JSON object.");
        }
        same(event, "specversion", SPEC_VERSION);
        if (event.has("datacontenttype")) {
            same(event, "datacontenttype", DATA_CONTENT_TYPE);
        }
        JsonNode data = event.path("data");
        if (!data.isObject()) {
            throw new UnreadableEvent("data must be a JSON object.");
        }
        return new Envelope(
                text(event, "id"),
                text(event, "source"),
                text(event, "type"),
                text(event, "subject"),
                time(text(event, "time")),
                data);
    }

    private static Arrival arrival(JsonNode event) {
        long position = place(event, "sequence");
        long follows = place(event, "follows");
        try {
            return new Arrival.Readable(position, follows, read(event));
        } catch (UnreadableEvent misfit) {
            String name = event.path("id").asString("without id");
            return new Arrival.Unreadable(position, follows, name, String.valueOf(misfit.getMessage()));
        }
    }

    private static long place(JsonNode event, String attribute) {
        String value = text(event, attribute);
        try {
            return Long.parseLong(value);
        } catch (NumberFormatException misfit) {
            throw new UnreadableEvent("%s [%s] is not a position.".formatted(attribute, value), misfit);
        }
    }

    private static Instant time(String value) {
        try {
            return OffsetDateTime.parse(value).toInstant();
        } catch (DateTimeException misfit) {
            throw new UnreadableEvent("time [%s] is not a time as in RFC 3339.".formatted(value), misfit);
        }
    }

    private static void same(JsonNode event, String attribute, String expected) {
        String value = text(event, attribute);
        if (!expected.equals(value)) {
            throw new UnreadableEvent("%s [%s] must be %s.".formatted(attribute, value, expected));
        }
    }

    private static String text(JsonNode event, String attribute) {
        JsonNode value = event.path(attribute);
        if (!value.isString()) {
            throw new UnreadableEvent("%s must be given as text.".formatted(attribute));
        }
        return value.stringValue();
    }

    private static String padded(long position) {
        return "%019d".formatted(position);
    }
}
