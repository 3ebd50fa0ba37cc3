package org.bandtrail.local.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.StreamSupport;
import org.bandtrail.local.doors.Doors;
import org.bandtrail.local.doors.FrontDoor;
import org.bandtrail.local.doors.SeasonStopped;
import org.bandtrail.local.season.RecordingServices.Sent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** The loader against a server that only records: what is sent, in which order, by whom, and what a refusal says. */
class DemoSeasonTest {
    private static final Path DEMO_DATA = Path.of("../../demo-data");
    private RecordingServices services;

    @BeforeEach
    void open() throws IOException {
        services = new RecordingServices(DEMO_DATA);
    }

    @AfterEach
    void close() {
        services.close();
    }

    private String load(Progress progress) {
        var uri = services.uri();
        return new DemoSeason(DEMO_DATA, uri, uri, uri, uri, "key").load(progress);
    }

    private static List<JsonNode> records(List<Sent> sent, String path) {
        return sent.stream()
                .filter(request -> request.path().equals(path))
                .flatMap(request ->
                        StreamSupport.stream(request.body().path("records").spliterator(), false))
                .toList();
    }

    private int positionOf(String path, String text) {
        for (int i = 0; i < services.sent.size(); i++) {
            Sent request = services.sent.get(i);
            if (request.path().equals(path) && request.body().toString().contains(text)) {
                return i;
            }
        }
        throw new AssertionError("Nothing sent to " + path + " contains " + text);
    }

    @Test
    void every_row_is_sent_and_the_audit_is_read() throws IOException {
        List<Integer> percents = new ArrayList<>();
        String sentence = load((what, done, total) -> percents.add(done * 100 / total));

        assertThat(sentence).startsWith("The audit reads zero: 1 laws");
        assertThat(records(services.sent, "/bands/sync"))
                .hasSameSizeAs(CsvRows.read(DEMO_DATA.resolve("season/fits.csv")));
        assertThat(records(services.sent, "/visits/sync")).hasSizeGreaterThan(6000);
        assertThat(services.sent)
                .filteredOn(sent -> sent.path().equals("/reels"))
                .hasSizeGreaterThan(80);
        assertThat(percents).startsWith(0).endsWith(100).isSorted();
    }

    @Test
    void loading_again_sends_the_same_commands_with_the_same_content() {
        load((what, done, total) -> {});
        List<Sent> first = List.copyOf(services.sent);
        services.sent.clear();
        load((what, done, total) -> {});

        assertThat(services.sent).isEqualTo(first);
    }

    @Test
    void every_command_has_its_own_identity_of_version_7() {
        load((what, done, total) -> {});
        List<String> bands = records(services.sent, "/bands/sync").stream()
                .map(band -> band.path("commandId").asString(""))
                .toList();

        assertThat(bands).doesNotHaveDuplicates().allSatisfy(id -> {
            assertThat(UUID.fromString(id).version()).isEqualTo(7);
            assertThat(UUID.fromString(id).variant()).isEqualTo(2);
        });
    }

    @Test
    void a_kit_is_handed_out_before_it_is_used_and_comes_back_after() {
        load((what, done, total) -> {});

        assertThat(positionOf("/reels", "R-0001\"")).isLessThan(positionOf("/handouts", "\"K-001\""));
        assertThat(positionOf("/handouts", "\"K-001\"")).isLessThan(positionOf("/bands/sync", "\"B-0001\""));
        assertThat(positionOf("/bands/sync", "\"B-0001\"")).isLessThan(positionOf("/visits/sync", "\"B-0001\""));
        assertThat(positionOf("/visits/sync", "\"B-0001\"")).isLessThan(positionOf("/returns", "\"K-001\""));
    }

    @Test
    void the_river_crews_silent_days_arrive_after_its_kit_is_back() {
        load((what, done, total) -> {});

        List<Sent> silent = services.sent.stream()
                .filter(sent -> sent.path().equals("/bands/sync"))
                .filter(sent -> sent.body().toString().contains("\"C-3\""))
                .filter(sent -> sent.body().toString().contains("2026-06-10T"))
                .toList();
        int back = services.sent.indexOf(services.sent.stream()
                .filter(sent -> sent.path().equals("/returns"))
                .filter(sent -> sent.body().toString().contains("\"D-2\""))
                .filter(sent -> sent.body().toString().contains("2026-06-12T"))
                .findFirst()
                .orElseThrow());
        assertThat(silent)
                .isNotEmpty()
                .allSatisfy(sent -> assertThat(services.sent.indexOf(sent)).isGreaterThan(back));
    }

    @Test
    void a_refusal_names_file_row_and_what_the_service_said() {
        services.refuse("/handouts");

        assertThatThrownBy(() -> load((what, done, total) -> {}))
                .isInstanceOf(SeasonStopped.class)
                .hasMessageContaining("handouts.csv row 2")
                .hasMessageContaining("422")
                .hasMessageContaining("The reel [R-0001] is somewhere else.");
    }

    @Test
    void a_law_that_does_not_hold_stops_the_loading() {
        services.breakLawBy(3);

        assertThatThrownBy(() -> new AuditReading(door(), "P-18", java.time.Duration.ZERO).sentence())
                .isInstanceOf(SeasonStopped.class)
                .hasMessageContaining("length, in = out: 1 is not 2");
    }

    private FrontDoor door() {
        return Doors.at(services.uri(), services.uri(), services.uri(), services.uri(), "key")
                .supplyStock();
    }
}
