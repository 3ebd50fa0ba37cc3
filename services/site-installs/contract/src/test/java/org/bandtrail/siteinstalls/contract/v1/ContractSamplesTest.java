package org.bandtrail.siteinstalls.contract.v1;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ContractSamplesTest {
    private final JsonMapper json = JsonMapper.builder().build();

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void a_sample_read_and_written_again_is_the_same(int number) {
        JsonNode sample = sample(number);
        BandFitted read = json.treeToValue(sample, BandFitted.class);
        assertThat(json.readTree(json.writeValueAsString(read))).isEqualTo(sample);
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
        String name = "/samples/%s.%d.json".formatted(BandFitted.TYPE, number);
        try (@Nullable InputStream file = ContractSamplesTest.class.getResourceAsStream(name)) {
            assertThat(file).as(name).isNotNull();
            return json.readTree(file);
        } catch (IOException unreadable) {
            throw new IllegalStateException(name, unreadable);
        }
    }
}
