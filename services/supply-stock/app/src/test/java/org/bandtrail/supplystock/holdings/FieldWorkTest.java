package org.bandtrail.supplystock.holdings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FieldWorkTest {
    @ParameterizedTest
    @CsvSource({
        "crew:P-07, tree:T-1, FITTED",
        "crew:P-07, bag:BAG-1, SCRAPPED",
        "tree:T-1, bag:BAG-1, TAKEN_DOWN",
        "tree:T-1, crew:P-07, PUT_BACK_INTO_USE",
        "bag:BAG-1, disposed:L-1, DISPOSED",
        "bag:BAG-2, bag:BAG-1, CORRECTED",
        "bag:BAG-1, crew:P-07, CORRECTED",
        "crew:P-07, crew:P-08, CORRECTED",
        "disposed:L-1, bag:BAG-1, CORRECTED",
        "disposed:L-2, disposed:L-1, CORRECTED"
    })
    void source_and_target_tell_the_work(String source, String target, FieldWork work) {
        assertThat(FieldWork.between(Place.parse(source), Place.parse(target))).isEqualTo(work);
    }

    @ParameterizedTest
    @CsvSource({"depot:NORTH, tree:T-1", "tree:T-1, disposed:L-1", "crew:P-07, depot:NORTH", "bag:BAG-1, depot:NORTH"})
    void what_no_field_service_can_mean_stops_its_feed(String source, String target) {
        assertThatIllegalStateException()
                .isThrownBy(() -> FieldWork.between(Place.parse(source), Place.parse(target)))
                .withMessageContaining(source);
    }
}
