package org.bandtrail.inspections;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.axonframework.serialization.SimpleSerializedObject;
import org.bandtrail.eventstore.StoredNameSerializer;
import org.bandtrail.inspections.bags.BagEvent;
import org.bandtrail.inspections.bands.BandEvent;
import org.bandtrail.testing.GoldenFile;
import org.bandtrail.testing.GoldenFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import tools.jackson.databind.json.JsonMapper;

/** Every event this service ever stored can be read, and what is stored today looks as its golden file says. */
@OnPostgres
class HistoryTest {
    private static final GoldenFiles HISTORY = GoldenFiles.in("history/inspections");
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private final StoredNameSerializer serializer;

    @Autowired
    HistoryTest(StoredNameSerializer serializer) {
        this.serializer = serializer;
    }

    static List<GoldenFile> files() {
        return HISTORY.files();
    }

    @Test
    void every_event_has_a_golden_file_and_no_old_file_was_edited() {
        HISTORY.assertCover(BandEvent.class, BagEvent.class);
        HISTORY.assertNoOldFileWasEdited();
    }

    @ParameterizedTest
    @MethodSource("files")
    void a_stored_event_is_read_and_would_be_written_the_same(GoldenFile file) {
        Object event = serializer.deserialize(new SimpleSerializedObject<>(
                file.text().getBytes(StandardCharsets.UTF_8), byte[].class, file.storedName(), file.revision()));

        assertThat(event).as(file.fileName()).isNotNull();
        var written = serializer.serialize(event, byte[].class);
        assertThat(written.getType().getName()).isEqualTo(file.storedName());
        assertThat(JSON.readTree(written.getData())).isEqualTo(file.json());
    }
}
