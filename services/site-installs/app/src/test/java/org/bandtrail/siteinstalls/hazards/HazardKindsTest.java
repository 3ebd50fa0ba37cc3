package org.bandtrail.siteinstalls.hazards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

class HazardKindsTest {
    private static HazardKinds kinds() throws IOException {
        return new HazardWiring().hazardKinds();
    }

    @Test
    void every_kind_has_a_name_a_caution_and_a_source() throws IOException {
        assertThat(kinds().all())
                .extracting(HazardKind::kind)
                .doesNotHaveDuplicates()
                .contains("roadside", "ticks");
        assertThat(kinds().all()).allSatisfy(kind -> {
            assertThat(kind.name()).isNotBlank();
            assertThat(kind.caution()).endsWith(".");
            assertThat(kind.source()).isNotBlank();
        });
    }

    @Test
    void an_unknown_kind_is_refused_with_those_there_are() throws IOException {
        HazardKinds kinds = kinds();
        assertThatCode(() -> kinds.mustKnow(List.of(new Hazard(" ticks ", "")))).doesNotThrowAnyException();
        assertThatThrownBy(() -> kinds.mustKnow(List.of(new Hazard("dragons", ""))))
                .hasMessageContaining("dragons")
                .hasMessageContaining("roadside");
        assertThat(kinds.of("dragons").caution()).contains("Ask the lead");
        assertThatThrownBy(() -> new Hazard("ticks", "x".repeat(301))).hasMessageContaining("301");
    }
}
