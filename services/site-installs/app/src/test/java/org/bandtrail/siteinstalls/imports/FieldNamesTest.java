package org.bandtrail.siteinstalls.imports;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The names are common practice of open tree registers, no source. */
class FieldNamesTest {
    @Test
    void the_open_field_names_are_recognised_however_they_are_spelt() {
        assertThat(FieldNames.propose(
                        List.of("Ref", "LAT", "Lon", "Genus", "species", "common", "DBH (cm)", "height", "updated")))
                .containsExactlyInAnyOrderEntriesOf(Map.of(
                        "tagColumn", "Ref",
                        "latColumn", "LAT",
                        "lonColumn", "Lon",
                        "genusColumn", "Genus",
                        "speciesColumn", "species",
                        "dbhColumn", "DBH (cm)",
                        "unit", "cm",
                        "dateColumn", "updated"));
    }

    @Test
    void a_unit_is_never_guessed_and_half_a_position_is_none() {
        assertThat(FieldNames.propose(List.of("id", "dbh", "lat")))
                .containsExactlyInAnyOrderEntriesOf(Map.of("tagColumn", "id", "dbhColumn", "dbh"));
    }
}
