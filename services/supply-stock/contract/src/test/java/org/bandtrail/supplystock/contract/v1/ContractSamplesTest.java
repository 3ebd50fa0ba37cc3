package org.bandtrail.supplystock.contract.v1;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.io.IOException;
import java.io.InputStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ContractSamplesTest {
    private final JsonMapper json = JsonMapper.builder()
            .changeDefaultPropertyInclusion(unused -> JsonInclude.Value.ALL_NON_NULL)
            .build();

    @ParameterizedTest
    @CsvSource({
        "org.bandtrail.supplystock.contract.v1.ReelReceived, 1",
        "org.bandtrail.supplystock.contract.v1.ReelReceived, 2",
        "org.bandtrail.supplystock.contract.v1.KitHandedOut, 1",
        "org.bandtrail.supplystock.contract.v1.DepotStockChanged, 1",
        "org.bandtrail.supplystock.contract.v1.DepotStockChanged, 2",
        "org.bandtrail.supplystock.contract.v1.HoldingLabelled, 1",
        "org.bandtrail.supplystock.contract.v1.HoldingReserved, 1",
        "org.bandtrail.supplystock.contract.v1.HoldingReserved, 2"
    })
    void a_sample_read_and_written_again_is_the_same(Class<?> type, int number) throws ReflectiveOperationException {
        JsonNode sample =
                sample("/samples/%s.%d.json".formatted(type.getField("TYPE").get(null), number));

        Object read = json.treeToValue(sample, type);

        assertThat(json.readTree(json.writeValueAsString(read))).isEqualTo(sample);
    }

    private JsonNode sample(String name) {
        try (@Nullable InputStream file = ContractSamplesTest.class.getResourceAsStream(name)) {
            assertThat(file).as(name).isNotNull();
            return json.readTree(file);
        } catch (IOException unreadable) {
            throw new IllegalStateException(name, unreadable);
        }
    }
}
