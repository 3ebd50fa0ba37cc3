package org.bandtrail.eventexchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.cloudevents.CloudEvent;
import io.cloudevents.core.builder.CloudEventBuilder;
import io.cloudevents.core.v1.CloudEventV1;
import io.cloudevents.jackson.JsonFormat;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/**
 * The envelope against CloudEvents 1.0.2: the CNCF's own SDK (io.cloudevents 4.0.1, Apache-2.0), which nobody here
 * wrote, reads what we write, and we read what it writes.
 */
class EnvelopeJsonTest {
    private static final NoteWritten NOTE = new NoteWritten("N-1", 7, "3 m, “grün”", ExchangeDatabase.NOON);
    private static final Envelope ENVELOPE = new Envelope(
            "0197a2b0-0000-7000-8000-000000000001",
            "/bandtrail/test-notes",
            NoteWritten.TYPE,
            NOTE.subject(),
            NOTE.happenedAt(),
            ContractJson.tree(ContractJson.write(NOTE)));

    @Test
    void the_official_sdk_reads_every_attribute_we_write() {
        CloudEvent event = readBySdk(EnvelopeJson.writeBatch(List.of(new Arrival.Readable(42, 40, ENVELOPE))));

        assertThat(event.getSpecVersion().toString()).isEqualTo("1.0");
        assertThat(event.getId()).isEqualTo(ENVELOPE.id());
        assertThat(event.getSource()).isEqualTo(URI.create("/bandtrail/test-notes"));
        assertThat(event.getType()).isEqualTo("test-notes.note-written.v1");
        assertThat(event.getSubject()).isEqualTo("note/N-1");
        assertThat(event.getDataContentType()).isEqualTo("application/json");
        assertThat(Objects.requireNonNull(event.getTime()).toInstant()).isEqualTo(ExchangeDatabase.NOON);
        // Extension "sequence": text order must be number order, hence the padding.
        assertThat(event.getExtension("sequence")).isEqualTo("0000000000000000042");
        assertThat(event.getExtension("follows")).isEqualTo("0000000000000000040");
        String data = new String(Objects.requireNonNull(event.getData()).toBytes(), StandardCharsets.UTF_8);
        assertThat(ContractJson.read(data, NoteWritten.class)).isEqualTo(NOTE);
    }

    @Test
    void we_read_what_the_official_sdk_writes() {
        CloudEvent event = CloudEventBuilder.v1()
                .withId(ENVELOPE.id())
                .withSource(URI.create(ENVELOPE.source()))
                .withType(ENVELOPE.type())
                .withSubject(ENVELOPE.subject())
                .withTime(OffsetDateTime.parse("2026-05-04T14:00:00+02:00"))
                .withData("application/json", ContractJson.write(NOTE).getBytes(StandardCharsets.UTF_8))
                .withExtension("traceparent", "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01")
                .build();
        String json = new String(new JsonFormat().serialize(event), StandardCharsets.UTF_8);

        assertThat(EnvelopeJson.read(ContractJson.tree(json))).isEqualTo(ENVELOPE);
    }

    @Test
    void extension_names_of_ours_are_spelt_as_the_specification_asks() {
        // CloudEvents 1.0.2, "Attribute Naming Convention": lower-case letters and digits, at most 20 characters.
        JsonNode written = ContractJson.tree(new String(
                EnvelopeJson.writeBatch(List.of(new Arrival.Readable(1, 0, ENVELOPE))), StandardCharsets.UTF_8));

        assertThat(written.get(0).propertyNames()).allMatch(name -> name.matches("[a-z0-9]{1,20}"));
        assertThat(written.get(0).propertyNames())
                .containsExactly(
                        CloudEventV1.SPECVERSION,
                        CloudEventV1.ID,
                        CloudEventV1.SOURCE,
                        CloudEventV1.TYPE,
                        CloudEventV1.SUBJECT,
                        CloudEventV1.TIME,
                        CloudEventV1.DATACONTENTTYPE,
                        "data",
                        "sequence",
                        "follows");
    }

    @ParameterizedTest(name = "{0} = {1} is refused: {2}")
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "specversion,     `\"0.3\"`,        specversion [0.3] must be 1.0.",
                "specversion,     null,             specversion must be given as text.",
                "id,              `\"\"`,           id [] must have 1 to 200 characters.",
                "id,              7,                id must be given as text.",
                "source,          null,             source must be given as text.",
                "type,            `\" \"`,          type [ ] must have 1 to 200 characters.",
                "subject,         null,             subject must be given as text.",
                "time,            `\"yesterday\"`,  time [yesterday] is not a time as in RFC 3339.",
                "datacontenttype, `\"text/plain\"`, datacontenttype [text/plain] must be application/json.",
                "data,            `\"text\"`,       data must be a JSON object."
            })
    void an_envelope_that_is_not_one_of_ours_names_the_attribute(String attribute, String value, String message) {
        var event = EnvelopeJson.write(ENVELOPE).set(attribute, ContractJson.tree(value));

        assertThatThrownBy(() -> EnvelopeJson.read(event))
                .isInstanceOf(UnreadableEvent.class)
                .hasMessage(message);
    }

    @Test
    void an_event_that_cannot_be_read_keeps_its_place_and_spoils_no_other() {
        String batch =
                """
                [%s, {"id": "odd", "sequence": "2", "follows": "1", "specversion": "9"}]
                """.formatted(EnvelopeJson.write(ENVELOPE).put("sequence", "1").put("follows", "0"));

        List<Arrival> arrivals = EnvelopeJson.readBatch(batch.getBytes(StandardCharsets.UTF_8));

        assertThat(arrivals)
                .containsExactly(
                        new Arrival.Readable(1, 0, ENVELOPE),
                        new Arrival.Unreadable(2, 1, "odd", "specversion [9] must be 1.0."));
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {"`[{`", "`{}`", "`[{\"id\": \"1\"}]`", "`[{\"sequence\": \"one\"}]`"})
    void a_page_without_places_is_not_a_page(String body) {
        byte[] bytes = body.getBytes(StandardCharsets.UTF_8);

        assertThatThrownBy(() -> EnvelopeJson.readBatch(bytes)).isInstanceOf(UnreadableEvent.class);
    }

    @Test
    void a_field_that_a_later_publisher_adds_is_ignored_and_one_that_is_missing_is_named() {
        String added =
                "{\"noteId\":\"N-1\",\"number\":7,\"text\":\"t\",\"happenedAt\":\"2026-05-04T12:00:00Z\",\"mood\":1}";
        assertThat(ContractJson.read(added, NoteWritten.class).number()).isEqualTo(7);

        assertThatThrownBy(() -> ContractJson.read(added.replace("\"number\":7,", ""), NoteWritten.class))
                .isInstanceOf(UnreadableEvent.class)
                .hasMessageContaining("number");
        assertThatThrownBy(() -> ContractJson.read(added.replace("7", "\"many\""), NoteWritten.class))
                .isInstanceOf(UnreadableEvent.class)
                .hasMessageContaining("many");
        assertThatThrownBy(() -> ContractJson.read(added.replace("\"text\":\"t\",", ""), NoteWritten.class))
                .isInstanceOf(UnreadableEvent.class)
                .hasMessageContaining("text");
    }

    @Test
    void an_instant_is_written_as_iso_8601_text() {
        assertThat(ContractJson.write(new NoteWritten("N-1", 1, "t", Instant.EPOCH)))
                .isEqualTo("{\"noteId\":\"N-1\",\"number\":1,\"text\":\"t\",\"happenedAt\":\"1970-01-01T00:00:00Z\"}");
    }

    private static CloudEvent readBySdk(byte[] batch) {
        JsonNode first =
                ContractJson.tree(new String(batch, StandardCharsets.UTF_8)).get(0);
        return new JsonFormat().deserialize(first.toString().getBytes(StandardCharsets.UTF_8));
    }
}
