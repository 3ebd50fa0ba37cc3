package org.bandtrail.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** All identities share one spelling, and each names itself when it is refused. */
class IdentityTest {

    private static Arguments kind(String name, Function<String, ?> of) {
        return arguments(name, of);
    }

    static Stream<Arguments> kinds() {
        return Stream.of(
                kind("reel", ReelId::new),
                kind("batch", BatchId::new),
                kind("material", MaterialCode::new),
                kind("depot", DepotId::new),
                kind("crew", CrewId::new),
                kind("person", PersonId::new),
                kind("site", SiteId::new),
                kind("tree", TreeId::new),
                kind("band", BandId::new),
                kind("bag", BagId::new),
                kind("disposal load", LoadId::new),
                kind("kit", KitId::new));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void an_identity_is_read_in_any_case_and_written_in_one(String kind, Function<String, ?> of) {
        assertThat(of.apply(" t-0001 ")).isEqualTo(of.apply("T-0001")).hasToString("T-0001");
        assertThat(of.apply("7")).isNotEqualTo(of.apply("8"));
        assertThat(of.apply("A".repeat(40))).hasToString("A".repeat(40));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void what_is_no_identity_is_refused_by_kind_and_value(String kind, Function<String, ?> of) {
        for (String value : new String[] {"", " ", "-1", "A B", "A_1", "Å1", "T/1", "A".repeat(41)}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> of.apply(value))
                    .withMessageStartingWith("%s [%s] is not an identity.".formatted(kind, value));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void a_missing_identity_is_refused_by_kind(String kind, Function<String, ?> of) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of.apply(null))
                .withMessage("A %s is missing. Give its identity.".formatted(kind));
    }

    @Test
    void upper_case_does_not_depend_on_the_language_of_the_machine() {
        // Turkish has a capital dotted I, which is no letter of an identity.
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.of("tr"));
            assertThat(new SiteId("hill")).hasToString("HILL");
        } finally {
            Locale.setDefault(before);
        }
    }
}
