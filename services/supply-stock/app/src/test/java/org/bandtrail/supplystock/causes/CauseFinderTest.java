package org.bandtrail.supplystock.causes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Random days with one mistake in what was told of them: the finder has to name it. */
class CauseFinderTest {
    private static final int DAYS = 400;
    private static final long SEED = 20_261_125;
    private final CauseFinder finder = new CauseFinder(CausePolicy.USUAL);

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "NONE")
    void the_mistake_that_was_made_is_among_the_first_two_causes_of_each_finding(Mistake mistake) {
        int findings = 0;
        int first = 0;
        List<String> missed = new ArrayList<>();
        for (long seed = SEED; seed < SEED + DAYS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            for (Case open : mistake.booksOf(FieldDay.any(random), random).open()) {
                findings++;
                List<Cause> causes = finder.likely(open);
                first += !causes.isEmpty() && causes.getFirst().kind() == mistake.cause ? 1 : 0;
                if (causes.stream().limit(2).noneMatch(cause -> cause.kind() == mistake.cause)) {
                    missed.add("seed %d, %s of %s at %s: %s"
                            .formatted(seed, open.gap(), open.subject().id(), open.place(), causes));
                }
            }
        }
        assertThat(missed).isEmpty();
        assertThat(findings).as("findings to explain").isGreaterThanOrEqualTo(DAYS * 9 / 10);
        assertThat(first).as("named first of %d", findings).isGreaterThanOrEqualTo(findings * 9 / 10);
    }

    @Test
    void a_day_told_as_it_was_leaves_nothing_to_explain() {
        for (long seed = SEED; seed < SEED + DAYS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            assertThat(Mistake.NONE.booksOf(FieldDay.any(random), random).open())
                    .isEmpty();
        }
    }

    @Test
    void a_gap_shorter_than_any_band_is_no_fact_that_is_still_to_come() {
        SplittableRandom random = new SplittableRandom(SEED);
        Case open = Mistake.LAST_FACTS_STILL_ON_A_TELEPHONE
                .booksOf(FieldDay.any(random), random)
                .open()
                .getFirst();
        assertThat(finder.likely(open)).extracting(Cause::kind).contains(CauseKind.LATE_ENTRY);

        assertThat(finder.likely(gap(open, 199))).extracting(Cause::kind).doesNotContain(CauseKind.LATE_ENTRY);
        assertThat(finder.likely(gap(open, 200))).extracting(Cause::kind).contains(CauseKind.LATE_ENTRY);
    }

    private static Case gap(Case open, long gap) {
        return new Case(open.subject(), false, open.place(), gap, open.since(), open.others(), open.fromPerson());
    }

    @Test
    void where_books_and_field_agree_no_cause_is_named() {
        SplittableRandom random = new SplittableRandom(SEED);
        Case open = Mistake.ONE_PIECE_TOLD_TWICE
                .booksOf(FieldDay.any(random), random)
                .open()
                .getFirst();
        assertThat(finder.likely(open)).isNotEmpty();

        assertThat(finder.likely(gap(open, 0))).isEmpty();
    }
}
