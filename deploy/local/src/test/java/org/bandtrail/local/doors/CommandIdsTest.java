package org.bandtrail.local.doors;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Identities made from rows have the layout of UUID version 7: RFC 9562, section 5.7 and its example in A.6. */
class CommandIdsTest {
    /** The moment of the RFC's example: 2022-02-22 14:22:22 in UTC-5, 0x017F22E279B0 ms after 1970. */
    private static final Instant EXAMPLE = Instant.parse("2022-02-22T19:22:22Z");

    @Test
    void the_first_48_bits_are_the_milliseconds_since_1970() {
        UUID id = CommandIds.of("band", "B-0001", EXAMPLE);

        assertThat(id.toString()).startsWith("017f22e2-79b0-7");
        assertThat(id.version()).isEqualTo(7);
        assertThat(id.variant()).isEqualTo(2);
    }

    @Test
    void the_same_row_has_the_same_identity_and_another_row_another() {
        UUID id = CommandIds.of("band", "B-0001", EXAMPLE);

        assertThat(CommandIds.of("band", "B-0001", EXAMPLE)).isEqualTo(id);
        assertThat(CommandIds.of("band", "B-0002", EXAMPLE)).isNotEqualTo(id);
        assertThat(CommandIds.of("visit", "B-0001", EXAMPLE)).isNotEqualTo(id);
    }
}
