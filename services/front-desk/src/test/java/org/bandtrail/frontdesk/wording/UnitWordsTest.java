package org.bandtrail.frontdesk.wording;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class UnitWordsTest {
    @Test
    void a_known_code_has_a_word_and_an_unknown_one_stays_as_it_was_written() {
        assertThat(UnitWords.of("XRL")).isEqualTo("reels");
        assertThat(UnitWords.of(" mtr ")).isEqualTo("m");
        assertThat(UnitWords.of("BX")).as("deleted from Recommendation 20").isEqualTo("BX");
    }
}
