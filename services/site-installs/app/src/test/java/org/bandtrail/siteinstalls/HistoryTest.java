package org.bandtrail.siteinstalls;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.axonframework.eventhandling.EventData;
import org.axonframework.eventhandling.GenericDomainEventEntry;
import org.axonframework.serialization.UnknownSerializedType;
import org.axonframework.serialization.upcasting.event.EventUpcaster;
import org.axonframework.serialization.upcasting.event.InitialEventRepresentation;
import org.axonframework.serialization.upcasting.event.IntermediateEventRepresentation;
import org.bandtrail.eventstore.StoredNameSerializer;
import org.bandtrail.siteinstalls.bands.BandEvent;
import org.bandtrail.siteinstalls.consents.ConsentEvent;
import org.bandtrail.siteinstalls.cutplans.CutPlanEvent;
import org.bandtrail.siteinstalls.hostchecks.HostCheckEvent;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceEvent;
import org.bandtrail.siteinstalls.policies.CutPolicyEvent;
import org.bandtrail.siteinstalls.sites.SiteEvent;
import org.bandtrail.siteinstalls.trees.TreeEvent;
import org.bandtrail.siteinstalls.workplans.WorkPlanEvent;
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
    private static final GoldenFiles HISTORY = GoldenFiles.in("history/site-installs");
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final byte[] NOTHING = "{}".getBytes(StandardCharsets.UTF_8);
    private final StoredNameSerializer serializer;
    private final EventUpcaster upcasters;

    @Autowired
    HistoryTest(StoredNameSerializer serializer, EventUpcaster upcasters) {
        this.serializer = serializer;
        this.upcasters = upcasters;
    }

    static List<GoldenFile> files() {
        return HISTORY.files();
    }

    @Test
    void every_event_has_a_golden_file_and_no_old_file_was_edited() {
        HISTORY.assertCover(
                BandEvent.class,
                ConsentEvent.class,
                CutPlanEvent.class,
                CutPolicyEvent.class,
                HostCheckEvent.class,
                MeshPieceEvent.class,
                SiteEvent.class,
                TreeEvent.class,
                WorkPlanEvent.class);
        HISTORY.assertNoOldFileWasEdited();
    }

    @ParameterizedTest
    @MethodSource("files")
    void a_stored_event_is_read_and_would_be_written_the_same(GoldenFile file) {
        Object event = serializer.deserialize(today(file).getData(byte[].class));

        assertThat(event).as(file.fileName()).isNotNull().isNotInstanceOf(UnknownSerializedType.class);
        var written = serializer.serialize(event, byte[].class);
        assertThat(written.getType().getName()).isEqualTo(file.storedName());
        int revision = Integer.parseInt(Objects.requireNonNull(written.getType().getRevision()));
        assertThat(revision).isGreaterThanOrEqualTo(Integer.parseInt(file.revision()));
        if (revision == Integer.parseInt(file.revision())) {
            assertThat(JSON.readTree(written.getData())).isEqualTo(file.json());
        } else {
            assertThat(today(file).getType().getRevision())
                    .isEqualTo(written.getType().getRevision());
        }
    }

    /** The event of the file as the steps between revisions bring it up to the one of today. */
    private IntermediateEventRepresentation today(GoldenFile file) {
        byte[] stored = file.text().getBytes(StandardCharsets.UTF_8);
        EventData<byte[]> entry = new GenericDomainEventEntry<>(
                "event", "id", 0, "event", Instant.EPOCH, file.storedName(), file.revision(), stored, NOTHING);
        return upcasters
                .upcast(Stream.of(new InitialEventRepresentation(entry, serializer)))
                .findFirst()
                .orElseThrow();
    }
}
