package org.bandtrail.supplystock;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.axonframework.serialization.SimpleSerializedObject;
import org.bandtrail.eventstore.AggregateOf;
import org.bandtrail.eventstore.StoredNameSerializer;
import org.bandtrail.testing.GoldenFile;
import org.bandtrail.testing.GoldenFiles;
import org.bandtrail.testing.GoldenJson;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Everything that was ever stored can still be read, and is written again as it was. */
@OnPostgres
class StoredHistoryTest {
    @Autowired
    List<AggregateOf<?>> aggregates;

    @Autowired
    StoredNameSerializer serializer;

    @Test
    void every_golden_file_is_read_and_written_as_it_stands() {
        List<GoldenFile> files = GoldenFiles.in("history").files();
        for (GoldenFile file : files) {
            Object event = serializer.deserialize(new SimpleSerializedObject<>(
                    file.text().getBytes(StandardCharsets.UTF_8), byte[].class, file.storedName(), file.revision()));

            assertThat(event).as(file.fileName()).isInstanceOf(Record.class);
            GoldenJson.assertSame(
                    file.fileName(),
                    file.text(),
                    serializer.serialize(event, String.class).getData());
        }
        assertThat(files).hasSizeGreaterThan(20);
    }

    @Test
    void every_event_has_a_golden_file_and_no_old_file_was_edited() {
        GoldenFiles files = GoldenFiles.in("history");

        files.assertCover(aggregates.stream().map(AggregateOf::events).toArray(Class<?>[]::new));
        files.assertNoOldFileWasEdited();
    }
}
