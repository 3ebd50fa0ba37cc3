package org.bandtrail.siteinstalls.contract.v1;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

class ContractSamplesTest {
    /** Components that the first samples do not know. */
    private static final List<String> ADDED_LATER = List.of("device", "position");

    private final JsonMapper json = JsonMapper.builder().build();

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void a_sample_read_and_written_again_is_the_same(int number) {
        JsonNode sample = sample(number);
        BandFitted read = json.treeToValue(sample, BandFitted.class);
        ObjectNode written = (ObjectNode) json.readTree(json.writeValueAsString(read));
        ADDED_LATER.stream().filter(name -> !sample.has(name)).forEach(written::remove);
        if (!sample.path("moves").path(0).has("reusable")) {
            written.path("moves").forEach(move -> ((ObjectNode) move).remove("reusable"));
        }
        assertThat(written).isEqualTo(sample);
    }

    @Test
    void a_publisher_that_knew_one_device_only_says_nothing_of_it() {
        BandFitted fitted = json.treeToValue(sample(2), BandFitted.class);
        assertThat(fitted.device()).isNull();
        assertThat(fitted.position()).isNull();
    }

    @Test
    void further_parts_of_a_device_are_moves_of_their_own() {
        BandFitted trap = json.treeToValue(sample(3), BandFitted.class);
        assertThat(trap.device()).isEqualTo("funnel-trap");
        assertThat(trap.moves()).extracting(MaterialMove::quantity).containsExactly(1100L, 12L, 450L, 1L);
    }

    @Test
    void what_may_be_used_again_is_told_piece_by_piece_and_an_old_publisher_does_not_say() {
        assertThat(json.treeToValue(sample(4), BandFitted.class).moves())
                .extracting(MaterialMove::reusable)
                .containsExactly(true, true, true, true);
        assertThat(json.treeToValue(sample(3), BandFitted.class).moves())
                .extracting(MaterialMove::reusable)
                .containsOnlyNulls();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void a_sample_of_needed_material_read_and_written_again_is_the_same(int number) {
        JsonNode sample = sample(MaterialNeeded.TYPE, number);
        MaterialNeeded read = json.treeToValue(sample, MaterialNeeded.class);
        assertThat(json.readTree(json.writeValueAsString(read))).isEqualTo(sample);
        assertThat(read.subject()).isEqualTo("plan/2026-05-11-C-2");
    }

    @Test
    void the_moves_of_a_sample_add_up_to_its_material() {
        BandFitted fitted = json.treeToValue(sample(1), BandFitted.class);
        assertThat(fitted.moves())
                .extracting(MaterialMove::quantity)
                .containsExactly(fitted.tapeLengthMm(), fitted.meshLengthMm(), fitted.fastenerPieces());
    }

    @Test
    void a_move_of_nothing_is_refused() {
        assertThatThrownBy(() -> new MaterialMove(MaterialMove.REEL, "R-1", 0, "crew:P-1", "tree:T-1"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("[0]");
    }

    private JsonNode sample(int number) {
        return sample(BandFitted.TYPE, number);
    }

    private JsonNode sample(String type, int number) {
        String name = "/samples/%s.%d.json".formatted(type, number);
        try (@Nullable InputStream file = ContractSamplesTest.class.getResourceAsStream(name)) {
            assertThat(file).as(name).isNotNull();
            return json.readTree(file);
        } catch (IOException unreadable) {
            throw new IllegalStateException(name, unreadable);
        }
    }
}
