package org.bandtrail.siteinstalls.species;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SpeciesBookTest {
    private static final EppoCode AILAL = new EppoCode("AILAL");
    private final SpeciesBook book;

    SpeciesBookTest() throws IOException {
        book = SpeciesWiring.read();
    }

    @ParameterizedTest
    @ValueSource(strings = {"AILAL", " ailal ", "Tree of Heaven", "tree-of-heaven", "Ailanthus altissima (Mill.)"})
    void what_people_write_for_one_kind_means_it(String text) {
        assertThat(book.meant(text).map(Species::code)).contains(AILAL);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "oak", "heaven", "Quercus", "unknown"})
    void what_may_mean_several_kinds_or_none_means_none(String text) {
        assertThat(book.meant(text)).isEmpty();
    }

    @Test
    void codes_are_five_to_seven_letters_and_digits() {
        assertThat(new EppoCode(" lycmde ")).hasToString("LYCMDE");
        assertThatThrownBy(() -> new EppoCode("OAK"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("[OAK]");
        assertThat(EppoCode.isSpeltLikeOne("1AILG")).isTrue();
        assertThat(EppoCode.isSpeltLikeOne("red oak")).isFalse();
    }

    @Test
    void winter_moth_has_the_code_of_the_datasheet() {
        // CABI datasheet 37695: CHEIBR, not OPERBR
        assertThat(book.pest(new EppoCode("CHEIBR"))).isPresent();
        assertThat(book.pest(new EppoCode("OPERBR"))).isEmpty();
    }

    @Test
    void every_kind_says_where_its_figures_are_from_and_names_only_what_the_book_has() {
        Set<EppoCode> codes = new HashSet<>();
        assertThat(book.species()).isNotEmpty().allSatisfy(species -> {
            assertThat(codes.add(species.code())).as("%s twice", species.code()).isTrue();
            assertThat(species.codeSource()).isNotBlank();
            assertThat(species.girthSource()).isNotBlank();
            assertThat(species.largestGirth().isPositive()).isTrue();
            assertThat(species.commonNames()).isNotEmpty();
            assertThat(species.lookAlikes()).allMatch(code -> book.find(code).isPresent());
            assertThat(species.hostOf()).allSatisfy(host -> {
                assertThat(book.pest(host.pest())).isPresent();
                assertThat(host.source()).isNotBlank();
            });
        });
    }
}
