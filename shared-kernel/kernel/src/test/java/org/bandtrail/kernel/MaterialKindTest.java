package org.bandtrail.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What may be measured and what may be used again. Source: the trade's notes, tape never, mesh and fasteners yes. */
class MaterialKindTest {

    @ParameterizedTest
    @CsvSource({"TAPE, true, false", "MESH, true, true", "FASTENER, false, true"})
    void tape_is_never_used_again_and_fasteners_are_not_measured(MaterialKind kind, boolean onReels, boolean reusable) {
        assertThat(kind.onReels()).isEqualTo(onReels);
        assertThat(kind.reusable()).isEqualTo(reusable);
    }
}
