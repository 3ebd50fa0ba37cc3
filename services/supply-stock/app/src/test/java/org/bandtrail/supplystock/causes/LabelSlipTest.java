package org.bandtrail.supplystock.causes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.random.RandomGenerator;
import org.bandtrail.testing.Histories;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LabelSlipTest {
    /** The four slips by hand, and near misses that need two. */
    @ParameterizedTest
    @CsvSource({
        "R-0012, R-0013, true",
        "R-0012, R-0021, true",
        "R-0012, R-001, true",
        "R-0012, R-00122, true",
        "R-0012, T-0012, true",
        "R-0012, R-0012, false",
        "R-0012, R-0130, false",
        "R-0012, R-1002, false",
        "R-0012, R-01, false",
        "AB, BA, true",
        "ABC, CAB, false",
    })
    void one_slip_is_one_and_two_are_not(String one, String other, boolean expected) {
        assertThat(LabelSlip.oneApart(one, other)).isEqualTo(expected);
        assertThat(LabelSlip.oneApart(other, one)).isEqualTo(expected);
    }

    @Test
    void every_label_one_apart_is_listed_and_no_other() {
        long checked = Histories.check(300, 20_261_125, 1, LabelSlipTest::label, labels -> {
            String label = labels.getFirst();
            assertThat(LabelSlip.oneApartFrom(label))
                    .isNotEmpty()
                    .allMatch(other -> LabelSlip.oneApart(label, other) && distance(label, other) == 1);
        });
        assertThat(checked).isEqualTo(300);
    }

    @Test
    void the_short_way_agrees_with_the_full_table_of_distances() {
        long checked = Histories.check(20_000, 7, 2, LabelSlipTest::label, labels -> {
            String one = labels.getFirst();
            String other = labels.getLast();
            assertThat(LabelSlip.oneApart(one, other)).isEqualTo(distance(one, other) == 1);
        });
        assertThat(checked).isGreaterThan(20_000);
    }

    private static String label(RandomGenerator random) {
        return String.format(Locale.ROOT, "%d", random.nextInt(1, 3_000));
    }

    /** The full table: one change, omission, insertion or exchange of neighbours costs 1 (Damerau 1964, from memory). */
    private static int distance(String one, String other) {
        int[][] cost = new int[one.length() + 1][other.length() + 1];
        for (int i = 0; i <= one.length(); i++) {
            for (int j = 0; j <= other.length(); j++) {
                if (i == 0 || j == 0) {
                    cost[i][j] = i + j;
                    continue;
                }
                int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
                cost[i][j] = Math.min(cost[i - 1][j - 1] + change, Math.min(cost[i - 1][j], cost[i][j - 1]) + 1);
                if (i > 1
                        && j > 1
                        && one.charAt(i - 1) == other.charAt(j - 2)
                        && one.charAt(i - 2) == other.charAt(j - 1)) {
                    cost[i][j] = Math.min(cost[i][j], cost[i - 2][j - 2] + 1);
                }
            }
        }
        return cost[one.length()][other.length()];
    }
}
