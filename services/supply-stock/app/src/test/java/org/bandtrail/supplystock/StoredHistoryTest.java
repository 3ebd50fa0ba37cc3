package org.bandtrail.supplystock;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.axonframework.eventhandling.GenericDomainEventEntry;
import org.axonframework.serialization.upcasting.event.EventUpcaster;
import org.axonframework.serialization.upcasting.event.InitialEventRepresentation;
import org.bandtrail.eventstore.AggregateOf;
import org.bandtrail.eventstore.StoredNameSerializer;
import org.bandtrail.testing.GoldenFile;
import org.bandtrail.testing.GoldenFiles;
import org.bandtrail.testing.GoldenJson;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import tools.jackson.databind.json.JsonMapper;

/** Everything that was ever stored can still be read, and is written again as it was. */
@OnPostgres
class StoredHistoryTest {
    @Autowired
    List<AggregateOf<?>> aggregates;

    @Autowired
    StoredNameSerializer serializer;

    @Autowired
    EventUpcaster upcasters;

    @Test
    void every_golden_file_is_read_and_written_as_it_stands() {
        List<GoldenFile> files = GoldenFiles.in("history").files();
        for (GoldenFile file : files) {
            Object event = read(file);

            assertThat(event).as(file.fileName()).isInstanceOf(Record.class);
            String today = serializer.serialize(event, String.class).getData();
            if (file.revision().equals(serializer.typeForClass(event.getClass()).getRevision())) {
                GoldenJson.assertSame(file.fileName(), file.text(), today);
            } else {
                assertThat(files).anyMatch(each -> sameShape(each, file.storedName(), today));
            }
        }
        assertThat(files).hasSizeGreaterThan(20);
    }

    /** As the store reads it: an older revision is brought up to the record of today. */
    private Object read(GoldenFile file) {
        var entry = new GenericDomainEventEntry<>(
                "event",
                "aggregate",
                0,
                "event",
                Instant.EPOCH,
                file.storedName(),
                file.revision(),
                file.text().getBytes(StandardCharsets.UTF_8),
                "{}".getBytes(StandardCharsets.UTF_8));
        var today = upcasters
                .upcast(Stream.of(new InitialEventRepresentation(entry, serializer)))
                .findFirst()
                .orElseThrow();
        return Objects.requireNonNull(serializer.deserialize(today.getData(byte[].class)));
    }

    /** An old event brought up to date has the members of today's golden file, whatever is in them. */
    private static boolean sameShape(GoldenFile file, String storedName, String today) {
        var members = JsonMapper.shared().readTree(today).propertyNames();
        return file.storedName().equals(storedName)
                && JsonMapper.shared().readTree(file.text()).propertyNames().equals(members);
    }

    @Test
    void every_event_has_a_golden_file_and_no_old_file_was_edited() {
        GoldenFiles files = GoldenFiles.in("history");

        files.assertCover(aggregates.stream().map(AggregateOf::events).toArray(Class<?>[]::new));
        files.assertNoOldFileWasEdited();
    }
}
