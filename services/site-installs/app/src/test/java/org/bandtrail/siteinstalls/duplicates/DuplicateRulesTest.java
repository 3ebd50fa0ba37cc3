package org.bandtrail.siteinstalls.duplicates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import org.junit.jupiter.api.Test;

class DuplicateRulesTest {
    @Test
    void the_defaults_say_that_they_have_no_source() throws IOException {
        DuplicateRules rules = new DuplicateWiring().duplicateRules();
        // common practice, no source
        assertThat(rules.nearMm()).isEqualTo(3_000);
        assertThat(rules.girthPermille()).isEqualTo(100);
        assertThat(rules.source()).contains("no source");
    }

    @Test
    void figures_that_cannot_be_meant_are_refused_by_name() {
        assertThatThrownBy(() -> new DuplicateRules(0, 100, 10, 10, "", "")).hasMessageContaining("nearMm [0]");
        assertThatThrownBy(() -> new DuplicateRules(3_000, 1_001, 10, 10, "", ""))
                .hasMessageContaining("girthPermille [1001]");
        assertThatThrownBy(() -> new DuplicateRules(3_000, 100, 1, 10, "", ""))
                .hasMessageContaining("mostWithOneTag [1]");
        assertThatThrownBy(() -> new DuplicateRules(3_000, 100, 10, 101, "", ""))
                .hasMessageContaining("mostAtOnePlace [101]");
    }

    @Test
    void where_a_page_ends_can_be_written_and_read() {
        PairKey key = new PairKey("OAK-1", "OAK-2");
        assertThat(PairKey.parse(key.toString())).isEqualTo(key);
        assertThat(PairKey.parse(null)).isEqualTo(PairKey.START);
        assertThatThrownBy(() -> PairKey.parse("OAK-1")).hasMessageContaining("OAK-1");
    }
}
