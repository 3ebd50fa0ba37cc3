package org.bandtrail.eventexchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NullMarkedRecordsTest {
    /** One component of each sort. */
    record Load(String bagId, @Nullable String carrier, List<Move> moves, Map<String, Integer> catches, int count) {}

    record Move(String id, @Nullable Long quantity) {}

    @Test
    void what_may_be_missing_is_null_and_a_list_or_map_that_is_missing_is_empty() {
        assertThat(ContractJson.read("{\"bagId\":\"B\",\"count\":1}", Load.class))
                .isEqualTo(new Load("B", null, List.of(), Map.of(), 1));
        assertThat(ContractJson.read(
                        "{\"bagId\":\"B\",\"carrier\":null,\"moves\":null,\"catches\":null,\"count\":1}", Load.class))
                .isEqualTo(new Load("B", null, List.of(), Map.of(), 1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"{\"count\":1}", "{\"bagId\":null,\"count\":1}"})
    void what_must_be_there_is_named_when_it_is_missing_or_null(String json) {
        assertThatThrownBy(() -> ContractJson.read(json, Load.class))
                .isInstanceOf(UnreadableEvent.class)
                .hasMessageContaining("bagId");
    }

    @Test
    void a_component_deep_inside_is_named_with_its_path() {
        String json = "{\"bagId\":\"B\",\"count\":1,\"moves\":[{\"id\":\"R\"},{\"quantity\":7}]}";

        assertThatThrownBy(() -> ContractJson.read(json, Load.class))
                .isInstanceOf(UnreadableEvent.class)
                .hasMessageContaining("at [moves[1].id]");
    }
}
