package org.bandtrail.supplystock.reordering;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;

/**
 * What a day-by-day record says about the use per day, or that it does not say enough.
 *
 * <pre>
 * mean = (1/n) sum x_i,   sd = sqrt( sum (x_i - mean)^2 / (n - 1) )
 * </pre>
 *
 * x<sub>i</sub> is the use of day i in mm or pieces; days without use count as 0, because leaving them out would
 * overstate the mean and understate the spread. The two passes over the data avoid the cancellation of the one-pass
 * formula. Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.1 and 1.3.5.6; tested with the reference data
 * of NIST StRD. Valid from {@link #MINIMUM_DAYS} days; it describes the days observed, not a season to come.
 */
public sealed interface DailyUse {

    /** Two weeks, so that each day of the week was seen twice. Our choice; fewer days give no spread worth showing. */
    int MINIMUM_DAYS = 14;

    /**
     * Enough was seen.
     *
     * @param perDay mean and standard deviation of a day's use
     * @param daysObserved n, days with and without use
     * @param daysWithUse days on which something was used
     */
    record Measured(DemandPerDay perDay, int daysObserved, int daysWithUse) implements DailyUse {
        public Measured {
            InRange.checked("Days observed", daysObserved, MINIMUM_DAYS, 36_600);
            InRange.checked("Days with use", daysWithUse, 0, daysObserved);
        }
    }

    /**
     * Too little was seen to state a mean and a spread.
     *
     * @param daysObserved fewer than {@link #MINIMUM_DAYS}
     */
    record TooFewDays(int daysObserved) implements DailyUse {
        /** For people: what is missing. */
        public String sentence() {
            return "Only %d of at least %d days of use are recorded; no reorder point is stated before that."
                    .formatted(daysObserved, MINIMUM_DAYS);
        }
    }

    /** Days seen, enough or not. */
    int daysObserved();

    /**
     * Measures a complete series.
     *
     * @param useOfEachDay mm or pieces, 0 to 10^14, one number per calendar day, zero days included
     * @throws IllegalArgumentException naming the day whose use is out of range
     */
    static DailyUse of(List<Long> useOfEachDay) {
        int days = useOfEachDay.size();
        for (int day = 0; day < days; day++) {
            InRange.checked("Use of day " + (day + 1), useOfEachDay.get(day), 0, 1e14);
        }
        if (days < MINIMUM_DAYS) {
            return new TooFewDays(days);
        }
        double mean = useOfEachDay.stream().mapToLong(Long::longValue).sum() / (double) days;
        double squares = useOfEachDay.stream()
                .mapToDouble(use -> (use - mean) * (use - mean))
                .sum();
        int daysWithUse = (int) useOfEachDay.stream().filter(use -> use > 0).count();
        return new Measured(new DemandPerDay(mean, Math.sqrt(squares / (days - 1))), days, daysWithUse);
    }

    /**
     * Measures what was used between two days; days without an entry are days without use.
     *
     * @param first first day observed, for example the day of the first hand-out
     * @param last last day observed, both included; before {@code first} nothing was observed
     * @param use mm or pieces by day; entries outside the two days are not counted
     */
    static DailyUse between(LocalDate first, LocalDate last, Map<LocalDate, Long> use) {
        long days = Math.max(0, ChronoUnit.DAYS.between(first, last) + 1);
        return of(LongStream.range(0, days)
                .mapToObj(day -> use.getOrDefault(first.plusDays(day), 0L))
                .toList());
    }
}
