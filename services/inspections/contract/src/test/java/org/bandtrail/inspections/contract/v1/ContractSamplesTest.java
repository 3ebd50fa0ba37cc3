package org.bandtrail.inspections.contract.v1;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

class ContractSamplesTest {
    private static final Path SAMPLES = Path.of("src/main/resources/samples");
    private static final Map<String, Class<?>> RECORDS = Map.of(
            BandVisited.TYPE, BandVisited.class,
            PiecesReplaced.TYPE, PiecesReplaced.class,
            BandTakenDown.TYPE, BandTakenDown.class,
            LoadDisposed.TYPE, LoadDisposed.class);
    private final JsonMapper json = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .changeDefaultPropertyInclusion(each -> each.withValueInclusion(JsonInclude.Include.NON_NULL))
            .build();

    static List<Path> samples() throws IOException {
        try (Stream<Path> files = Files.list(SAMPLES)) {
            return files.sorted().toList();
        }
    }

    private static String typeOf(Path sample) {
        return sample.getFileName().toString().replaceAll("\\.\\d+\\.json$", "");
    }

    @Test
    void every_record_has_a_sample_and_every_sample_a_record() throws IOException {
        assertThat(samples().stream().map(ContractSamplesTest::typeOf).distinct())
                .containsExactlyInAnyOrderElementsOf(RECORDS.keySet());
    }

    @ParameterizedTest
    @MethodSource("samples")
    void a_sample_read_into_its_record_and_written_again_is_the_same_json(Path sample) throws IOException {
        String text = Files.readString(sample);

        Object read = json.readValue(text, RECORDS.get(typeOf(sample)));

        assertThat(json.readTree(json.writeValueAsString(read))).isEqualTo(json.readTree(text));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void every_move_of_a_sample_has_a_quantity_and_two_places(Path sample) throws IOException {
        json.readTree(Files.readString(sample)).path("moves").forEach(move -> {
            assertThat(move.path("quantity").asLong()).isPositive();
            assertThat(move.path("source").asString()).matches("(crew|tree|bag):[A-Z0-9-]{1,40}");
            assertThat(move.path("target").asString()).matches("(crew|tree|bag|disposed):[A-Z0-9-]{1,40}");
        });
    }
}
